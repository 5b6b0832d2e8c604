"""Programmes that pay for purchases: what they ask, and what limits it."""

import math
from dataclasses import dataclass, field


@dataclass
class Line:
    """A purchase in money of its time, in the parts that programmes tell apart (of ports: hardware and
    installation).
    """

    kind: str
    name: str
    place: str
    year: int
    count: int
    parts: list
    programmes: list
    unit: str = ""
    new: object = None
    like_for_like: float = 0.0
    old: dict = None
    old_type: object = None
    old_engine: float = math.inf
    used: bool = False
    old_row: object = None
    awards: list = field(default_factory=list)
    left: list = None
    taken_back: float = 0.0


def within(row, calendar):
    """True when a calendar year lies within the years of a row."""
    return int(row.text("First year", "0")) <= calendar <= int(row.text("Last year", "9999"))


class Programme:
    """A programme with what is left of its budgets in one plan."""

    def __init__(self, row, folder):
        self.row, self.name = row, row.text("Name")
        self.awards = {r.text("Body type"): r for r in folder.rows("bus_awards") if r.text("Programme") == self.name}
        self.certain = row.number("Probability of award", "%", 1.0) >= 1
        self.federal = row.text("Kind of money") == "federal"
        self.lag, self.hold = int(row.number("Paid after", "yr", 0.0)), row.number("Years to serve", "yr", 0.0)
        self.match, self.match_own = row.number("Match", "%", 0.0), row.text("Match from", "own money") == "own money"
        self.match_base = row.text("Match is a share of", "cost that it covers")
        self.buses_left = row.number("Most buses", "", math.inf)
        self._budget, self._per_year = row.number("Budget", "USD", math.inf), row.number(
            "Budget per year", "USD", math.inf
        )
        self._spent, self.scraps = {}, row.yes("Scraps old bus")
        if row.yes("One for one") or row.text("Delivered from") or row.text("Delivered by"):
            raise ValueError("The recomputation knows programmes by years, for every bus.")
        self.newest_engine = int(row.text("Newest old engine", "0")) or math.inf
        self.against_tax = row.text("Paid", "cash") == "against tax"
        self.tax_per_year = row.number("Tax per year", "USD", 0.0)
        self.carry = int(row.number("Carried forward", "yr", 0.0))

    def pays_in(self, calendar):
        """True when it pays for purchases of a year."""
        return within(self.row, calendar)

    def excludes(self, other):
        """True when one of the two may not be combined with the other."""
        return other.name in self.row.names("Not combined with") or self.name in other.row.names("Not combined with")

    def covered(self, line):
        """Parts of a line that it covers."""
        only = {"hardware": [0], "installation": [1]}.get(self.row.text("Covers of ports"))
        return only if line.kind == "ports" and only else range(len(line.parts))

    def asked(self, line):
        """What its rule comes to before limits."""
        parts = line.left if self.row.yes("Shares of what is left") else line.parts
        cost = sum(parts[i] for i in self.covered(line))
        if line.kind == "bus":
            award = self.awards.get(line.new.body) if line.new.electric else None
            if award is None:
                return 0.0
            return (
                award.number("Fixed amount", "USD", 0.0)
                + award.number("Share of price", "%", 0.0) * cost
                + award.number("Share of price difference", "%", 0.0) * max(0.0, cost - line.like_for_like)
            )
        if line.kind == "training and tools":
            return self.row.number("Share of training", "%", 0.0) * cost
        each = self.row.number("Amount per port", "USD", 0.0) * line.count if line.kind == "ports" else 0.0
        return each + self.row.number("Share of infrastructure", "%", 0.0) * cost

    def cap(self, line):
        """Most that it pays for a line."""
        if line.kind == "bus":
            award = self.awards.get(line.new.body)
            return award.number("Cap per bus", "USD", 1e6) if award else math.inf
        if line.kind == "ports":
            return self.row.number("Cap per port", "USD", 1e6) * line.count
        return self.row.number("Cap per site work" if line.kind == "site work" else "Cap of training", "USD", math.inf)

    def fails(self, line):
        """True when a bus does not meet its conditions on the old bus."""
        if line.kind != "bus":
            return False
        old = line.old
        return (
            self.scraps
            and (old is None or old["event"] == "moved")
            or self.row.yes("Same body type")
            and old is not None
            and line.old_type.body != line.new.body
            or self.row.yes("New buses only")
            and line.used
            or old is not None
            and line.old_engine > self.newest_engine
            or self.row.yes("Old bus is diesel")
            and old is not None
            and line.old_type.fuel != "diesel"
            or not self.papers_do(line)
        )

    def papers_do(self, line):
        """True when what is told of the old bus is what the notice asks for; what is not told does not do."""
        least_lb, least_days = self.row.number("Least GVWR of old bus", "lb", 0.0), self.row.number(
            "Least days a week of old bus", "", 0.0
        )
        owned = self.row.yes("Old bus is owned")
        if not (least_lb or least_days or owned):
            return True
        told = line.old_row
        if told is None:
            return False
        return (
            told.number("GVWR", "lb", -1.0) >= least_lb - 1e-3
            and told.number("Days a week in service", "", -1.0) >= least_days
            and (not owned or told.text("Owned by", "not told") == "owned")
        )

    def left(self, year):
        """What is left of its budgets."""
        return min(self._budget - sum(self._spent.values()), self._per_year - self._spent.get(year, 0.0))

    def spend(self, line, amount):
        """Takes an award off its budgets; a bus has its place among those that it pays for whatever it is paid."""
        self._spent[line.year] = self._spent.get(line.year, 0.0) + amount
