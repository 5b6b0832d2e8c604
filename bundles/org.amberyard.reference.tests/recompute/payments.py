"""When awards become money: in cash at once, or as they lower the tax of the years; and what of them is lost when a bus
leaves early.
"""

import math

HALF_MILLIONTH = 5e-7


class Tax:
    """The tax of the operator, which all programmes of a plan share."""

    def __init__(self):
        self._used = {}

    def room(self, programme, year):
        """Most that a programme can pay for a purchase of a year."""
        return sum(free for _, free in self._free(programme, year)) if programme.against_tax else math.inf

    def payments(self, programme, year, amount):
        """Years of payment and amounts of an award; against tax, the earliest tax first."""
        if not programme.against_tax:
            return [(year + programme.lag, amount)]
        paid = []
        for due, free in self._free(programme, year):
            part = min(free, amount)
            if part > 0:
                self._used[due] = self._used.get(due, 0.0) + part
                paid.append((due, part))
                amount -= part
        return paid

    def _free(self, programme, year):
        first = year + programme.lag
        return [
            (y, max(0.0, programme.tax_per_year - self._used.get(y, 0.0)))
            for y in range(first, first + programme.carry + 1)
        ]


def kept(payments, owed, gone):
    """What is paid after all of the payments of an award, of which a sum is owed when the bus leaves, and what must be
    paid back: what has not been paid before is withheld first, the latest first.
    """
    left = []
    for year, amount in sorted(payments, reverse=True):
        withheld = min(owed, amount) if year >= gone else 0.0
        owed -= withheld
        if amount - withheld > HALF_MILLIONTH:
            left.insert(0, (year, amount - withheld))
    return left, owed
