"""Emissions: activity times factor, activity by activity.

A factor that is not entered makes a mass unknown (NaN), which spreads into every sum that holds it; nothing of an
activity emits nothing. Masses are in kilograms.
"""

import math

GASES = ["CO2", "CH4", "N2O"]
POLLUTANTS = ["CO2e"] + GASES + ["NOx", "PM2.5", "HC", "CO", "SO2"]
EXHAUST = ["NOx", "PM2.5", "HC", "CO"]
KG_PER_SHORT_TON = 907.18474
LITRES_PER_GALLON = 3.785411784
UNKNOWN = math.nan
WARMING = {"AR4": (25, 298), "AR5": (28, 265), "AR6": (27.9, 273)}
CO2_KG_PER_GALLON = {"diesel": 10.21, "gasoline": 8.78, "propane": 5.72}
"""Defaults of the program where a study enters none: US EPA, Emission Factors Hub, 15 January 2025, table 2."""
MEDIUM_DIESEL = {"CH4": 0.0095, "N2O": 0.0431}
"""Grams per mile where a study enters none: the same, table 4, medium and heavy diesel from 2007 on."""


def nothing():
    """Masses of nothing."""
    return dict.fromkeys(POLLUTANTS, 0.0)


def plus(*masses):
    """Sum of masses."""
    return {p: sum(m[p] for m in masses) for p in POLLUTANTS}


class Factors:
    """The emission factors of a study."""

    def __init__(self, study):
        folder, self.study = study.folder, study
        self.row = folder.only("emission_factors")
        self.warming = WARMING[self.row.text("Warming potentials", "AR5")]
        self.engines = folder.rows("engine_emissions")
        self.fuels = {r.text("Fuel"): r for r in folder.rows("fuel_emissions")}
        self.line_loss = self.row.number("Line loss", "%", 0.05)
        self.upstream = self.row.yes("Tell upstream of fuel")
        self.social, self.health = folder.rows("social_costs"), folder.rows("health_costs")
        self.social_rate = self.row.number("Social cost at rate", "%", 0.02)
        self.social_factor = self.row.number("Social cost price factor", "", 1.0)
        grid, basis = folder.rows("grid_emissions"), self.row.text("Grid basis", "average")
        region = self.row.text("Grid region", grid[0].text("Region"))
        self.grid = [r for r in grid if r.text("Region") == region and r.text("Basis") == basis]
        self.other_grid = [r for r in grid if r.text("Region") == region and r.text("Basis") != basis]
        if len(self.grid) > 1 or len(self.other_grid) > 1 or self.row.number("Grid trend", "%", 0.0):
            raise ValueError("The recomputation knows a grid that stays as it is.")

    def engine(self, fuel, model_year):
        """Factors of the engines of a fuel and model year; None where there are none."""
        return next(
            (
                r
                for r in self.engines
                if r.text("Fuel") == fuel
                and int(r.text("First engine model year", "0"))
                <= model_year
                <= int(r.text("Last engine model year", "9999"))
            ),
            None,
        )

    def burnt(self, fuel, gallons):
        """What the fuel alone decides."""
        masses, row = nothing(), self.fuels.get(fuel)
        if gallons:
            masses["CO2"] = gallons * CO2_KG_PER_GALLON[fuel]
            so2 = row.number("SO2", "g/L", None) if row else None
            masses["SO2"] = UNKNOWN if so2 is None else gallons * LITRES_PER_GALLON * so2 / 1000
        return masses

    def driven(self, fuel, model_year, miles):
        """What depends on engine, exhaust and distance."""
        row, masses = self.engine(fuel, model_year), nothing()
        for p in ["CH4", "N2O"] + EXHAUST if miles else []:
            grams = row.number(p, "g/mi", None) if row else None
            grams = MEDIUM_DIESEL.get(p, UNKNOWN) if grams is None else grams
            masses[p] = miles * grams / 1000
        return masses

    def idled(self, fuel, model_year, hours):
        """What depends on the hours of idling; methane and nitrous oxide are in the factors by distance."""
        row, masses = self.engine(fuel, model_year), nothing()
        for p in EXHAUST if hours else []:
            grams = row.number(p + ", idling", "g/h", None) if row else None
            masses[p] = UNKNOWN if grams is None else hours * grams / 1000
        return masses

    def warmed(self, masses):
        """With the greenhouse gases added up by their warming."""
        ch4, n2o = self.warming
        return {**masses, "CO2e": masses["CO2"] + ch4 * masses["CH4"] + n2o * masses["N2O"]}

    def plants(self, rows, kwh):
        """What power plants emit for energy at the meter, the loss of the line included. HC and CO are not counted."""
        masses = nothing()
        if not kwh:
            return masses
        generated = kwh / (1 - self.line_loss)
        masses["CO2e"] = generated * rows[0].number("CO2e as published", "kg/kWh")
        masses.update(dict.fromkeys(GASES, UNKNOWN))
        for p in ("NOx", "SO2", "PM2.5"):
            masses[p] = generated * rows[0].number(p, "g/kWh") / 1000
        return masses

    def well_to_tank(self, fuel, gallons):
        """What fuel has emitted on its way, of which only the greenhouse gases are entered."""
        masses = nothing()
        if gallons:
            masses["CO2e"] = gallons * LITRES_PER_GALLON * self.fuels[fuel].number("Upstream CO2e", "kg/L")
            masses.update(dict.fromkeys(("NOx", "PM2.5", "SO2"), UNKNOWN))
        return masses

    def social_per_tonne(self, gas, calendar):
        """Harm of a tonne in money of the base date, on the straight line between the years of the table."""
        column = sorted(
            (int(r.text("Year")), r.number("Cost per tonne", "USD/t"))
            for r in self.social
            if r.text("Gas") == gas and abs(r.number("Discount rate", "%") - self.social_rate) < 1e-9
        )
        before = [p for p in column if p[0] <= calendar] or column[:1]
        after = [p for p in column if p[0] >= calendar] or column[-1:]
        (y0, c0), (y1, c1) = before[-1], after[0]
        return self.social_factor * (c0 if y0 == y1 else c0 + (c1 - c0) * (calendar - y0) / (y1 - y0))


class Bus:
    """What a bus emits in a year on its duty."""

    def __init__(self, factors, plan, record, gallons=None):
        study, kind = plan.study, plan.study.types[record["type"]]
        if record["heater_fuel"]:
            raise ValueError("The recomputation knows no fuel-fired heaters.")
        self.driving, self.idling, self.upstream = nothing(), nothing(), nothing()
        self.miles, self.plants = record["distance"], factors.plants(factors.grid, record["meter_energy"] or 0.0)
        if kind.electric:
            return
        gallons = record["fuel"] if gallons is None else gallons
        hours = study.buses[record["place"]].number("Yard idling per year", "h", 0.0)
        idle = hours * kind.idle_gallons * (record["fuel_factor"] or 100.0) / 100
        self.model_year = model_year(plan, record["unit"])
        self.driving = factors.warmed(
            plus(
                factors.burnt(kind.fuel, gallons - idle),
                factors.driven(kind.fuel, self.model_year, record["distance"]),
            )
        )
        self.idling = factors.warmed(
            plus(factors.burnt(kind.fuel, idle), factors.idled(kind.fuel, self.model_year, hours))
        )
        self.upstream = factors.well_to_tank(kind.fuel, gallons)

    def exhaust(self):
        """What leaves its exhaust pipe."""
        return plus(self.driving, self.idling)


def model_year(plan, unit):
    """Model year of the engine of a bus: as entered for a bus of today, else the year in which it was delivered new.
    """
    if unit in plan.study.buses:
        return int(plan.study.buses[unit].text("Engine model year", "0"))
    return plan.study.money.first_year + plan.values.in_service(unit)


class Year:
    """What a plan emits in a year, by source. The dust of brakes and tyres is taken as it is given."""

    def __init__(self, factors, plan, year):
        buses = [Bus(factors, plan, r) for r in plan.course.in_year(year)]
        self.kwh = plan.course.charged[year]["kwh"] if year in plan.course.charged else 0.0
        self.driving = plus(*(b.driving for b in buses))
        self.idling = plus(*(b.idling for b in buses))
        self.upstream = plus(*(b.upstream for b in buses))
        self.plants = factors.plants(factors.grid, self.kwh)
        self.other_plants = factors.plants(factors.other_grid, self.kwh)

    def co2e(self):
        """Greenhouse gas that counts in totals."""
        return self.driving["CO2e"] + self.idling["CO2e"] + self.plants["CO2e"]

    def health(self, factors, column, dust):
        """Harm to health of buses, their dust included, and of power plants; unknown where none is entered."""
        if not factors.health:
            return UNKNOWN
        buses = plus(self.driving, self.idling, {**nothing(), "PM2.5": dust})
        emitters = {"buses": buses, "power plants": self.plants}
        return sum(
            emitters[r.text("From", "buses")][r.text("Pollutant", "NOx")] / 1000 * r.number(column, "USD/t", 0.0)
            for r in factors.health
        )

    def social(self, factors, calendar):
        """Harm of the greenhouse gas; where gases are not known one by one, their sum counts as carbon dioxide."""
        total = 0.0
        for masses in (self.driving, self.idling, self.plants):
            known = not any(math.isnan(masses[g]) for g in GASES)
            parts = [(g, masses[g]) for g in GASES] if known else [("CO2", masses["CO2e"])]
            total += sum(m / 1000 * factors.social_per_tonne(g, calendar) for g, m in parts if m)
        return total
