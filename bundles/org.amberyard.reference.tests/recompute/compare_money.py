"""Holds the costs, their sums and the measures of all plans against the results."""

from categories import AT_END, GROUPS


def compare(study, results, plans, checks):
    """All tables of money."""
    by_name = {p.name: p for p in plans}
    _ledgers(results, by_name, checks)
    _cash(results, by_name, checks)
    _budget(results, by_name, checks)


def _ledgers(results, plans, checks):
    for row in results.rows("cost_by_year"):
        year = row["year"] - results.first_year
        mine = plans[row["plan"]].stated(year, row["category"])
        checks.figure("cost_by_year", (row["plan"], row["year"], row["category"]), mine, row["amount"])
    for row in results.rows("cost_by_bus"):
        year, plan = row["year"] - results.first_year, plans[row["plan"]]
        parts = [plan.stated(year, c, row["place"]) for c in GROUPS[row["group"]]]
        checks.figure(
            "cost_by_bus",
            (row["plan"], row["place"], row["year"], row["group"]),
            sum(parts),
            row["amount"],
            sum(map(abs, parts)),
        )


def _cash(results, plans, checks):
    columns = {"capital": "Capital", "funding": "Funding", "energy": "Energy", "upkeep": "Upkeep and fees"}
    for row in results.rows("cash_by_year"):
        year, plan = row["year"] - results.first_year, plans[row["plan"]]
        mine = {c: sum(plan.stated(year, x) for x in GROUPS[g]) for c, g in columns.items()}
        mine["bus_sales"] = plan.stated(year, "Bus sales")
        mine["cash"] = sum(mine.values())
        mine["value_left"] = sum(plan.stated(year, c) for c in AT_END)
        mine["cost"] = mine["cash"] + mine["value_left"]
        for column, amount in mine.items():
            checks.figure("cash_by_year", (row["plan"], row["year"], column), amount, row[column])


def _budget(results, plans, checks):
    for row in results.rows("budget_by_year"):
        year, plan = row["year"] - results.first_year, plans[row["plan"]]
        mine = {
            "purchases": _nominal(plan, year, GROUPS["Capital"]),
            "funding": _nominal(plan, year, GROUPS["Funding"]),
            "sales": _nominal(plan, year, ["Bus sales"]),
            "running": _nominal(plan, year, GROUPS["Energy"] + GROUPS["Upkeep and fees"]),
        }
        for column, amount in mine.items():
            checks.figure("budget_by_year", (row["plan"], row["year"], column), amount, row[column])


def _nominal(plan, year, categories):
    return sum(plan.nominal(year, c) for c in categories)
