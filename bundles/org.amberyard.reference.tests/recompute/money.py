"""Money over time: inflation, discounting, price paths, and the measures by which a plan is judged.

Constant money is money of the base date, the start of the first year. A purchase of year y falls at time y, a running
cost at time y + 1 (y + 1/2 by the mid-year convention), what is left at the end at the end of its year.
"""

import copy
import math

START, RUNNING, END = "start", "running", "end"
HALF_CENT = 0.005


class Money:
    """Rates, timing and price paths of a study."""

    def __init__(self, study):
        row = study.only("settings")
        self.inflation = row.number("General inflation", "%", 0.025)
        rate = row.number("Discount rate", "%", 0.045)
        nominal = row.text("Discount rate is", "nominal") == "nominal"
        self.real = (1 + rate) / (1 + self.inflation) - 1 if nominal else rate
        self.mid_year = row.text("Running costs fall", "end of year") != "end of year"
        self.constant = row.text("Figures in", "constant") == "constant"
        self.first_year = int(row.number("Base year", "", 2026))
        self.years = int(row.number("Years studied", "yr", 15))

    def time(self, when, year):
        """Time of a flow of a year after the base date."""
        return year + {START: 0.0, RUNNING: 0.5 if self.mid_year else 1.0, END: 1.0}[when]

    def stated(self, constant, when, year):
        """An amount of constant money in the money that the study states."""
        return constant if self.constant else constant * self.inflated(self.time(when, year))

    def restated(self, nominal, when, year):
        """An amount of money of its time in the money that the study states."""
        return nominal / self.inflated(self.time(when, year)) if self.constant else nominal

    def inflated(self, time):
        """Money of a time over money of the base date."""
        return (1 + self.inflation) ** time

    def present(self, constant, when, year):
        """Present value at the base date of an amount of constant money."""
        return constant * (1 + self.real) ** -self.time(when, year)

    @property
    def nominal(self):
        """Discount rate that includes inflation."""
        return (1 + self.real) * (1 + self.inflation) - 1

    @property
    def stated_rate(self):
        """Discount rate that goes with the money that the study states."""
        return self.real if self.constant else self.nominal

    def recovery(self, rate, years):
        """Level payment at the end of each of a number of years, over the sum that it repays."""
        return 1 / years if rate == 0 else rate / (1 - (1 + rate) ** -years)


class Path:
    """A price in constant money over its price at the base date: a steady yearly rise."""

    def __init__(self, money, row=None):
        self._money, self._level = money, 1.0
        self._rise = 0.0
        if row is not None:
            rise = row.number("Rise per year", "%", 0.0)
            nominal = row.text("Rise is", "real") == "nominal"
            self._rise = (1 + rise) / (1 + money.inflation) - 1 if nominal else rise

    def at(self, when, year):
        """Factor in a year, for a payment at a time of it."""
        return self._level * (1 + self._rise) ** self._money.time(when, year)

    def times(self, level):
        """The same path at another level."""
        other = copy.copy(self)
        other._level = self._level * level
        return other


def life_left(age, life):
    """Share of a life that is left, in a straight line."""
    return min(1.0, max(0.0, 1 - age / life))


def payback(points):
    """Time from which a cumulative saving stays at zero or above, as (words, time), by straight lines between (time,
    saving).
    """
    if all(abs(s) < HALF_CENT for _, s in points):
        return "no difference in any year", None
    if points[-1][1] < -HALF_CENT:
        return "never", None
    below = [i for i, (_, s) in enumerate(points) if s < -HALF_CENT]
    if not below:
        return "at once", 0.0
    (t0, s0), (t1, s1) = points[below[-1]], points[below[-1] + 1]
    return "after some time", t0 - s0 * (t1 - t0) / (s1 - s0)


def internal_rates(flows):
    """All rates per year between -99 % and 1,000 % at which flows (time, amount) are worth nothing.

    Signs are looked at on a fine grid of the logarithm of growth and each change of sign is halved until it stands
    still.
    """

    def worth(log_growth):
        return math.fsum(a * math.exp(-log_growth * t) for t, a in flows)

    low, high, steps = math.log(0.0101), math.log(10.99), 20_000
    grid = [low + (high - low) * i / steps for i in range(steps + 1)]
    values = [worth(g) for g in grid]
    rates = []
    for left, right, a, b in zip(grid, grid[1:], values, values[1:]):
        if a * b < 0:
            rates.append(math.exp(_halved(worth, left, right, a)) - 1)
    return rates


def _halved(function, left, right, at_left):
    for _ in range(200):
        middle = (left + right) / 2
        if middle in (left, right):
            break
        value = function(middle)
        if value * at_left > 0:
            left, at_left = middle, value
        else:
            right = middle
    return (left + right) / 2


def modified_rate(flows, rate):
    """Rate of return with outlays owed and receipts earned at one rate; None without outlays or receipts."""
    length = max(t for t, _ in flows)
    owed = math.fsum(-a * (1 + rate) ** -t for t, a in flows if a < 0)
    earned = math.fsum(a * (1 + rate) ** (length - t) for t, a in flows if a > 0)
    return (earned / owed) ** (1 / length) - 1 if owed > 0 and earned > 0 else None
