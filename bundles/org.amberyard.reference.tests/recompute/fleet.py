"""What buses and their packs are worth, and what the places of the fleet cost."""

from money import END, RUNNING, START, life_left

YARD = "Yard"


class Ledger:
    """Costs in constant money by place, year and category; credits are negative."""

    def __init__(self):
        self._cells, self._sums = {}, {}

    def add(self, place, year, category, amount):
        """Adds to a cell."""
        key = place, year, category
        self._cells[key] = self._cells.get(key, 0.0) + amount
        self._sums[key[1:]] = self._sums.get(key[1:], 0.0) + amount

    def cell(self, place, year, category):
        """Cost of a place; of all places together without one."""
        return self._cells.get((place, year, category), 0.0) if place else self._sums.get((year, category), 0.0)


class Fleet:
    """Writes the costs of buses into a ledger."""

    def __init__(self, study, course, ledger):
        self.study, self.course, self.ledger = study, course, ledger
        self.bought = {e["unit"]: e["y"] for e in course.events if e["event"] == "bought"}

    def write(self):
        """All costs that belong to places but sales."""
        for event in self.course.events:
            self._event(event)
        for record in self.course.driving:
            self._year(record)
        self._left()

    def write_sales(self, scrapped):
        """What leaves the fleet is sold, unless a programme has it scrapped."""
        for event in self.leaving():
            if event["unit"] not in scrapped:
                sale = self._sale(self.type_of(event), event["unit"], event["y"])
                self.ledger.add(event["place"], event["y"], "Bus sales", -sale)

    def leaving(self):
        """Buses that leave the fleet."""
        return [e for e in self.course.events if e["event"] in ("sold", "scrapped")]

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

    def odometer(self, unit, year):
        """Miles that a bus has driven at the start of a year."""
        start = 0.0 if unit in self.bought else self.study.buses[unit].number("Odometer", "mi", 0.0)
        return start + sum(r["distance"] for r in self.course.unit_years(unit) if r["y"] < year)

    def left(self, kind, unit, year):
        """Share of the life of a bus that is left at the start of a year: by age or by odometer, whichever leaves
        less.
        """
        by_age = life_left(year - self.in_service(unit), kind.life)
        return min(by_age, life_left(self.odometer(unit, year), kind.life_miles))

    def value(self, kind, left, when, year):
        """Worth of a bus: a straight line over its life from the price of a new one to the value at retirement, on the
        path of that price.
        """
        return (left * kind.price + (1 - left) * kind.end_value) * self.study.index(kind.subject).at(when, year)

    def pack_price(self, when, year):
        """Price of a new pack per kilowatt-hour."""
        price, path = self.study.pack
        return price * path.at(when, year)

    def old_pack(self, kind, health, when, year):
        """What an old pack brings by itself."""
        each = kind.row.number("Old pack resale", "USD/kWh", 0.0)
        return each * kind.pack_kwh * health * self.study.pack[1].at(when, year)

    def pack_ahead(self, kind, unit, until):
        """Share of a new pack by which the pack of a bus is ahead of its bus, after the years before a year.

        A replacement counts by what it is ahead of the bus's straight line or behind it; the pack that the bus came
        with only where it has worn faster than the bus.
        """
        changed = self.pack_changed(unit, until)
        years = self.pack_years(unit, until, changed)
        health = years[-1]["health"] / 100 if years else 1.0
        cycles = sum(r["full_cycles"] for r in years)
        allowed = 1 - kind.row.number("End-of-life capacity", "%", 0.7)
        limit = kind.row.number("Cycle limit", "cycles", 2000.0)
        oldest = kind.row.number("Pack age limit", "yr", 40.0)
        left = max(0.0, min(1 - cycles / limit, 1 - (1 - health) / allowed, 1 - len(years) / oldest))
        held = self.left(kind, unit, until)
        return min(0.0, left - held) if changed is None else left - held

    def pack_changed(self, unit, until):
        """Last year, of those before a year, at whose end a bus was given a new pack; None while it has its first."""
        changes = [e["y"] for e in self.course.events if e["unit"] == unit and e["event"] == "pack replaced"]
        return max((y for y in changes if y < until), default=None)

    def pack_years(self, unit, until, changed):
        """Years of driving before a year with the pack that came at a change, or with the first one."""
        return [r for r in self.course.unit_years(unit) if r["y"] < until and (changed is None or r["y"] > changed)]

    def _event(self, event):
        kind, year, place = self.type_of(event), event["y"], event["place"]
        if event["event"] == "bought":
            self.ledger.add(place, year, "Bus purchase", self.price(kind, START, year))
        elif event["event"] == "pack replaced":
            self.ledger.add(place, year, "Battery replacement", sum(self.pack_bill(event).values()))

    def _sale(self, kind, unit, year):
        worth = self.value(kind, self.left(kind, unit, year), START, year)
        if not kind.electric:
            return worth
        pack = self.pack_ahead(kind, unit, year) * kind.pack_kwh * self.pack_price(START, year)
        before = [r for r in self.course.unit_years(unit) if r["y"] < year]
        return worth + min(pack, self.old_pack(kind, before[-1]["health"] / 100, START, year))

    def pack_bill(self, event):
        """Price, maker's part, labour and resale of a replaced pack, at the end of the year in which it is due."""
        kind, year = self.type_of(event), event["y"]
        labour = kind.row.number("Pack change, labour", "USD", 0.0) * self.study.index("upkeep").at(RUNNING, year)
        years = self.pack_years(event["unit"], year + 1, self.pack_changed(event["unit"], year))
        health, share = years[-1]["health"] / 100, self._maker_share(kind, years)
        price = kind.pack_kwh * self.pack_price(RUNNING, year)
        return {
            "price": price,
            "maker_pays": -share * price,
            "labour": labour,
            "resale": -(1 - share) * self.old_pack(kind, health, RUNNING, year),
        }

    @staticmethod
    def _maker_share(kind, years):
        """Under a warranty the maker pays, and takes the old pack, for what is left of the nearer of years and
        distance.
        """
        promised = kind.row.number("Pack warranty", "yr", 0.0)
        if not promised or years[-1]["health"] / 100 > kind.row.number("Pack warranty capacity", "%", 0.7):
            return 0.0
        miles = sum(r["distance"] for r in years)
        return max(0.0, min(1 - len(years) / promised, 1 - miles / kind.row.number("Pack warranty distance", "mi")))

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
        path = self.study.index("upkeep").at(RUNNING, year)
        add(place, year, "Upkeep", self.course.shop[place, year] * path)
        rate = self.study.settings.number("Insurance rate", "%", 0.0065)
        left = self.left(kind, record["unit"], year)
        add(place, year, "Insurance", rate * self.value(kind, left, RUNNING, year))
        add(place, year, "Registration", kind.registration * path)

    def _left(self):
        last = self.study.money.years - 1
        for record in self.course.in_year(last):
            kind, left = self.type_of(record), self.left(self.type_of(record), record["unit"], last + 1)
            self.ledger.add(record["place"], last, "Bus value left", -self.value(kind, left, END, last))
            if kind.electric:
                share = self.pack_ahead(kind, record["unit"], last + 1)
                self.ledger.add(
                    record["place"], last, "Pack life left", -share * kind.pack_kwh * self.pack_price(END, last)
                )
