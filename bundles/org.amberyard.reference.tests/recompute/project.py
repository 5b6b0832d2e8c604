"""The project of a grant: the engine buses that a plan replaces otherwise than the baseline does."""

import math

from air import Bus
from course import BOUGHT
from fleet import YARD
from money import START


class Replaced:
    """An engine bus that leaves its place, and the bus that stands there then, in the year of the change."""

    def __init__(self, factors, plan, baseline, old, record, bought):
        self.plan, self.baseline, self.unit, self.now, self.bought = plan, baseline, old["unit"], record, bought
        before = self._instead()
        if not math.isclose(before["distance"], record["distance"], rel_tol=1e-12):
            raise ValueError(
                "The recomputation takes the fuel of the old bus from its last year, at the same distance."
            )
        stays = before["unit"] == self.unit
        self.before, self.after = Bus(factors, plan if stays else baseline, before), Bus(factors, plan, record)

    def _instead(self):
        """What would drive in the year of the change: the old bus, or the one that the baseline has in its place where
        the old bus would leave in that year anyway.
        """
        place, year = self.now["place"], self.now["y"]
        if self.retires() <= year:
            return next(r for r in self.baseline.course.in_year(year) if r["place"] == place)
        drove = [r for r in self.plan.course.unit_years(self.unit) if r["place"] == place and r["y"] < year]
        return {**drove[-1], "y": year}

    @property
    def key(self):
        """Place and calendar year of the change."""
        return self.now["place"], self.now["year"]

    def retires(self):
        """Year in which the old bus leaves the place in the baseline, or by the rule after the study."""
        place, money = self.now["place"], self.plan.study.money
        there = [r["y"] for r in self.baseline.course.unit_years(self.unit) if r["place"] == place]
        if self.now["y"] not in there:
            return self.now["y"]
        return max(there) + 1 if max(there) < money.years - 1 else self._after_study(place)

    def _after_study(self, place):
        years = self.plan.study.money.years
        planned = self.plan.study.buses[place].text("Planned retirement") if self.unit == place else ""
        if planned:
            return max(years, int(planned) - self.plan.study.money.first_year)
        raise ValueError("The recomputation knows planned retirements only.")

    def remaining(self):
        """Years that the old bus would have driven on."""
        return max(0, self.retires() - self.now["y"])


def replaced(factors, plan, baseline):
    """All of them, in the order of year and place; what the baseline does as well is no part of the project."""
    found = []
    for event in plan.course.events:
        if event["event"] in (*BOUGHT, "moved"):
            old = _leaves(plan, event)
            now = [r for r in plan.course.in_year(event["y"]) if r["place"] == event["place"]]
            if old and now and not plan.study.types[old["type"]].electric and not _baseline_too(baseline, event, old):
                found.append(Replaced(factors, plan, baseline, old, now[0], event["event"] in BOUGHT))
    return sorted(found, key=lambda r: (r.now["y"], list(plan.study.buses).index(r.now["place"])))


def _leaves(plan, event):
    for e in plan.course.events:
        if e["y"] == event["y"] and (
            e["event"] == "moved"
            and e["from_place"] == event["place"]
            or e["event"] in ("sold", "scrapped")
            and e["place"] == event["place"]
        ):
            return e
    return None


def _baseline_too(baseline, event, old):
    left = _leaves(baseline, event)
    return bool(
        left
        and left["unit"] == old["unit"]
        and any(
            r["place"] == event["place"] and r["type"] == event["type"] for r in baseline.course.in_year(event["y"])
        )
    )


def cost(plan, baseline, buses):
    """Capital of the project and what programmes award for it and do not take back, whenever they pay, in stated money of the
    purchases, not discounted: what is bought for the first time, less what the baseline buys for its yard too. Renewals, credits
    and aid are no part of it.
    """
    bought, first = {b.key for b in buses if b.bought}, plan.study.money.first_year
    lines = [line for line in plan.funding.lines if line.place == YARD or (line.place, line.year + first) in bought]
    signed = [(line, 1.0) for line in lines] + [(line, -1.0) for line in baseline.funding.lines if line.place == YARD]
    stated = plan.study.money.restated
    return {
        "capital": sum(sign * stated(sum(line.parts), START, line.year) for line, sign in signed),
        "all programmes' money": sum(
            sign * stated(sum(amount for _, _, amount in line.awards) - line.taken_back, START, line.year)
            for line, sign in signed
        ),
    }
