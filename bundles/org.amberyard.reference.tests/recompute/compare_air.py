"""Holds emissions, what they cost others and what a ton less costs against the results."""

import math

from air import KG_PER_SHORT_TON, Factors, Year
from money import RUNNING
from project import cost, replaced

TOLD_OF_PLANTS = ["NOx", "PM2.5", "CO2", "SO2"]


def compare(study, results, plans, checks):
    """All tables of the air."""
    factors = Factors(study)
    years = {(p.name, y): Year(factors, p, y) for p in plans for y in range(study.money.years)}
    baseline = next(p for p in plans if p.name == study.baseline)
    projects = {p.name: replaced(factors, p, baseline) for p in plans if p is not baseline}
    _by_year(factors, results, years, checks)
    _harm(study, factors, results, years, checks)
    _by_bus(results, projects, checks)
    _lifetime(study, results, projects, checks)
    _per_ton(factors, study, results, {p.name: p for p in plans}, projects, checks)
    return {p.name: sum(years[p.name, y].co2e() for y in range(study.money.years)) for p in plans}


def _by_year(factors, results, years, checks):
    for row in results.rows("emissions_by_year"):
        mine, p = years[row["plan"], row["year"] - results.first_year], row["pollutant"]
        total = sum(m[p] for m in (mine.driving, mine.idling, mine.plants)) + row["brakes"] + row["tyres"]
        figures = {
            "driving": mine.driving[p],
            "idling": mine.idling[p],
            "heaters": 0.0,
            "power_plants": mine.plants[p],
            "total": total,
            "total_short_tons": total / KG_PER_SHORT_TON,
            "power_plants_other_basis": mine.other_plants[p],
            "upstream": mine.upstream[p] if factors.upstream else None,
        }
        for column, mass in figures.items():
            checks.figure("emissions_by_year", (row["plan"], row["year"], p, column), mass, row[column])


def _harm(study, factors, results, years, checks):
    dust = {
        (r["plan"], r["year"]): r["brakes"] + r["tyres"]
        for r in results.rows("emissions_by_year")
        if r["pollutant"] == "PM2.5"
    }
    for row in results.rows("air_harm_by_year"):
        year = row["year"] - results.first_year
        social = years[row["plan"], year].social(factors, row["year"])
        present = social * (1 + factors.social_rate) ** -study.money.time(RUNNING, year)
        checks.figure("air_harm_by_year", (row["plan"], row["year"], "social"), social, row["social_cost"])
        checks.figure("air_harm_by_year", (row["plan"], row["year"], "present"), present, row["social_cost_present"])
        for column, label in (("health_low", "Low end"), ("health_high", "High end")):
            harm = years[row["plan"], year].health(factors, label, dust[row["plan"], row["year"]])
            checks.figure("air_harm_by_year", (row["plan"], row["year"], column), harm, row[column])


def _chosen(projects, row):
    """The buses of a row: one, or all of the project."""
    return [b for b in projects[row["plan"]] if row["place"] == "All" or b.key == (row["place"], row["year"])]


def _by_bus(results, projects, checks):
    for row in results.rows("emissions_by_bus"):
        buses, p, dust = _chosen(projects, row), row["pollutant"].split(",")[0], "brakes" in row["pollutant"]
        where = row["plan"], row["place"], row["year"], row["pollutant"]
        checks.figure("emissions_by_bus", (*where, "distance"), sum(b.before.miles for b in buses), row["distance"])
        before = row["before_kg"] if dust else sum(b.before.exhaust()[p] for b in buses)
        after = row["after_kg"] if dust else sum(b.after.exhaust()[p] for b in buses)
        for column, mass in (("before", before), ("after", after), ("reduced", before - after)):
            checks.figure("emissions_by_bus", (*where, column), mass, row[column + "_kg"])
            checks.figure("emissions_by_bus", (*where, column + " tons"), mass / KG_PER_SHORT_TON, row[column])
        gas = "CO2e" if p == "CO2" else p
        plants = sum(b.after.plants[gas] for b in buses) if not dust and p in TOLD_OF_PLANTS else math.nan
        upstream = sum(b.before.upstream[gas] - b.after.upstream[gas] for b in buses) if p == "CO2" else math.nan
        checks.figure("emissions_by_bus", (*where, "plants"), plants / KG_PER_SHORT_TON, row["power_plants"])
        checks.figure("emissions_by_bus", (*where, "upstream"), upstream / KG_PER_SHORT_TON, row["upstream_reduced"])


def _lifetime(study, results, projects, checks):
    for row in results.rows("emissions_lifetime"):
        if "brakes" in row["pollutant"]:
            continue
        buses, p = _chosen(projects, row), row["pollutant"].split(",")[0]
        where = row["plan"], row["place"], row["year"], row["pollutant"]
        if row["place"] != "All":
            retires = study.money.first_year + buses[0].retires()
            checks.figure("emissions_lifetime", (*where, "retires"), retires, row["retires"])
            checks.figure("emissions_lifetime", (*where, "years"), buses[0].remaining(), row["remaining_years"])
        mass = sum(b.remaining() * (b.before.exhaust()[p] - b.after.exhaust()[p]) for b in buses)
        checks.figure("emissions_lifetime", (*where, "lifetime"), mass, row["lifetime_kg"])
        checks.figure("emissions_lifetime", (*where, "tons"), mass / KG_PER_SHORT_TON, row["lifetime"])


def _per_ton(factors, study, results, plans, projects, checks):
    weights = {
        "NOx": factors.row.number("Weight of NOx", "", 1.0),
        "HC": factors.row.number("Weight of HC", "", 1.0),
        "PM2.5": factors.row.number("Weight of PM2.5", "", 20.0),
    }
    recovery = study.money.recovery(
        factors.row.number("Capital recovery rate", "%", 0.02), factors.row.number("Project life", "yr", 10.0)
    )
    for row in results.rows("cost_effectiveness"):
        buses, where = projects[row["plan"]], (row["plan"], row["measure"], row["basis"])
        money = cost(plans[row["plan"]], plans[study.baseline], buses)[row["basis"]]
        if row["measure"].startswith("weighted"):
            kg = sum(w * (b.before.exhaust()[p] - b.after.exhaust()[p]) for b in buses for p, w in weights.items())
        else:
            p = row["measure"].split(",")[0]
            kg = sum(b.remaining() * (b.before.exhaust()[p] - b.after.exhaust()[p]) for b in buses)
        tons = kg / KG_PER_SHORT_TON
        per_ton = (recovery if row["measure"].startswith("weighted") else 1.0) * money / tons if tons > 0 else None
        for column, mine in (("cost", money), ("reduced_kg", kg), ("reduced", tons), ("cost_per_short_ton", per_ton)):
            checks.figure("cost_effectiveness", (*where, column), mine, row[column])
