"""Costs of a plan, category by category, and everything that is summed up from them."""

import csv

from fleet import Fleet, Ledger
from funding import Funding
from money import END, RUNNING, START
from yard import Yard

GROUPS = {
    "Capital": ["Bus purchase", "Battery replacement", "Charging ports", "Site works", "Training and tools"],
    "Funding": ["Grants and rebates", "Awards paid back", "Low-carbon credits", "Operating aid"],
    "Energy": ["Fuel", "Exhaust fluid", "Heater fuel", "Electric energy", "Electric demand", "Electric fixed charges"],
    "Upkeep and fees": ["Upkeep", "Port fees", "Moving of plugs", "Insurance", "Registration"],
    "Residual": ["Bus sales", "Bus value left", "Pack life left", "Infrastructure life left", "Awards and aid still due"],
}
AT_START = {"Bus purchase", "Charging ports", "Site works", "Training and tools", "Grants and rebates", "Awards paid back",
            "Bus sales"}
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

    def __init__(self, study, course, quantities):
        self.study, self.course, self.name = study, course, course.plan
        self.ledger = Ledger()
        self.fleet = Fleet(study, course, self.ledger)
        self.fleet.write()
        self.yard = Yard(study, course, self.ledger, quantities)
        self.yard.write()
        self.funding = Funding(self)
        self.funding.write()

    def stated(self, year, category, place=None):
        """Cost in the money that the study states."""
        cells = self.ledger.cells
        places = [place] if place else self.places()
        return self.study.money.stated(sum(cells.get((p, year, category), 0.0) for p in places), when(category), year)

    def nominal(self, year, category):
        """Cost in money of the time at which it falls."""
        constant = self.ledger.total(year, {category})
        return constant * self.study.money.inflated(self.study.money.time(when(category), year))

    def present(self, category):
        """Present value of a category."""
        money = self.study.money
        return sum(money.present(self.ledger.total(y, {category}), when(category), y) for y in range(money.years))

    def present_cost(self):
        """Present value of all categories."""
        return sum(self.present(c) for members in GROUPS.values() for c in members)

    def places(self):
        """Rows of the ledger."""
        return list(self.study.buses) + ["Yard"]


def read_quantities(path):
    """What the bills of each plan, year and month count, by line and unit; years count from the first year of the file's study."""
    quantities = {}
    with open(path, encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            lines = quantities.setdefault((row["plan"], int(row["year"]), row["month"]), {})
            key = row["line"], row["unit"]
            lines[key] = lines.get(key, 0.0) + float(row["quantity"])
    return quantities
