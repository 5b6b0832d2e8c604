"""Who pays for what: awards of programmes for each purchase, credits, aid, and when they become money."""

import math

from air import model_year
from categories import GROUPS
from fleet import YARD
from money import END, RUNNING, START, Path
from payments import Tax, kept
from programmes import Line, Programme, within


class Funding:
    """Funding of a plan; it is written into the plan's ledger with the sign of a credit."""

    def __init__(self, plan):
        self.plan, self.study, self.money = plan, plan.study, plan.study.money
        rows = self.study.folder.rows("programmes")
        order = sorted(range(len(rows)), key=lambda i: (float(rows[i].text("Order", "1")), i))
        self.programmes = {rows[i].text("Name"): Programme(rows[i], self.study.folder) for i in order}
        self.lines, self.flows, self.tax = [], [], Tax()
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
        for event in course.purchases():
            self._bus(event, named.get((event["place"], event["y"])))
        for row in self.study.of_plan("port_purchases", course.plan):
            port, count, year = self.study.ports[row.text("Port type")], int(row.number("Count", "")), year_of(row)
            parts = [
                count * self._infrastructure(port.number(p, "USD"), year)
                for p in ("Hardware price", "Installation price")
            ]
            self.lines.append(
                Line("ports", f"{count} × {port.text('Name')}", YARD, year, count, parts, self._named(row))
            )
        for row in self.study.of_plan("work_orders", course.plan):
            year = year_of(row)
            price = self._infrastructure(self.study.works[row.text("Site work")].number("Price", "USD"), year)
            self.lines.append(Line("site work", row.text("Site work"), YARD, year, 1, [price], self._named(row)))
        for row in self.study.of_plan("one_off_costs", course.plan):
            year = year_of(row)
            amount = row.number("Amount", "USD") * self.money.inflated(year)
            self.lines.append(Line("training and tools", row.text("Name"), YARD, year, 1, [amount], self._named(row)))

    def _order(self, line):
        """Budgets go to the purchases of a year before those of later ones, to buses before the rest, to buses in place
        of the oldest engines first, and then by name.
        """
        kinds = ["bus", "ports", "site work", "training and tools"]
        return line.year, kinds.index(line.kind), line.old_engine, line.name

    def _named(self, row):
        names = row.names("Programmes") or row.names("Programme")
        return [p for n, p in self.programmes.items() if n in names]

    def _infrastructure(self, price, year):
        return price * self.study.index("infrastructure").at(START, year) * self.money.inflated(year)

    def _bus(self, event, row):
        kind, year = self.study.types[event["type"]], event["y"]
        leaving = [
            e
            for e in self.plan.course.events
            if e["y"] == year
            and (
                e["event"] in ("sold", "scrapped")
                and e["place"] == event["place"]
                or e["event"] == "moved"
                and e["from_place"] == event["place"]
            )
        ]
        old = leaving[0] if leaving else None
        outgoing = self.study.types[old["type"]] if old else kind
        like = self.study.types[outgoing.successor] if outgoing.successor else kind
        like = kind if like.electric else like
        price = self.plan.values.price(kind, event["unit"], START, year) * self.money.inflated(year)
        compared = self.plan.values.price(like, "", START, year) * self.money.inflated(year)
        self.lines.append(
            Line(
                "bus",
                f"{event['unit']}, {kind.name}" + (", used" if event["unit"] in self.plan.values.used else ""),
                event["place"],
                year,
                1,
                [price],
                self._named(row) if row else [],
                event["unit"],
                kind,
                compared,
                old,
                outgoing,
                math.inf if outgoing.electric or not old else model_year(self.plan, old["unit"]),
                event["unit"] in self.plan.values.used,
                self.study.buses.get(old["unit"]) if old else None,
            )
        )

    def _stack(self, line):
        """Applies programmes in their order; each sees what those before it leave."""
        line.left = list(line.parts)
        paying, federal = [], [0.0] * len(line.parts)
        for programme in line.programmes:
            asked = programme.asked(line)
            refused = (
                asked <= 0
                or self.certain_only
                and not programme.certain
                or not programme.pays_in(line.year + self.money.first_year)
                or any(programme.excludes(p) for p in paying)
                or programme.fails(line)
            )
            bounds = [asked, programme.cap(line), sum(line.left[i] for i in programme.covered(line))]
            bounds += [self._room(holder, programme, line, federal) for holder in paying + [programme]]
            bounds += [programme.left(line.year), self.tax.room(programme, line.year)]
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
        own, base = holder.match_own, holder.match_base
        if holder.match <= 0:
            return math.inf
        covered = range(len(line.parts)) if base == "whole cost" else holder.covered(line)
        counted = sum(line.left[i] if own else line.parts[i] - federal[i] for i in covered)
        paid = sum(amount for programme, _, amount in line.awards if programme is holder)
        counted -= 0.0 if own or holder.federal else paid
        wanted = holder.match * (paid if base == "award" else sum(line.parts[i] for i in covered))
        all_left = sum(line.left[i] for i in payer.covered(line))
        per_unit = holder.match if base == "award" and payer is holder else 0.0
        if all_left > 0 and (own or payer.federal or payer is holder):
            per_unit += sum(line.left[i] for i in payer.covered(line) if i in covered) / all_left
        return max(0.0, counted - wanted) / per_unit if per_unit > 0 else math.inf

    def _pay(self, programme, line, amount):
        payments = self.tax.payments(programme, line.year, amount)
        gone = [
            e["y"] for e in self.plan.course.events if e["unit"] == line.unit and e["event"] in ("sold", "scrapped")
        ]
        if line.kind == "bus" and gone and gone[0] - line.year < programme.hold:
            owed = amount * (1 - (gone[0] - line.year) / programme.hold)
            line.taken_back += owed
            payments, back = kept(payments, owed, gone[0])
            if back > 0:
                self.flows.append(("award paid back", programme.name, line.place, gone[0], -back))
        for year, part in payments:
            self.flows.append(("award", programme.name, line.place, year, part))

    def scrapped(self):
        """Old buses that are scrapped, because a programme that asks for it pays for the new one."""
        return {
            line.old["unit"]
            for line in self.lines
            if line.old and any(amount > 0 and programme.scraps for programme, _, amount in line.awards)
        }

    def _credits(self):
        for row in self.study.folder.rows("low_carbon_credits"):
            path = Path(self.money, row)
            for record in self.plan.course.driving:
                calendar = record["y"] + self.money.first_year
                if record["meter_energy"] and within(row, calendar):
                    time = self.money.time(RUNNING, record["y"])
                    price = row.number("Price", "USD/kWh") * path.at(RUNNING, record["y"]) * self.money.inflated(time)
                    self.flows.append(
                        (
                            "low-carbon credit",
                            row.text("Name"),
                            record["place"],
                            record["y"],
                            record["meter_energy"] * price,
                        )
                    )

    def _aid(self):
        """Shares of the operating cost less credits, and of the straight-line depreciation of own money spent on
        buses.
        """
        earned = {}
        for kind, _, place, year, amount in self.flows:
            if kind == "low-carbon credit":
                earned[place, year] = earned.get((place, year), 0.0) + amount
        own = {line.unit: (line.year, sum(line.left)) for line in self.lines if line.kind == "bus"}
        for row in self.study.folder.rows("operating_aids"):
            for year in range(self.money.years):
                if within(row, year + self.money.first_year):
                    for place in self.plan.places():
                        self._aid_of(row, place, year, earned.get((place, year), 0.0), own)

    def _aid_of(self, row, place, year, earned, own):
        operating = GROUPS["Energy"] + GROUPS["Upkeep and fees"]
        cost = sum(self.plan.nominal(year, c, place) for c in operating) - earned
        years = row.number("Years of depreciation", "yr", 12.0)
        written_off = sum(
            own[r["unit"]][1] / years
            for r in self.plan.course.in_year(year)
            if r["place"] == place and r["unit"] in own and year - own[r["unit"]][0] < years
        )
        amount = (
            row.number("Share of operating cost", "%", 0.0) * cost
            + row.number("Share of depreciation", "%", 0.0) * written_off
        )
        if amount:
            lag = int(row.number("Paid after", "yr", 1.0))
            self.flows.append(("operating aid", row.text("Name"), place, year + lag, amount))

    CATEGORIES = {
        "award": ("Grants and rebates", START),
        "award paid back": ("Awards paid back", START),
        "low-carbon credit": ("Low-carbon credits", RUNNING),
        "operating aid": ("Operating aid", RUNNING),
    }

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
        due = "Operating aid still due" if kind == "operating aid" else "Awards still due"
        category = self.CATEGORIES[kind][0] if year <= last else due
        self.plan.ledger.add(place, min(year, last), category, -self.constant(kind, year, amount))
