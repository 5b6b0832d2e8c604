"""Costs of a plan, category by category, and everything that is summed up from them."""

from categories import GROUPS, when
from debts import Finance
from fleet import Fleet, Ledger
from funding import Funding
from values import Values
from yard import Yard


class Plan:
    """A plan with its ledger."""

    def __init__(self, study, course):
        self.study, self.course, self.name = study, course, course.plan
        self.ledger = Ledger()
        self.values = Values(study, course)
        self.fleet = Fleet(self.values, self.ledger)
        self.fleet.write()
        self.yard = Yard(study, course, self.ledger)
        self.yard.write()
        self.funding = Funding(self)
        self.funding.write()
        self.fleet.write_sales(self.funding.scrapped())
        self.finance = Finance(self)

    def stated(self, year, category, place=None):
        """Cost in the money that the study states."""
        return self.study.money.stated(self.ledger.cell(place, year, category), when(category), year)

    def nominal(self, year, category, place=None):
        """Cost in money of the time at which it falls."""
        constant = self.ledger.cell(place, year, category)
        return constant * self.study.money.inflated(self.study.money.time(when(category), year))

    def present(self, category):
        """Present value of a category."""
        money = self.study.money
        return sum(money.present(self.ledger.cell(None, y, category), when(category), y) for y in range(money.years))

    def present_cost(self):
        """Present value of all categories."""
        return sum(self.present(c) for members in GROUPS.values() for c in members)

    def places(self):
        """Rows of the ledger."""
        return list(self.study.buses) + ["Yard"]
