"""Holds the prices at which a plan wins against the results: just beside each stated price, both plans are costed
again.

What happens in the plans is taken as it is at the prices of the study; where another price has a bus retired instead of
given a new pack, the answers may differ.
"""

import re

from costs import Plan

_FROM_TO = re.compile(r"is (always|never) cheaper than .*? from ([0-9.]+).*? to ([0-9.]+)")
_SIDE = re.compile(r"is cheaper than .*? (above|below) ([0-9.]+)")


def compare(study, results, plans, checks):
    """Every row of the table, where it has been made."""
    if not results.has("price_break_even"):
        return
    courses = {p.name: p.course for p in plans}
    levers = study.levers()
    keys = [(p.name, lever) for p in plans if p.name != study.baseline for lever in levers]
    checks.keys("price_break_even", keys, [(r["plan"], r["price"]) for r in results.rows("price_break_even")])
    for row in results.rows("price_break_even"):
        for price, wins in _claims(row["answer"]):
            mine = _wins(study, courses, row, price)
            checks.word("price_break_even", (row["plan"], row["price"], price), mine, wins)


def _claims(answer):
    """What an answer says, as pairs of a price and whether the plan wins at it."""
    ends = _FROM_TO.search(answer)
    if ends:
        wins = ends.group(1) == "always"
        return [(float(ends.group(2)), wins), (float(ends.group(3)), wins)]
    side = _SIDE.search(answer)
    if not side:
        raise ValueError(f"The recomputation does not understand {answer!r}.")
    digits = len(side.group(2).partition(".")[2])
    price, half, above = float(side.group(2)), 0.51 * 10**-digits, side.group(1) == "above"
    return [(price - half, not above), (price + half, above)]


def _wins(study, courses, row, price):
    """True when the plan costs less than the baseline at a price."""
    lever = row["price"]
    if lever in study.fuels:
        factor = price / study.fuels[lever][0]
    elif lever == "replacement packs":
        factor = price / study.pack[0]
    else:
        factor = price / 100 if lever == "real discount rate" else price
    other = study.at(lever, factor)
    costs = [Plan(other, courses[name]).present_cost() for name in (row["plan"], study.baseline)]
    return costs[0] < costs[1]
