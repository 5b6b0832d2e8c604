"""What happens in a plan, as physical quantities: taken from the results, never computed here.

Distances, fuel, energy at the meter, health and cycles of packs by bus and year; who is bought, sold, scrapped, moved
and whose pack is replaced; kilowatts and kilowatt-hours of the bills by month; the work of the shop at base-date
prices.
"""

BOUGHT = "bought", "bought used"


class Course:
    """The course of one plan. Years count from 0."""

    def __init__(self, results, plan):
        def rows(name):
            found = [dict(r) for r in results.rows(name) if r["plan"] == plan]
            for row in found:
                row["y"] = row["year"] - results.first_year
            return found

        self.plan = plan
        self.driving = rows("vehicle_years")
        self._by_year, self._by_unit = {}, {}
        for row in self.driving:
            self._by_year.setdefault(row["y"], []).append(row)
            self._by_unit.setdefault(row["unit"], []).append(row)
        self.events = rows("fleet_events")
        self.shop = {(r["place"], r["y"]): r["cost"] for r in rows("shop_calendar")}
        self.charged = {r["y"]: r for r in rows("bill_by_year")}
        self.quantities = self._quantities(rows("billed_quantities"))
        self.months = {}
        for row in rows("yard_by_month"):
            self.months.setdefault(row["y"], []).append(row)

    @staticmethod
    def _quantities(rows):
        """What the bills of each year and month count, by line and unit."""
        quantities = {}
        for row in rows:
            if row["bill"] != "as metered":
                raise ValueError("The recomputation bills a meter of its own.")
            lines = quantities.setdefault((row["y"], row["month"]), {})
            lines[row["line"], row["unit"]] = lines.get((row["line"], row["unit"]), 0.0) + row["quantity"]
        return quantities

    def purchases(self):
        """Buses that are bought."""
        return [e for e in self.events if e["event"] in BOUGHT]

    def in_year(self, year):
        """Buses that stand in their places in a year."""
        return self._by_year.get(year, [])

    def unit_years(self, unit):
        """Years of a bus, in order."""
        return sorted(self._by_unit.get(unit, []), key=lambda r: r["y"])
