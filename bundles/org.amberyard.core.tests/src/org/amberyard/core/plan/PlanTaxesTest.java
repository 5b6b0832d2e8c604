package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.Bond;
import org.amberyard.core.finance.Convention;
import org.amberyard.core.finance.Depreciation;
import org.amberyard.core.finance.FinanceLedger;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.finance.Macrs;
import org.amberyard.core.finance.PropertyClass;
import org.amberyard.core.finance.Repayment;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.MoneyBasis;
import org.junit.jupiter.api.Test;

/** Income tax of the electric plan for an operator taxed at 25 %, in money of the year. */
class PlanTaxesTest {
    private static final double RATE = 0.25;
    private static final double CENT = 0.005;
    private static final TinyFinance NOMINAL = new TinyFinance(MoneyBasis.NOMINAL, false);
    private static final TinyFinance CONSTANT = new TinyFinance(MoneyBasis.CONSTANT, false);
    private static final TaxRules TAXED = rules(0);

    private static TaxRules rules(double bonus) {
        return new TaxRules(RATE, new Depreciation(new Macrs(PropertyClass.YEARS_5, Convention.HALF_YEAR), bonus),
                new Depreciation(new Macrs(PropertyClass.YEARS_15, Convention.HALF_YEAR), bonus));
    }

    private final CostLedger costs = NOMINAL.electric().ledger();

    private double bus(int place, int year) {
        return costs.amount(place, year, CostCategory.BUS_PURCHASE) + costs.amount(place, year, CostCategory.FUNDING);
    }

    private double yard() {
        return costs.amount(3, 1, CostCategory.PORTS) + costs.amount(3, 1, CostCategory.SITE_WORKS)
                + costs.amount(3, 1, CostCategory.FUNDING);
    }

    /** The ports' hardware is bought again. */
    private double renewal() {
        return costs.amount(3, 3, CostCategory.PORTS);
    }

    private double running(int year) {
        return List.of(CostCategory.FUEL, CostCategory.EXHAUST_FLUID, CostCategory.HEATER_FUEL, CostCategory.ELECTRIC_ENERGY,
                CostCategory.ELECTRIC_DEMAND, CostCategory.ELECTRIC_FIXED, CostCategory.UPKEEP, CostCategory.PORT_FEES,
                CostCategory.PLUG_SWAPS, CostCategory.INSURANCE, CostCategory.REGISTRATION).stream()
                .mapToDouble(c -> costs.amount(year, c)).sum();
    }

    @Test
    void aPublicDistrictPaysNone() {
        PlanFinance cash = NOMINAL.paid(PaymentPlan.CASH);
        assertEquals(0, cash.ledger().presentValue(FinanceLine::tax), 0);
        assertEquals(List.of(0.0, 0.0, 0.0, 0.0), cash.depreciation());
    }

    @Test
    void depreciationIsOnWhatTheOperatorPaid() {
        List<Double> found = NOMINAL.paid(PaymentPlan.CASH, TAXED).depreciation();
        assertEquals(0, found.get(0), 0);
        assertEquals(0.2 * bus(0, 1) + 0.05 * yard(), found.get(1), CENT);
        assertEquals(0.32 * bus(0, 1) + 0.2 * bus(1, 2) + 0.095 * yard(), found.get(2), CENT);
        assertEquals(0.192 * bus(0, 1) + 0.32 * bus(1, 2) + 0.0855 * yard() + 0.05 * renewal(), found.get(3), CENT);
    }

    /** Running costs, training and depreciation save tax; what the old buses bring is gain, as they are written off. */
    @Test
    void taxOfAYearByHand() {
        FinanceLedger ledger = NOMINAL.paid(PaymentPlan.CASH, TAXED).ledger();
        assertEquals(-RATE * running(0), ledger.amount(0, FinanceLine.TAXES), CENT);
        double gain = -costs.amount(1, CostCategory.BUS_SALE);
        double deducted = running(1) + costs.amount(1, CostCategory.TRAINING_AND_TOOLS) + 0.2 * bus(0, 1) + 0.05 * yard();
        assertEquals(RATE * (gain - deducted), ledger.amount(1, FinanceLine.TAXES), CENT);
    }

    @Test
    void whatIsLeftIsTaxedAsIfSold() {
        FinanceLedger ledger = NOMINAL.paid(PaymentPlan.CASH, TAXED).ledger();
        double value = -costs.amount(3, CostCategory.BUS_VALUE_LEFT) - costs.amount(3, CostCategory.PACK_LIFE_LEFT)
                - costs.amount(3, CostCategory.INFRASTRUCTURE_LIFE_LEFT);
        double books = bus(0, 1) * (1 - 0.2 - 0.32 - 0.192) + bus(1, 2) * (1 - 0.2 - 0.32)
                + yard() * (1 - 0.05 - 0.095 - 0.0855) + 0.95 * renewal();
        assertEquals(RATE * (value - books), ledger.amount(3, FinanceLine.TAX_ON_WHAT_IS_LEFT), CENT);
    }

    /** Whatever the way of writing off, in the end the same is taxed; only the time differs. */
    @Test
    void waysOfWritingOffSumToTheSame() {
        double table = total(NOMINAL.paid(PaymentPlan.CASH, TAXED).ledger());
        double bonus = total(NOMINAL.paid(PaymentPlan.CASH, rules(1)).ledger());
        assertEquals(table, bonus, CENT);
        assertEquals(RATE, table / total(NOMINAL.paid(PaymentPlan.CASH, new TaxRules(1, TAXED.buses(), TAXED.infrastructure()))
                .ledger()), 1e-12);
    }

    private static double total(FinanceLedger ledger) {
        return TinyFinance.sum(y -> ledger.amount(y, FinanceLine::tax));
    }

    /** Taken together everything that is paid and received is taxed once: the tax is the rate times all costs. */
    @Test
    void allCostsAreDeductedOnce() {
        double allCosts = TinyFinance.sum(costs::yearTotal);
        assertEquals(-RATE * allCosts, total(NOMINAL.paid(PaymentPlan.CASH, TAXED).ledger()), CENT);
    }

    @Test
    void interestAndFeesAreDeductedAndPrincipalIsNot() {
        PaymentPlan loan = TinyFinance.borrowing(Financing.Covers.BUSES, 1,
                new Amortisation(Repayment.LEVEL, 0.06, 10, 12, false, 0, 0.02));
        PlanFinance paid = NOMINAL.paid(loan, TAXED);
        FinanceLedger cash = NOMINAL.paid(PaymentPlan.CASH, TAXED).ledger();
        double interest = paid.ledger().amount(2, FinanceLine.INTEREST);
        double fees = paid.debts().stream().mapToDouble(d -> d.schedule().fee() / 10).sum();
        double saved = cash.amount(2, FinanceLine.TAXES) - paid.ledger().amount(2, FinanceLine.TAXES);
        assertEquals(RATE * (interest + fees), saved, CENT);
        double allInterest = TinyFinance.sum(y -> paid.ledger().amount(y, FinanceLine.INTEREST));
        double allFees = paid.debts().stream().mapToDouble(d -> d.schedule().fee()).sum();
        assertEquals(-RATE * (allInterest + allFees), total(paid.ledger()) - total(cash), CENT);
    }

    @Test
    void earningsOfASinkingFundAreIncome() {
        PaymentPlan bond = TinyFinance.borrowing(Financing.Covers.BUSES, 1,
                new Bond(Repayment.AT_END, 0.05, 10, 0, OptionalDouble.of(0.03)));
        PlanFinance paid = NOMINAL.paid(bond, TAXED);
        double earned = paid.debts().stream().mapToDouble(d -> d.schedule().fundEarnings(2 - d.year())).sum();
        double cash = NOMINAL.paid(PaymentPlan.CASH, TAXED).ledger().amount(2, FinanceLine.TAXES);
        double interest = paid.ledger().amount(2, FinanceLine.INTEREST);
        assertEquals(RATE * (earned - interest), paid.ledger().amount(2, FinanceLine.TAXES) - cash, CENT);
    }

    @Test
    void bothKindsOfMoneyGiveTheSameTaxes() {
        double nominal = NOMINAL.paid(PaymentPlan.CASH, TAXED).ledger().presentValue();
        assertEquals(nominal, CONSTANT.paid(PaymentPlan.CASH, TAXED).ledger().presentValue(), 1e-9 * Math.abs(nominal));
    }
}
