"""Costs of a plan, category by category, and everything that is summed up from them."""

from debts import Finance
from fleet import Fleet, Ledger
from funding import Funding
from money import END, RUNNING, START
from yard import Yard

GROUPS = {
    "Capital": ["Bus purchase", "Battery replacement", "Charging ports", "Site works", "Training and tools"],
    "Funding": ["Grants and rebates", "Awards paid back", "Low-carbon credits", "Operating aid"],
    "Energy": ["Fuel", "Exhaust fluid", "Heater fuel", "Electric energy", "Electric demand", "Electric fixed charges"],
    "Upkeep and fees": ["Upkeep", "Port fees", "Moving of plugs", "Insurance", "Registration"],
    "Residual": [
        "Bus sales",
        "Bus value left",
        "Pack life left",
        "Infrastructure life left",
        "Awards and aid still due",
    ],
}
AT_START = {
    "Bus purchase",
    "Charging ports",
    "Site works",
    "Training and tools",
    "Grants and rebates",
    "Awards paid back",
    "Bus sales",
}
AT_END = {"Bus value left", "Pack life left", "Infrastructure life left", "Awards and aid still due"}
YEARLY_FUNDING = {"Low-carbon credits", "Operating aid"}


def when(category):
    """Time of the year at which a category falls."""
    return START if category in AT_START else END if category in AT_END else RUNNING


def group(category):
    """Group of a category."""
    return next(g for g, members in GROUPS.items() if category in members)


def investment(category):
    """True for purchases, awards for them, sales and what is left; false for running costs, credits and yearly aid."""
    return group(category) in ("Capital", "Residual") or category in ("Grants and rebates", "Awards paid back")


class Plan:
    """A plan with its ledger."""

    def __init__(self, study, course):
        self.study, self.course, self.name = study, course, course.plan
        self.ledger = Ledger()
        self.fleet = Fleet(study, course, self.ledger)
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
