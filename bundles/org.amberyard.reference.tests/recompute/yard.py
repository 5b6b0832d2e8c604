"""What the yard costs: ports, works, one-off costs, and the electric bill made of kilowatt-hours, kilowatts and the
tariff sheet.
"""

import math

from fleet import YARD
from money import RUNNING, START, life_left

MONTHS = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
]


class Yard:
    """Writes the costs that the yard shares into a ledger."""

    def __init__(self, study, course, ledger):
        self.study, self.course, self.ledger = study, course, ledger
        self.purchases = study.of_plan("port_purchases", course.plan)

    def write(self):
        """All of them."""
        for row in self.purchases:
            self._ports(row)
        for row in self.study.of_plan("work_orders", self.course.plan):
            work = self.study.works[row.text("Site work")]
            self._asset(
                "Site works", self.study.year(row), work.number("Price", "USD"), work.number("Life", "yr", 30.0)
            )
        for row in self.study.of_plan("one_off_costs", self.course.plan):
            self.ledger.add(YARD, self.study.year(row), "Training and tools", row.number("Amount", "USD"))
        for year in range(self.study.money.years):
            self._fees(year)
            self._swaps(year)
            if year in self.course.charged:
                self._bill(year)

    def _ports(self, row):
        port, count = self.study.ports[row.text("Port type")], row.number("Count", "")
        for price, life, years in (
            ("Hardware price", "Life", 10.0),
            ("Installation price", "Life of installation", 30.0),
        ):
            self._asset(
                "Charging ports",
                self.study.year(row),
                count * port.number(price, "USD"),
                port.number(life, "yr", years),
            )

    def _asset(self, category, bought, price, life):
        """Bought, bought again at the end of each life, and credited for what is left of the last one as it was paid.
        """
        path, last = self.study.index("infrastructure"), bought
        for year in range(bought, self.study.money.years, max(1, math.ceil(life))):
            self.ledger.add(YARD, year, category, price * path.at(START, year))
            last = year
        left = life_left(self.study.money.years - last, life)
        self.ledger.add(
            YARD, self.study.money.years - 1, "Infrastructure life left", -left * price * path.at(START, last)
        )

    def _fees(self, year):
        for row in self.purchases:
            if self.study.year(row) <= year:
                fee = self.study.ports[row.text("Port type")].number("Network fee", "USD/yr", 0.0)
                self.ledger.add(YARD, year, "Port fees", row.number("Count", "") * fee * self._path(year))

    def _swaps(self, year):
        each = self.study.folder.only("depot").number("Cost of moving a plug", "USD", 5.0)
        self.ledger.add(
            YARD,
            year,
            "Moving of plugs",
            each * self._path(year) * sum(m["swaps"] for m in self.course.months.get(year, [])),
        )

    def _path(self, year):
        """Fees and work follow the index of upkeep."""
        return self.study.index("upkeep").at(RUNNING, year)

    def _bill(self, year):
        """Energy charges go to the buses by their energy and the rest to the yard, which bears demand and fixed
        charges too.
        """
        bill, kwh = self.bill(year), self.course.charged[year]["kwh"]
        path = self.study.index("electric energy").at(RUNNING, year)
        each = bill["energy"] / kwh * path if kwh else 0.0
        rest = kwh
        for record in self.course.in_year(year):
            if record["meter_energy"]:
                self.ledger.add(record["place"], year, "Electric energy", record["meter_energy"] * each)
                rest -= record["meter_energy"]
        self.ledger.add(YARD, year, "Electric energy", rest * each)
        self.ledger.add(
            YARD, year, "Electric demand", bill["demand"] * self.study.index("electric demand").at(RUNNING, year)
        )
        self.ledger.add(
            YARD,
            year,
            "Electric fixed charges",
            bill["fixed"] * self.study.index("electric fixed charges").at(RUNNING, year),
        )

    def bill(self, year):
        """Energy, demand and fixed charges of a year at base-date prices."""
        tariff, contract = Tariff(self.study.folder), year - min(self.course.charged) + 1
        sums = {"energy": 0.0, "demand": 0.0, "fixed": 0.0}
        for month in MONTHS:
            for part, amount in tariff.month(self.course.quantities[year, month], month, contract).items():
                sums[part] += amount
        return sums


class Tariff:
    """A tariff by hours on a meter of its own, without blocks, ratchet, minimum, shares and taxes."""

    def __init__(self, folder):
        self.head = folder.only("tariff_by_hours")
        self.charges = folder.rows("tariff_charges")
        if (
            self.head.yes("Shared meter")
            or self.head.number("Taxes", "%", 0.0)
            or self.head.number("Loss factor", "", 1.0) != 1
        ):
            raise ValueError("The recomputation bills a meter of its own without taxes and loss factor.")

    def month(self, quantities, month, contract):
        """Parts of a month's bill from what was metered in the hours of each charge."""
        parts = {"energy": 0.0, "demand": 0.0, "fixed": 0.0}
        for (charge, unit), amount in quantities.items():
            price = self.price(charge, month, contract)
            parts[{"kW": "demand", "kWh": "energy", "month": "fixed"}[unit]] += amount * price
        return parts

    def price(self, charge, month, contract):
        """Price of the first row of a charge that holds in a month and contract year; rows of one charge and season
        agree.
        """
        if charge == "Customer charge":
            return self.head.number("Customer charge", "USD/month", 0.0)
        for row in self.charges:
            first, last = MONTHS.index(row.text("First month", "January")), MONTHS.index(
                row.text("Last month", "December")
            )
            at = MONTHS.index(month)
            in_season = first <= at <= last if first <= last else at >= first or at <= last
            in_contract = (
                int(row.text("From year of service", "1")) <= contract <= int(row.text("To year of service", "99"))
            )
            if row.text("Charge") == charge and in_season and in_contract:
                demand = row.text("Kind", "energy") == "demand"
                return (
                    row.number("Price per kW", "USD/kW·month", 0.0)
                    if demand
                    else row.number("Price per kWh", "USD/kWh", 0.0)
                )
        raise ValueError(f"The tariff has no price for {charge!r} in {month}.")
