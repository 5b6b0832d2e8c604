"""What buses and their packs cost and are worth."""

from dataclasses import dataclass

from money import life_left


@dataclass
class UsedBus:
    """A bus of a step, as it is when it is bought; of no age and distance when it is new."""

    age: int = 0
    miles: float = 0.0
    price: float = 0.0

    @staticmethod
    def of(row):
        """The bus of a row of the replacements."""
        if row.number("Battery health of used bus", "%", 0.0):
            raise ValueError("The recomputation knows no used electric buses.")
        return UsedBus(
            int(row.number("Age of used bus", "yr", 0.0)),
            row.number("Odometer of used bus", "mi", 0.0),
            row.number("Price of used bus", "USD", 0.0),
        )


NEW = UsedBus()


class Values:
    """Prices and values of the buses of a plan."""

    def __init__(self, study, course):
        self.study, self.course = study, course
        self.bought = {e["unit"]: e["y"] for e in course.purchases()}
        rows = {(r.text("Bus"), study.year(r)): r for r in study.of_plan("replacements", course.plan)}
        steps = {e["unit"]: rows.get((e["place"], e["y"])) for e in course.purchases()}
        used = {unit: UsedBus.of(row) for unit, row in steps.items() if row}
        self.used = {u: bus for u, bus in used.items() if bus.age or bus.miles}

    def in_service(self, unit):
        """Year in which a bus was delivered new, counted from the first year of the study."""
        if unit in self.bought:
            return self.bought[unit] - self.used.get(unit, NEW).age
        return int(self.study.buses[unit].text("In service since")) - self.study.money.first_year

    def odometer(self, unit, year):
        """Miles that a bus has driven at the start of a year."""
        if unit in self.bought:
            start = self.used.get(unit, NEW).miles
        else:
            start = self.study.buses[unit].number("Odometer", "mi", 0.0)
        return start + sum(r["distance"] for r in self.course.unit_years(unit) if r["y"] < year)

    def left(self, kind, unit, year):
        """Share of the life of a bus that is left at the start of a year: by age or by odometer, whichever leaves less.

        The life of a bus that was bought used is what it had left then.
        """
        then = self.used.get(unit, NEW)
        years, miles = kind.life - then.age, kind.life_miles - then.miles
        if years <= 0 or miles <= 0:
            return 0.0
        by_age = life_left(year - self.in_service(unit) - then.age, years)
        return min(by_age, life_left(self.odometer(unit, year) - then.miles, miles))

    def price(self, kind, unit, when, year):
        """Price of a bus that is bought; of a new one of a type without a bus."""
        return self._list(kind, unit) * self.study.index(kind.subject).at(when, year)

    def value(self, kind, unit, moment, when, year):
        """Worth of a bus at the start of a moment's year, at the prices of a year: a straight line over its life from
        what it cost to the value at retirement, on the path of prices of new buses.
        """
        left, price = self.left(kind, unit, moment), self._list(kind, unit)
        end = min(price, kind.end_value)
        return (left * price + (1 - left) * end) * self.study.index(kind.subject).at(when, year)

    def _list(self, kind, unit):
        return self.used[unit].price if unit in self.used else kind.price

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
