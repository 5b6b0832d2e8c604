"""What the places of the fleet cost."""

from course import BOUGHT
from money import END, RUNNING, START

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

    def __init__(self, values, ledger):
        self.values, self.ledger = values, ledger
        self.study, self.course = values.study, values.course

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

    def _event(self, event):
        kind, year, place = self.type_of(event), event["y"], event["place"]
        if event["event"] in BOUGHT:
            self.ledger.add(place, year, "Bus purchase", self.values.price(kind, event["unit"], START, year))
        elif event["event"] == "pack replaced":
            self.ledger.add(place, year, "Battery replacement", sum(self.pack_bill(event).values()))

    def _sale(self, kind, unit, year):
        worth = self.values.value(kind, unit, year, START, year)
        if not kind.electric:
            return worth
        pack = self.values.pack_ahead(kind, unit, year) * kind.pack_kwh * self.values.pack_price(START, year)
        before = [r for r in self.course.unit_years(unit) if r["y"] < year]
        return worth + min(pack, self.values.old_pack(kind, before[-1]["health"] / 100, START, year))

    def pack_bill(self, event):
        """Price, maker's part, labour and resale of a replaced pack, at the end of the year in which it is due."""
        kind, year = self.type_of(event), event["y"]
        labour = kind.row.number("Pack change, labour", "USD", 0.0) * self.study.index("upkeep").at(RUNNING, year)
        values, unit = self.values, event["unit"]
        years = values.pack_years(unit, year + 1, values.pack_changed(unit, year))
        health, share = years[-1]["health"] / 100, self._maker_share(kind, years)
        price = kind.pack_kwh * values.pack_price(RUNNING, year)
        return {
            "price": price,
            "maker_pays": -share * price,
            "labour": labour,
            "resale": -(1 - share) * values.old_pack(kind, health, RUNNING, year),
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
        add(place, year, "Insurance", rate * self.values.value(kind, record["unit"], year, RUNNING, year))
        add(place, year, "Registration", kind.registration * path)

    def _left(self):
        last, values = self.study.money.years - 1, self.values
        for record in self.course.in_year(last):
            kind, place, unit = self.type_of(record), record["place"], record["unit"]
            self.ledger.add(place, last, "Bus value left", -values.value(kind, unit, last + 1, END, last))
            if kind.electric:
                share = values.pack_ahead(kind, unit, last + 1)
                self.ledger.add(place, last, "Pack life left", -share * kind.pack_kwh * values.pack_price(END, last))
