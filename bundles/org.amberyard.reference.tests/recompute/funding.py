"""Who pays for what: awards of programmes for each purchase, credits, aid, and when they become money."""

import math
from dataclasses import dataclass, field

from fleet import YARD
from money import END, RUNNING, START, Path


@dataclass
class Line:
    """A purchase in money of its time, in the parts that programmes tell apart (of ports: hardware and installation)."""

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
    awards: list = field(default_factory=list)
    left: list = None


class Funding:
    """Funding of a plan; it is written into the plan's ledger with the sign of a credit."""

    def __init__(self, plan):
        self.plan, self.study, self.money = plan, plan.study, plan.study.money
        rows = self.study.folder.rows("programmes")
        order = sorted(range(len(rows)), key=lambda i: (float(rows[i].text("Order", "1")), i))
        self.programmes = {rows[i].text("Name"): Programme(rows[i], self.study.folder) for i in order}
        self.lines, self.flows = [], []
        certain = next(r for r in self.study.folder.rows("plans") if r.text("Name") == plan.name)
        self.certain_only = certain.yes("Certain awards only")

    def write(self):
        """Works out awards, credits and aid."""
        self._collect()
        for line in sorted(self.lines, key=self._order):
            self._stack(line)
        self._credits()
        self._aid()
        for kind, source, place, year, amount in self.flows:
            self._book(kind, place, year, amount)

    def _collect(self):
        course, year_of = self.plan.course, self.study.year
        named = {(r.text("Bus"), year_of(r)): r for r in self.study.of_plan("replacements", course.plan)}
        for event in course.events:
            if event["event"] == "bought":
                self._bus(event, named.get((event["place"], event["y"])))
        for row in self.study.of_plan("port_purchases", course.plan):
            port, count, year = self.study.ports[row.text("Port type")], int(row.number("Count", "")), year_of(row)
            parts = [count * self._infrastructure(port.number(p, "USD"), year) for p in ("Hardware price", "Installation price")]
            self.lines.append(Line("ports", f"{count} × {port.text('Name')}", YARD, year, count, parts, self._named(row)))
        for row in self.study.of_plan("work_orders", course.plan):
            year = year_of(row)
            price = self._infrastructure(self.study.works[row.text("Site work")].number("Price", "USD"), year)
            self.lines.append(Line("site work", row.text("Site work"), YARD, year, 1, [price], self._named(row)))
        for row in self.study.of_plan("one_off_costs", course.plan):
            year = year_of(row)
            amount = row.number("Amount", "USD") * self.money.inflated(year)
            self.lines.append(Line("training and tools", row.text("Name"), YARD, year, 1, [amount], self._named(row)))

    def _order(self, line):
        """Budgets go to the purchases of a year before those of later ones, to buses by their place before the rest by name."""
        kinds = ["bus", "ports", "site work", "training and tools"]
        return line.year, kinds.index(line.kind), self.plan.places().index(line.place), line.name

    def _named(self, row):
        names = row.names("Programmes") or row.names("Programme")
        return [p for n, p in self.programmes.items() if n in names]

    def _infrastructure(self, price, year):
        return price * self.study.index("infrastructure").at(START, year) * self.money.inflated(year)

    def _bus(self, event, row):
        kind, year = self.study.types[event["type"]], event["y"]
        leaving = [e for e in self.plan.course.events if e["y"] == year and (
            e["event"] in ("sold", "scrapped") and e["place"] == event["place"]
            or e["event"] == "moved" and e["from_place"] == event["place"])]
        old = leaving[0] if leaving else None
        outgoing = self.study.types[old["type"]] if old else kind
        like = self.study.types[outgoing.successor] if outgoing.successor else kind
        like = kind if like.electric else like
        price = self.plan.fleet.price(kind, START, year) * self.money.inflated(year)
        compared = self.plan.fleet.price(like, START, year) * self.money.inflated(year)
        self.lines.append(Line("bus", f"{event['unit']}, {kind.name}", event["place"], year, 1, [price],
                               self._named(row) if row else [], event["unit"], kind, compared, old, outgoing))

    def _stack(self, line):
        """Applies programmes in their order; each sees what those before it leave."""
        line.left = list(line.parts)
        paying, federal = [], [0.0] * len(line.parts)
        for programme in line.programmes:
            asked = programme.asked(line)
            refused = (asked <= 0 or self.certain_only and not programme.certain
                       or not programme.pays_in(line.year + self.money.first_year)
                       or any(programme.excludes(p) for p in paying) or programme.fails(line))
            bounds = [asked, programme.cap(line), sum(line.left[i] for i in programme.covered(line))]
            bounds += [self._room(holder, programme, line, federal) for holder in paying + [programme]]
            bounds += [programme.left(line.year)]
            amount = 0.0 if refused or line.kind == "bus" and programme.buses_left < 1 else max(0.0, min(bounds))
            programme.buses_left -= 1 if line.kind == "bus" and not refused else 0
            line.awards.append((programme, asked, amount))
            if amount > 0:
                programme.spend(line, amount)
                open_sum = sum(line.left[i] for i in programme.covered(line))
                for i in programme.covered(line):
                    part = amount * line.left[i] / open_sum
                    line.left[i] -= part
                    federal[i] += part if programme.federal else 0.0
                paying.append(programme)
                self._pay(programme, line, amount)

    @staticmethod
    def _room(holder, payer, line, federal):
        """Most that a programme may pay so that the match of another, or of itself, is still met."""
        own = holder.match_own
        if holder.match <= 0 or not (own or payer.federal):
            return math.inf
        covered = holder.covered(line)
        shared = sum(line.left[i] for i in payer.covered(line) if i in covered)
        all_left = sum(line.left[i] for i in payer.covered(line))
        if not shared:
            return math.inf
        cost = sum(line.parts[i] for i in covered)
        counted = sum(line.left[i] for i in covered) if own else cost - sum(federal[i] for i in covered)
        return max(0.0, counted - holder.match * cost) * all_left / shared

    def _pay(self, programme, line, amount):
        self.flows.append(("award", programme.name, line.place, line.year + programme.lag, amount))
        if line.kind != "bus" or not programme.hold:
            return
        gone = [e["y"] for e in self.plan.course.events if e["unit"] == line.unit and e["event"] in ("sold", "scrapped")]
        if gone and gone[0] - line.year < programme.hold:
            owed = amount * (1 - (gone[0] - line.year) / programme.hold)
            self.flows.append(("award paid back", programme.name, line.place, gone[0], -owed))

    def scrapped(self):
        """Old buses that are scrapped, because a programme that asks for it pays for the new one."""
        return {line.old["unit"] for line in self.lines if line.old and any(
            amount > 0 and programme.scraps for programme, _, amount in line.awards)}

    def _credits(self):
        for row in self.study.folder.rows("low_carbon_credits"):
            path = Path(self.money, row)
            for record in self.plan.course.driving:
                calendar = record["y"] + self.money.first_year
                if record["meter_energy"] and _within(row, calendar):
                    time = self.money.time(RUNNING, record["y"])
                    price = row.number("Price", "USD/kWh") * path.at(RUNNING, record["y"]) * self.money.inflated(time)
                    self.flows.append(("low-carbon credit", row.text("Name"), record["place"], record["y"],
                                       record["meter_energy"] * price))

    def _aid(self):
        """Shares of the operating cost less credits, and of the straight-line depreciation of own money spent on buses."""
        earned = {}
        for kind, _, place, year, amount in self.flows:
            if kind == "low-carbon credit":
                earned[place, year] = earned.get((place, year), 0.0) + amount
        own = {line.unit: (line.year, sum(line.left)) for line in self.lines if line.kind == "bus"}
        for row in self.study.folder.rows("operating_aids"):
            for year in range(self.money.years):
                if _within(row, year + self.money.first_year):
                    for place in self.plan.places():
                        self._aid_of(row, place, year, earned.get((place, year), 0.0), own)

    def _aid_of(self, row, place, year, earned, own):
        from costs import GROUPS
        operating = GROUPS["Energy"] + GROUPS["Upkeep and fees"]
        cost = sum(self.plan.nominal(year, c, place) for c in operating) - earned
        years = row.number("Years of depreciation", "yr", 12.0)
        written_off = sum(own[r["unit"]][1] / years for r in self.plan.course.in_year(year) if r["place"] == place
                          and r["unit"] in own and year - own[r["unit"]][0] < years)
        amount = row.number("Share of operating cost", "%", 0.0) * cost + row.number("Share of depreciation", "%",
                                                                                      0.0) * written_off
        if amount:
            lag = int(row.number("Paid after", "yr", 1.0))
            self.flows.append(("operating aid", row.text("Name"), place, year + lag, amount))

    CATEGORIES = {"award": ("Grants and rebates", START), "award paid back": ("Awards paid back", START),
                  "low-carbon credit": ("Low-carbon credits", RUNNING), "operating aid": ("Operating aid", RUNNING)}

    def constant(self, kind, year, amount):
        """A flow in constant money; what comes after the study is brought to its end."""
        time = self.money.time(self.CATEGORIES[kind][1], year)
        wait = 1.0 if year < self.money.years else (1 + self.money.real) ** -(time - self.money.years)
        return amount * wait / self.money.inflated(time)

    def stated(self, kind, year, amount):
        """A flow in the money that the study states; what comes after the study is stated at its end."""
        when = self.CATEGORIES[kind][1] if year < self.money.years else END
        return self.money.stated(self.constant(kind, year, amount), when, min(year, self.money.years - 1))

    def _book(self, kind, place, year, amount):
        last = self.money.years - 1
        category = self.CATEGORIES[kind][0] if year <= last else "Awards and aid still due"
        self.plan.ledger.add(place, min(year, last), category, -self.constant(kind, year, amount))


def _within(row, calendar):
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
        self.buses_left = row.number("Most buses", "", math.inf)
        self._budget, self._per_year = row.number("Budget", "USD", math.inf), row.number("Budget per year", "USD", math.inf)
        self._spent, self.scraps = {}, row.yes("Scraps old bus")
        if row.text("Paid", "cash") != "cash" or row.yes("Shares of what is left"):
            raise ValueError("The recomputation knows neither credits against tax nor shares of what is left.")

    def pays_in(self, calendar):
        """True when it pays for purchases of a year."""
        return _within(self.row, calendar)

    def excludes(self, other):
        """True when one of the two may not be combined with the other."""
        return other.name in self.row.names("Not combined with") or self.name in other.row.names("Not combined with")

    def covered(self, line):
        """Parts of a line that it covers."""
        only = {"hardware": [0], "installation": [1]}.get(self.row.text("Covers of ports"))
        return only if line.kind == "ports" and only else range(len(line.parts))

    def asked(self, line):
        """What its rule comes to before limits."""
        cost = sum(line.parts[i] for i in self.covered(line))
        if line.kind == "bus":
            award = self.awards.get(line.new.body) if line.new.electric else None
            if award is None:
                return 0.0
            return (award.number("Fixed amount", "USD", 0.0) + award.number("Share of price", "%", 0.0) * cost
                    + award.number("Share of price difference", "%", 0.0) * max(0.0, cost - line.like_for_like))
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
        return (self.scraps and (old is None or old["event"] == "moved")
                or self.row.yes("Same body type") and old is not None and line.old_type.body != line.new.body
                or self.row.yes("Old bus is diesel") and old is not None and line.old_type.fuel != "diesel")

    def left(self, year):
        """What is left of its budgets."""
        return min(self._budget - sum(self._spent.values()), self._per_year - self._spent.get(year, 0.0))

    def spend(self, line, amount):
        """Takes an award off its budgets; a bus has its place among those that it pays for whatever it is paid."""
        self._spent[line.year] = self._spent.get(line.year, 0.0) + amount
