"""Holds the electric bills and the funding of every purchase against the results."""

from decimal import ROUND_HALF_UP, Decimal

from money import RUNNING
from yard import MONTHS, Tariff


def compare(study, results, plans, checks):
    """All tables of bills and funding."""
    by_name = {p.name: p for p in plans}
    _by_year(study, results, by_name, checks)
    _lines(study, results, by_name, checks)
    _funding_lines(results, plans, checks)
    _funding_years(results, plans, checks)


def _by_year(study, results, plans, checks):
    paths = {"energy": "electric energy", "demand": "electric demand", "fixed": "electric fixed charges"}
    for row in results.rows("bill_by_year"):
        plan, year = plans[row["plan"]], row["year"] - results.first_year
        base = plan.yard.bill(year)
        paid = {part: base[part] * study.index(paths[part]).at(RUNNING, year) for part in base}
        mine = {
            **base,
            "total": sum(base.values()),
            "price": sum(base.values()) / row["kwh"],
            **{part + "_paid": amount for part, amount in paid.items()},
            "total_paid": sum(paid.values()),
            "price_paid": sum(paid.values()) / row["kwh"],
            "kwh": sum(
                q
                for m in MONTHS
                for (line, _), q in plan.course.quantities[year, m].items()
                if line.endswith("energy")
            ),
        }
        for column, figure in mine.items():
            checks.figure("bill_by_year", (row["plan"], row["year"], column), figure, row[column])
    for row in results.rows("yard_by_month"):
        quantities = plans[row["plan"]].course.quantities[row["year"] - results.first_year, row["month"]]
        kwh = sum(q for (line, _), q in quantities.items() if line.endswith("energy"))
        checks.figure("yard_by_month", (row["plan"], row["year"], row["month"], "energy"), kwh, row["energy"])


def _lines(study, results, plans, checks):
    """Quantity times the price of the sheet; printed lines in whole cents, each rounded, and a month's bill their sum.
    """
    tariff, months = Tariff(study.folder), {}
    for row in results.rows("billed_quantities"):
        contract = row["year"] - results.first_year - min(plans[row["plan"]].course.charged) + 1
        price = tariff.price(row["line"], row["month"], contract)
        where = row["plan"], row["year"], row["month"], row["line"]
        checks.figure("billed_quantities", (*where, "price"), price, row["price"])
        checks.figure("billed_quantities", (*where, "amount"), row["quantity"] * price, row["amount"])
    for row in results.rows("bill_lines"):
        year = row["year"] - results.first_year
        contract = year - min(plans[row["plan"]].course.charged) + 1
        price = tariff.price(row["line"], row["month"], contract)
        where = row["plan"], row["month"], row["line"]
        checks.figure("bill_lines", (*where, "price"), price, row["price"])
        amount = cents(row["quantity"] * price)
        checks.figure("bill_lines", (*where, "amount"), amount, row["amount"])
        months[row["plan"], row["month"]] = months.get((row["plan"], row["month"]), 0.0) + amount
    for row in results.rows("bill_by_month"):
        checks.figure("bill_by_month", (row["plan"], row["month"]), months[row["plan"], row["month"]], row["total"])


def cents(amount):
    """An amount in whole cents."""
    return float(Decimal(repr(amount)).quantize(Decimal("0.01"), ROUND_HALF_UP))


def _funding_lines(results, plans, checks):
    theirs = {}
    for row in results.rows("funding_by_line"):
        theirs.setdefault((row["plan"], row["year"], row["kind"], row["line"]), []).append(row)
    lines = [(p, line) for p in plans for line in p.funding.lines]
    keys = [(p.name, line.year + results.first_year, line.kind, line.name) for p, line in lines]
    checks.keys("funding_by_line", keys, theirs)
    for key, (plan, line) in zip(keys, lines):
        cost, left = sum(line.parts), sum(line.parts)
        rows = sorted(theirs.get(key, []), key=lambda r: r["order"])
        mine = [(p.name, asked, amount) for p, asked, amount in line.awards] + [("Own money", None, sum(line.left))]
        for row, (source, asked, amount) in zip(rows, mine):
            left -= amount
            checks.word("funding_by_line", (*key, "source"), source, row["source"])
            for column, figure in (
                ("cost", cost),
                ("asked", asked),
                ("amount", amount),
                ("share", 100 * amount / cost),
                ("left", left),
            ):
                checks.figure(
                    "funding_by_line", (*key, source, column), figure, row[column], cost if column == "left" else 0.0
                )


def _funding_years(results, plans, checks):
    mine = {}
    for plan in plans:
        for kind, source, _, year, amount in plan.funding.flows:
            key = plan.name, year + results.first_year, kind, source
            sums = mine.setdefault(key, [0.0, 0.0])
            sums[0] += amount
            sums[1] += plan.funding.stated(kind, year, amount)
    theirs = {(r["plan"], r["year"], r["kind"], r["source"]): r for r in results.rows("funding_by_year")}
    checks.keys("funding_by_year", mine, theirs)
    for key, row in theirs.items():
        for column, figure in zip(("amount", "stated"), mine.get(key, (None, None))):
            checks.figure("funding_by_year", (*key, column), figure, row[column])
