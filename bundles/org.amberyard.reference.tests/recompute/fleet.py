"""What buses and their packs are worth, and what the places of the fleet cost."""

from money import END, RUNNING, START, life_left

YARD = "Yard"


class Ledger:
    """Costs in constant money by place, year and category; credits are negative."""

    def __init__(self):
        self.cells = {}

    def add(self, place, year, category, amount):
        """Adds to a cell."""
        key = place, year, category
        self.cells[key] = self.cells.get(key, 0.0) + amount

    def total(self, year=None, categories=None, place=None):
        """Sum over what is not given."""
        return sum(a for (p, y, c), a in self.cells.items() if (year is None or y == year)
                   and (categories is None or c in categories) and (place is None or p == place))


class Fleet:
    """Writes the costs of buses into a ledger."""

    def __init__(self, study, course, ledger):
        self.study, self.course, self.ledger = study, course, ledger
        self.bought = {e["unit"]: e["y"] for e in course.events if e["event"] == "bought"}

    def write(self):
        """All costs that belong to places."""
        for event in self.course.events:
            self._event(event)
        for record in self.course.driving:
            self._year(record)
        self._left()

    def type_of(self, record):
        """Type of the bus of a row."""
        return self.study.types[record["type"]]

    def in_service(self, unit):
        """Year in which a bus enters service, counted from the first year of the study."""
        if unit in self.bought:
            return self.bought[unit]
        return int(self.study.buses[unit].text("In service since")) - self.study.money.first_year

    def price(self, kind, when, year):
        """Price of a new bus of a type."""
        return kind.price * self.study.index(kind.subject).at(when, year)

    def value(self, kind, age, when, year):
        """Worth of a bus: a straight line from the price of a new one to the value at retirement age, on the path of that price."""
        left = life_left(age, kind.life)
        return (left * kind.price + (1 - left) * kind.end_value) * self.study.index(kind.subject).at(when, year)

    def pack_price(self, when, year):
        """Price of a new pack per kilowatt-hour."""
        price, path = self.study.pack
        return price * path.at(when, year)

    def old_pack(self, kind, health, when, year):
        """What an old pack brings by itself."""
        each = kind.row.number("Old pack resale", "USD/kWh", 0.0)
        return each * kind.pack_kwh * health * self.study.pack[1].at(when, year)

    def pack_ahead(self, kind, unit, until, age):
        """Share of a new pack by which the pack of a bus is ahead of its bus, after the years before a year.

        A replacement counts by what it is ahead of the bus's straight line or behind it; the pack that the bus came with only
        where it has worn faster than the bus.
        """
        changed = self.course.pack_replaced(unit)
        changed = None if changed is not None and changed >= until else changed
        years = [r for r in self.course.unit_years(unit) if r["y"] < until and (changed is None or r["y"] > changed)]
        health = years[-1]["health"] / 100 if years else 1.0
        cycles = sum(r["full_cycles"] for r in years)
        allowed = 1 - kind.row.number("End-of-life capacity", "%", 0.7)
        limit = kind.row.number("Cycle limit", "cycles", 2000.0)
        oldest = kind.row.number("Pack age limit", "yr", 40.0)
        left = max(0.0, min(1 - cycles / limit, 1 - (1 - health) / allowed, 1 - len(years) / oldest))
        held = life_left(age, kind.life)
        return min(0.0, left - held) if changed is None else left - held

    def _event(self, event):
        kind, year, place = self.type_of(event), event["y"], event["place"]
        if event["event"] == "bought":
            self.ledger.add(place, year, "Bus purchase", self.price(kind, START, year))
        elif event["event"] == "sold":
            self.ledger.add(place, year, "Bus sales", -self._sale(kind, event["unit"], year))
        elif event["event"] == "pack replaced":
            self.ledger.add(place, year, "Battery replacement", sum(self.pack_bill(event).values()))

    def _sale(self, kind, unit, year):
        age = year - self.in_service(unit)
        worth = self.value(kind, age, START, year)
        if not kind.electric:
            return worth
        pack = self.pack_ahead(kind, unit, year, age) * kind.pack_kwh * self.pack_price(START, year)
        before = [r for r in self.course.unit_years(unit) if r["y"] < year]
        return worth + min(pack, self.old_pack(kind, before[-1]["health"] / 100, START, year))

    def pack_bill(self, event):
        """Price, labour and resale of a replaced pack without warranty, at the end of the year in which it is due."""
        kind, year = self.type_of(event), event["y"]
        health = [r["health"] for r in self.course.driving if r["unit"] == event["unit"] and r["y"] == year][0] / 100
        labour = kind.row.number("Pack change, labour", "USD", 0.0) * self.study.index("upkeep").at(RUNNING, year)
        return {"price": kind.pack_kwh * self.pack_price(RUNNING, year), "labour": labour,
                "resale": -self.old_pack(kind, health, RUNNING, year)}

    def _year(self, record):
        place, year, kind = record["place"], record["y"], self.type_of(record)
        add = self.ledger.add
        if not kind.electric:
            price, path = self.study.fuels[kind.fuel]
            add(place, year, "Fuel", record["fuel"] * price * path.at(RUNNING, year))
            price, path = self.study.fluid
            add(place, year, "Exhaust fluid", record["fuel"] * kind.fluid_share * price * path.at(RUNNING, year))
        if record["heater_fuel"]:
            price, path = self.study.fuels["diesel"]
            add(place, year, "Heater fuel", record["heater_fuel"] * price * path.at(RUNNING, year))
        add(place, year, "Upkeep", self.course.shop[place, year] * self.study.index("upkeep").at(RUNNING, year))
        rate = self.study.settings.number("Insurance rate", "%", 0.0065)
        age = year - self.in_service(record["unit"])
        add(place, year, "Insurance", rate * self.value(kind, age, RUNNING, year))
        add(place, year, "Registration", kind.registration)

    def _left(self):
        last = self.study.money.years - 1
        for record in self.course.in_year(last):
            kind, age = self.type_of(record), last + 1 - self.in_service(record["unit"])
            self.ledger.add(record["place"], last, "Bus value left", -self.value(kind, age, END, last))
            if kind.electric:
                share = self.pack_ahead(kind, record["unit"], last + 1, age)
                self.ledger.add(record["place"], last, "Pack life left", -share * kind.pack_kwh * self.pack_price(END, last))
