"""The measures of a plan, and of what it saves against the baseline."""

from categories import GROUPS, investment, when
from money import HALF_CENT, RUNNING, START, internal_rates, modified_rate, payback

CATEGORIES = [c for members in GROUPS.values() for c in members]


class Saving:
    """What a plan saves against the baseline."""

    def __init__(self, plan, baseline):
        self.plan, self.baseline, self.money = plan, baseline, plan.study.money
        self.operating = sum(baseline.present(c) - plan.present(c) for c in CATEGORIES if not investment(c))
        self.invested = sum(plan.present(c) - baseline.present(c) for c in CATEGORIES if investment(c))
        self.net = self.operating - self.invested
        self.annual = self.net * self.money.recovery(self.money.real, self.money.years)

    def ratio(self):
        """Savings-to-investment ratio; None where the plan invests no more than the baseline."""
        return self.operating / self.invested if self.invested > HALF_CENT else None

    def adjusted_rate(self):
        """Adjusted internal rate of return, in the kind of money that the study states."""
        ratio = self.ratio()
        if ratio is None or ratio <= 0:
            return None
        real = (1 + self.money.real) * ratio ** (1 / self.money.years) - 1
        return real if self.money.constant else (1 + real) * (1 + self.money.inflation) - 1

    def flows(self):
        """Saving in stated money as (time, amount), what is left at the end included."""
        at = {}
        for year in range(self.money.years):
            for category in CATEGORIES:
                time = self.money.time(when(category), year)
                saved = self.baseline.stated(year, category) - self.plan.stated(year, category)
                at[time] = at.get(time, 0.0) + saved
        return sorted(at.items())

    def internal_rates(self):
        """All internal rates of return."""
        return internal_rates(self.flows())

    def modified_rate(self):
        """Modified internal rate of return at the discount rate."""
        return modified_rate(self.flows(), self.money.stated_rate)

    def payback(self, discounted):
        """Payback of the cumulative saving, after the purchases of each year and at its end; what is left does not
        count.
        """
        points, total = [], 0.0
        for year in range(self.money.years):
            for time, point in ((START, year), (RUNNING, year + 1)):
                for category in CATEGORIES:
                    if when(category) == time:
                        total += self._saved(year, category, discounted)
                points.append((point, total))
        return payback(points)

    def _saved(self, year, category, discounted):
        if not discounted:
            return self.baseline.stated(year, category) - self.plan.stated(year, category)
        saved = self.baseline.ledger.cell(None, year, category) - self.plan.ledger.cell(None, year, category)
        return self.money.present(saved, when(category), year)


class Figures:
    """A plan in single figures."""

    def __init__(self, plan):
        money, driving = plan.study.money, plan.course.driving
        self.present_cost = plan.present_cost()
        self.annual_equivalent = self.present_cost * money.recovery(money.real, money.years)
        self.distance = sum(r["distance"] for r in driving)
        self.fuel = sum((r["fuel"] or 0.0) + r["heater_fuel"] for r in driving)
        self.electricity = sum(r["kwh"] for r in plan.course.charged.values())
        self.cost_per_distance = self.present_cost / sum(
            money.present(r["distance"], RUNNING, r["y"]) for r in driving
        )
