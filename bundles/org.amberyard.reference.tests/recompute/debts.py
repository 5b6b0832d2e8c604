"""Loans, leases and bonds: payments by closed formulas, in money of the time of payment."""

from dataclasses import dataclass

from money import HALF_CENT

INTERVALS = {"yearly": 1, "half-yearly": 2, "quarterly": 4, "monthly": 12}


@dataclass
class Payment:
    """A payment on a debt; years and times count from the day on which it is drawn."""

    number: int
    year: int
    time: float
    interest: float
    principal: float
    deposit: float
    balance: float
    fund: float

    @property
    def paid(self):
        """Money that leaves the budget."""
        return self.interest + self.principal + self.deposit


def annuity(rate, periods):
    """Present value of one at the end of each of a number of periods."""
    return periods if rate == 0 else (1 - (1 + rate) ** -periods) / rate


class Debt:
    """One debt of one year's purchases."""

    def __init__(self, row, year, drawn):
        self.row, self.year, self.sum = row, year, drawn
        self.kind, self.years = row.text("Kind", "cash"), int(row.number("Years of repayment", "yr", 10.0))
        self.rate_per_year = row.number("Yearly rate", "%", 0.04)
        self.bond = self.kind == "bond"
        self.per_year = 2 if self.bond else INTERVALS[row.text("Payments", "yearly")]
        self.rate, self.number = self.rate_per_year / self.per_year, self.years * self.per_year
        self.advance = row.yes("In advance") and not self.bond
        self.form = "level payment" if self.kind == "lease" else row.text("Repayment", "level payment")
        self.grace = int(row.text("Interest-only payments", "0")) if self.kind == "loan" else 0
        self.buy_out = row.number("Buy-out", "%", 0.0) * drawn if self.kind == "lease" else 0.0
        self.fee = row.number("Fee", "%", 0.0) * drawn
        fund = self.bond and row.yes("Sinking fund")
        self.fund_rate = row.number("Sinking fund earns", "%", 0.02) / 2 if fund else 0.0
        self.deposit = (
            drawn / (annuity(self.fund_rate, self.number) * (1 + self.fund_rate) ** self.number) if fund else 0.0
        )
        self.payments = self._bond() if self.bond else self._loan()

    @property
    def level(self):
        """Payment that stays the same; None where payments differ."""
        if self.bond or self.form != "level payment":
            return None
        owed = self.sum - self.buy_out * (1 + self.rate) ** -self.number
        due = 1 + self.rate if self.advance and not self.grace else 1.0
        return owed / annuity(self.rate, self.number - self.grace) / due

    def _balance(self, k):
        """Principal owed after payment k, without what has accrued since."""
        if k == self.number and not self.buy_out:
            return 0.0
        if k <= self.grace:
            return self.sum
        if self.form == "at the end":
            return self.sum
        if self.form == "equal principal":
            return self.sum * (1 - (k - self.grace) / (self.number - self.grace))
        if self.advance and not self.grace:
            grown = (1 + self.rate) ** (k - 1)
            return self.sum * grown - self.level * (annuity(self.rate, k) * (1 + self.rate) ** k)
        grown = (1 + self.rate) ** (k - self.grace)
        return self.sum * grown - self.level * annuity(self.rate, k - self.grace) * grown

    def _loan(self):
        payments = []
        for k in range(1, self.number + 1):
            before, after = self.sum if k == 1 else self._balance(k - 1), self._balance(k)
            interest = 0.0 if self.advance and k == 1 else before * self.rate
            time = (k - 1 if self.advance else k) / self.per_year
            payments.append(Payment(k, (k - 1) // self.per_year, time, interest, before - after, 0.0, after, 0.0))
        if self.buy_out:
            left = self._balance(self.number)
            interest = left * self.rate if self.advance else 0.0
            payments.append(Payment(self.number + 1, self.years - 1, float(self.years), interest, left, 0.0, 0.0, 0.0))
        return payments

    def _bond_balance(self, year):
        """Face that is left after the maturities of a number of years."""
        if year == self.years:
            return 0.0
        if self.form == "at the end":
            return self.sum
        if self.form == "equal principal":
            return self.sum * (1 - year / self.years)
        return self.sum * annuity(self.rate_per_year, self.years - year) / annuity(self.rate_per_year, self.years)

    def _bond(self):
        payments = []
        for k in range(1, self.number + 1):
            before, after = self._bond_balance((k - 1) // 2), self._bond_balance(k // 2)
            last = k == self.number and self.deposit > 0
            saved = self.deposit * annuity(self.fund_rate, k) * (1 + self.fund_rate) ** k
            payments.append(
                Payment(
                    k,
                    (k - 1) // 2,
                    k / 2,
                    before * self.rate,
                    before - after,
                    self.deposit - (self.sum if last else 0.0),
                    after,
                    0.0 if last else saved,
                )
            )
        return payments

    def owed_after(self, years):
        """Principal and accrued interest owed after a number of years, less the sinking fund."""
        if years <= 0:
            return 0.0
        before = [p for p in self.payments if p.year < years]
        last = before[-1] if before else Payment(0, 0, 0.0, 0.0, 0.0, 0.0, self.sum, 0.0)
        periods = (years - last.time) * self.per_year
        return last.balance * (1 + self.rate) ** periods - last.fund * (1 + self.fund_rate) ** periods


class Finance:
    """The debts of a plan and what they move in each year; purchases after awards are financed, whenever awards are
    paid.
    """

    LINES = ("borrowed", "fees", "interest", "principal", "lease_payments", "sinking_fund")

    def __init__(self, plan):
        self.plan, self.money, self.debts, self.flows = plan, plan.study.money, [], []
        for row in plan.study.of_plan("financing", plan.name):
            first, last = int(row.text("First year", "0")), int(row.text("Last year", "0"))
            for year in range(self.money.years):
                calendar = year + self.money.first_year
                drawn = self._covered(row, year) * row.number("Share financed", "%", 1.0)
                if (
                    row.text("Kind", "cash") != "cash"
                    and first <= calendar <= (last or calendar)
                    and drawn > HALF_CENT
                ):
                    self.debts.append(Debt(row, year, drawn))
        for debt in self.debts:
            self._move(debt)

    def _covered(self, row, year):
        """Purchases of a year less what programmes award for them."""
        covers, sums = row.text("Covers", "all"), 0.0
        if covers in ("all", "buses"):
            for place in self.plan.study.buses:
                bought = self.plan.nominal(year, "Bus purchase", place)
                sums += max(0.0, bought - self._awarded(year, ("bus",), place))
        if covers in ("all", "ports and site works"):
            bought = self.plan.nominal(year, "Charging ports") + self.plan.nominal(year, "Site works")
            sums += max(0.0, bought - self._awarded(year, ("ports", "site work"), "Yard"))
        return sums

    def _awarded(self, year, kinds, place):
        return sum(
            amount
            for line in self.plan.funding.lines
            if line.year == year and line.kind in kinds and line.place == place
            for _, _, amount in line.awards
        )

    def _move(self, debt):
        self._flow(debt.year, debt.year, "borrowed", -debt.sum)
        self._flow(debt.year, debt.year, "fees", debt.fee)
        for p in debt.payments:
            year, time = debt.year + p.year, debt.year + p.time
            if debt.kind == "lease":
                self._flow(year, time, "lease_payments", p.interest + p.principal)
            else:
                self._flow(year, time, "interest", p.interest)
                self._flow(year, time, "principal", p.principal)
            self._flow(year, time, "sinking_fund", p.deposit)

    def _flow(self, year, time, line, amount):
        if year < self.money.years:
            self.flows.append((year, time, line, amount))

    def line(self, year, line):
        """Sum of a line in a year."""
        return sum(a for y, _, which, a in self.flows if y == year and which == line)

    def owed(self, year):
        """Owed at the end of a year."""
        return sum(d.owed_after(year + 1 - d.year) for d in self.debts)

    def present(self):
        """Present value of all, with what is owed at the end taken as paid then."""
        rate, end = self.money.nominal, self.money.years
        return sum(a * (1 + rate) ** -t for _, t, _, a in self.flows) + self.owed(end - 1) * (1 + rate) ** -end
