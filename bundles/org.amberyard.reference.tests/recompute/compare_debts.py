"""Holds loans, leases and bonds, and what must be appropriated for them, against the results."""


def compare(study, results, plans, checks):
    """All tables of financing."""
    by_name = {p.name: p for p in plans}
    _debts(study, results, by_name, checks)
    _payments(results, by_name, checks)
    _years(results, by_name, checks)
    _budget(study, results, by_name, checks)
    _measures(study, results, by_name, checks)


def _debts(study, results, plans, checks):
    keys = {
        (p.name, d.row.text("Name"), d.year + results.first_year): d for p in plans.values() for d in p.finance.debts
    }
    rows = {(r["plan"], r["financing"], r["year"]): r for r in results.rows("debts")}
    checks.keys("debts", keys, rows)
    for key in keys.keys() & rows.keys():
        debt, row = keys[key], rows[key]
        mine = {
            "sum": debt.sum,
            "fee": debt.fee,
            "payments_per_year": debt.per_year,
            "period_rate": 100 * debt.rate,
            "payment": debt.level,
            "last_year": row["year"] + debt.payments[-1].year,
            "interest": sum(p.interest for p in debt.payments),
            "owed_at_end": debt.owed_after(study.money.years - debt.year),
        }
        for column, figure in mine.items():
            checks.figure("debts", (*key, column), figure, row[column], debt.sum if column == "owed_at_end" else 0.0)


def _payments(results, plans, checks):
    mine = {
        (p.name, d.row.text("Name"), d.year + results.first_year, x.number): (d, x)
        for p in plans.values()
        for d in p.finance.debts
        for x in d.payments
    }
    rows = {(r["plan"], r["financing"], r["drawn"], r["number"]): r for r in results.rows("debt_payments")}
    checks.keys("debt_payments", mine, rows)
    for key in mine.keys() & rows.keys():
        (debt, payment), row = mine[key], rows[key]
        figures = {
            "year": row["drawn"] + payment.year,
            **{
                c: getattr(payment, c) for c in ("time", "interest", "principal", "deposit", "paid", "balance", "fund")
            },
        }
        for column, figure in figures.items():
            checks.figure(
                "debt_payments",
                (*key, column),
                figure,
                row[column],
                debt.sum if column in ("balance", "principal", "interest", "paid", "fund", "deposit") else 0.0,
            )


def _years(results, plans, checks):
    for row in results.rows("financing"):
        finance, year = plans[row["plan"]].finance, row["year"] - results.first_year
        size = sum(d.sum for d in finance.debts)
        mine = {**{line: finance.line(year, line) for line in finance.LINES}, "owed": finance.owed(year)}
        for column, figure in mine.items():
            checks.figure("financing", (row["plan"], row["year"], column), figure, row[column], size)


def _budget(study, results, plans, checks):
    caps = {r.text("Name"): r.number("Budget cap per year", "USD", 0.0) for r in study.folder.rows("plans")}
    for row in results.rows("budget_by_year"):
        finance, year = plans[row["plan"]].finance, row["year"] - results.first_year
        service = sum(finance.line(year, line) for line in finance.LINES if line != "borrowed")
        cash = sum(row[c] for c in ("purchases", "funding", "sales", "running", "taxes"))
        needed = cash + finance.line(year, "borrowed") + service
        cap = caps[row["plan"]]
        above = (needed - cap if needed - cap > 0.005 else 0.0) if cap else None
        size = row["purchases"] + row["running"] + service
        for column, figure in (
            ("borrowed", finance.line(year, "borrowed")),
            ("debt_service", service),
            ("appropriation", needed),
            ("cap", cap or None),
            ("above_cap", above),
        ):
            checks.figure("budget_by_year", (row["plan"], row["year"], column), figure, row[column], size)


def _measures(study, results, plans, checks):
    base, recovery = plans[study.baseline], study.money.recovery(study.money.real, study.money.years)
    after = {p.name: p.present_cost() + p.finance.present() for p in plans.values()}
    for row in results.rows("measures"):
        plan, size = plans[row["plan"]], after[base.name]
        mine = {"financing": plan.finance.present(), "taxes": 0.0, "financed_cost": after[plan.name]}
        if plan is not base:
            saved = after[base.name] - after[plan.name]
            mine.update(financed_saving=saved, financed_annual_saving=saved * recovery)
        for column, figure in mine.items():
            checks.figure("measures", (row["plan"], column), figure, row[column], size)
