"""Holds the measures of plans, the steps between them, packs and the fleet against the results."""

from course import BOUGHT
from measures import CATEGORIES, Figures, Saving


def compare(study, results, plans, co2e, checks):
    """All tables of measures."""
    by_name = {p.name: p for p in plans}
    base = by_name[study.baseline]
    savings = {p.name: Saving(p, base) for p in plans if p is not base}
    _headline(results, by_name, savings, co2e, base.name, checks)
    _measures(results, by_name, savings, checks)
    _difference(results, by_name, base, checks)
    _packs(results, by_name, checks)
    _fleet(study, results, by_name, checks)
    _calibration(study, results, checks)


def _headline(results, plans, savings, co2e, base, checks):
    for row in results.rows("headline"):
        name = row["plan"]
        mine = dict(vars(Figures(plans[name])), greenhouse_gas=co2e[name] / 1000)
        if name in savings:
            mine["present_saving"] = plans[base].present_cost() - plans[name].present_cost()
            mine["greenhouse_gas_saving"] = (co2e[base] - co2e[name]) / 1000
        for column, figure in mine.items():
            checks.figure(
                "headline", (name, column), figure, row[column], mine["present_cost"] if "saving" in column else 0.0
            )
        _paybacks("headline", row, savings.get(name), checks)


def _paybacks(table, row, saving, checks):
    if saving:
        for column, discounted in (("simple_payback", False), ("discounted_payback", True)):
            words, time = saving.payback(discounted)
            checks.word(table, (row["plan"], column), words, row[column])
            checks.figure(table, (row["plan"], column + "_years"), time, row[column + "_years"])


def _measures(results, plans, savings, checks):
    for row in results.rows("measures"):
        plan, saving = plans[row["plan"]], savings.get(row["plan"])
        checks.figure("measures", (row["plan"], "present_cost"), plan.present_cost(), row["present_cost"])
        if not saving:
            continue
        rates = saving.internal_rates()
        mine = {
            "net_saving": saving.net,
            "annual_saving": saving.annual,
            "operating_saving": saving.operating,
            "added_investment": saving.invested,
            "savings_to_investment": saving.ratio(),
            "adjusted_rate": _percent(saving.adjusted_rate()),
            "modified_rate": _percent(saving.modified_rate()),
            "internal_rate_only": _percent(rates[0]) if len(rates) == 1 else None,
        }
        for column, figure in mine.items():
            checks.figure(
                "measures",
                (row["plan"], column),
                figure,
                row[column],
                plan.present_cost() if column.endswith(("saving", "investment")) else 0.0,
            )
        if len(rates) == 1:
            checks.word("measures", (row["plan"], "internal_rate"), f"{100 * rates[0]:.2f} %", row["internal_rate"])
        _paybacks("measures", row, saving, checks)


def _percent(rate):
    return None if rate is None else 100 * rate


def _difference(results, plans, base, checks):
    seen = set()
    for row in results.rows("plan_difference"):
        plan, category = plans[row["plan"]], row["category"]
        seen.add((plan.name, category))
        before, after = base.present(category), plan.present(category)
        for column, figure in (("baseline_cost", before), ("plan_cost", after), ("change", after - before)):
            checks.figure(
                "plan_difference", (plan.name, category, column), figure, row[column], max(abs(before), abs(after))
            )
    mine = {
        (p.name, c)
        for p in plans.values()
        if p is not base
        for c in CATEGORIES
        if abs(p.present(c) - base.present(c)) > 1e-9
    }
    checks.keys("plan_difference", mine, seen)


def _packs(results, plans, checks):
    for row in results.rows("pack_history"):
        if row["done"] != "new pack":
            raise ValueError("The recomputation knows new packs.")
        plan, year = plans[row["plan"]], row["year"] - results.first_year
        event = next(
            e
            for e in plan.course.events
            if e["unit"] == row["unit"] and e["y"] == year and e["event"] == "pack replaced"
        )
        bill = plan.fleet.pack_bill(event)
        mine = {
            "price": bill["price"],
            "maker_pays": -bill["maker_pays"],
            "labour": bill["labour"],
            "resale": -bill["resale"],
            "paid": sum(bill.values()),
        }
        for column, figure in mine.items():
            checks.figure("pack_history", (row["plan"], row["unit"], row["year"], column), figure, row[column])
        checks.figure(
            "fleet_events", (row["plan"], row["unit"], row["year"], "pack"), bill["price"], event["pack_price"]
        )


def _fleet(study, results, plans, checks):
    for row in results.rows("fleet_by_year"):
        plan, year = plans[row["plan"]], row["year"] - results.first_year
        buses = plan.course.in_year(year)
        ages = [year - plan.values.in_service(b["unit"]) for b in buses]
        electric = sum(study.types[b["type"]].electric for b in buses)
        roles = {
            r: sum(study.buses[b["place"]].text("Role") == r for b in buses) for r in ("route", "spare", "activity")
        }
        mine = {
            "electric": electric,
            "engine": len(buses) - electric,
            **roles,
            "mean_age": sum(ages) / len(ages),
            "spare_ratio": 100 * roles["spare"] / roles["route"],
            "oldest_age": max(ages),
            "bought": _events(plan, year, BOUGHT),
            "left": _events(plan, year, ("sold", "scrapped")),
        }
        for column, figure in mine.items():
            checks.figure("fleet_by_year", (row["plan"], row["year"], column), figure, row[column])
    for plan in plans.values():
        for event in plan.fleet.leaving():
            mine = "scrapped" if event["unit"] in plan.funding.scrapped() else "sold"
            checks.word("fleet_events", (plan.name, event["unit"], event["year"]), mine, event["event"])
        for record in plan.course.driving:
            age = record["y"] - plan.values.in_service(record["unit"])
            checks.figure("vehicle_years", (plan.name, record["unit"], record["year"], "age"), age, record["age"])


def _events(plan, year, kinds):
    return sum(e["event"] in kinds and e["y"] == year for e in plan.course.events)


def _calibration(study, results, checks):
    """Upkeep measured by work orders over that of the tasks, by type; all kilometres of the base year count alike."""
    first = {
        r["place"]: r
        for r in results.rows("vehicle_years")
        if r["plan"] == study.baseline and r["year"] == results.first_year
    }
    for row in results.rows("upkeep_calibration"):
        measured = [
            b
            for b in study.buses.values()
            if b.number("Measured upkeep", "USD/mi", 0.0) and row["type"] in (b.text("Vehicle type"), "All measured")
        ]
        miles = sum(first[b.text("Name")]["distance"] for b in measured)
        checks.figure("upkeep_calibration", (row["type"], "distance"), miles, row["distance"])
        if measured:
            money = sum(first[b.text("Name")]["distance"] * b.number("Measured upkeep", "USD/mi") for b in measured)
            mine = {
                "measured": money / miles,
                "miss": 100 * (row["modelled"] * miles / money - 1),
                "factor": 100 * money / miles / row["modelled"],
            }
            for column, figure in mine.items():
                checks.figure(
                    "upkeep_calibration",
                    (row["type"], column),
                    figure,
                    row[column],
                    100.0 if column == "miss" else 0.0,
                )
