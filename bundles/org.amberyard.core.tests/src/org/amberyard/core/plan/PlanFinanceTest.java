package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.Bond;
import org.amberyard.core.finance.Borrowing;
import org.amberyard.core.finance.FinanceLedger;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.finance.Repayment;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.MoneyBasis;
import org.junit.jupiter.api.Test;

/**
 * Debts of the electric plan: two buses at the start of years 1 and 2, ports and works at the start
 * of year 1; after two years the ports' hardware is bought again.
 */
class PlanFinanceTest {
    private static final double CENT = 0.005;
    private static final double INFLATION = 1.025;
    private static final TinyFinance CONSTANT = new TinyFinance(MoneyBasis.CONSTANT, false);
    private static final TinyFinance NOMINAL = new TinyFinance(MoneyBasis.NOMINAL, false);

    @Test
    void paidInCashThereIsNothingToAdd() {
        PlanFinance cash = CONSTANT.electric().finance();
        assertEquals(List.of(), cash.debts());
        assertEquals(0, cash.ledger().presentValue(), 0);
        assertEquals(CONSTANT.electric().measures().presentCost(), CONSTANT.electric().presentCostAfterFinancing(), 0);
    }

    /** The bus of year 1: 330,000 × 0.99 less its grant, in money of that year, half of it over two years at 10 %. */
    @Test
    void aLoanOnBusesByHand() {
        PlanFinance paid = CONSTANT.paid(TinyFinance.borrowing(Financing.Covers.BUSES, 0.5,
                new Amortisation(Repayment.EQUAL_PRINCIPAL, 0.1, 2, 1, false, 0, 0.01)));
        double price = 330_000 * 0.99 * INFLATION;
        double grant = Math.min(60_000, 10_000 + 0.5 * (price - 150_000 * INFLATION));
        double drawn = 0.5 * (price - grant);
        assertEquals(drawn, paid.debts().get(0).schedule().proceeds(), CENT);
        FinanceLedger ledger = paid.ledger();
        assertEquals(-drawn, ledger.amount(1, FinanceLine.BORROWED), CENT);
        assertEquals(0.01 * drawn, ledger.amount(1, FinanceLine.FEES), CENT);
        assertEquals(0.1 * drawn, ledger.amount(1, FinanceLine.INTEREST), CENT);
        assertEquals(drawn / 2, ledger.amount(1, FinanceLine.PRINCIPAL), CENT);
        assertEquals(drawn / 2, paid.debts().get(0).owedAtEndOf(1), CENT);
        assertEquals(0, paid.debts().get(0).owedAtEndOf(0), 0);
        double second = paid.debts().get(1).schedule().proceeds();
        assertEquals(0.05 * drawn + 0.1 * second, ledger.amount(2, FinanceLine.INTEREST), CENT);
        assertEquals(0, ledger.amount(0, line -> true), 0);
    }

    @Test
    void purchasesThatAreCovered() {
        Borrowing terms = Amortisation.of(Repayment.AT_END, 0.05, 2, 1);
        double ports = (2 * 15_000 + 80_000) * INFLATION;
        double buses = drawn(Financing.Covers.BUSES, terms);
        double works = drawn(Financing.Covers.PORTS_AND_WORKS, terms);
        double renewal = 2 * 6000 * Math.pow(INFLATION, 3);
        assertEquals(ports - 5000 * 2 - 0.5 * 80_000 * INFLATION + renewal, works, CENT);
        assertEquals(buses + works, drawn(Financing.Covers.ALL, terms), CENT);
        PaymentPlan late = new PaymentPlan(List.of(new Financing("Bond", Financing.Covers.ALL, 1, 2, 3, terms)),
                OptionalDouble.empty());
        assertEquals(List.of(2, 3), CONSTANT.paid(late).debts().stream().map(Debt::year).toList());
    }

    private static double drawn(Financing.Covers covers, Borrowing terms) {
        return CONSTANT.paid(TinyFinance.borrowing(covers, 1, terms)).debts().stream()
                .mapToDouble(d -> d.schedule().proceeds()).sum();
    }

    @Test
    void leasePaymentsHaveALineOfTheirOwn() {
        FinanceLedger ledger = CONSTANT.paid(TinyFinance.borrowing(Financing.Covers.ALL, 1, new Lease(0.05, 3, 12, true, 0.1, 0)))
                .ledger();
        assertTrue(ledger.amount(1, FinanceLine.LEASE_PAYMENTS) > 0);
        assertEquals(0, TinyFinance.sum(y -> ledger.amount(y, FinanceLine.INTEREST)), 0);
        assertEquals(0, TinyFinance.sum(y -> ledger.amount(y, FinanceLine.PRINCIPAL)), 0);
    }

    private static Borrowing terms(Random random, double nominalRate) {
        int perYear = List.of(1, 2, 4, 12).get(random.nextInt(4));
        int years = 1 + random.nextInt(20);
        Repayment repayment = Repayment.values()[random.nextInt(3)];
        return switch (random.nextInt(3)) {
            case 0 -> new Amortisation(repayment, perPeriods(nominalRate, perYear), years, perYear, random.nextBoolean(), 0, 0);
            case 1 -> new Lease(perPeriods(nominalRate, perYear), years, perYear, random.nextBoolean(), random.nextDouble(), 0);
            default -> new Bond(repayment, perPeriods(nominalRate, 2), years, 0, OptionalDouble.empty());
        };
    }

    /** The nominal yearly rate, compounded as often, that grows like a yearly rate. */
    private static double perPeriods(double yearly, int perYear) {
        return perYear * (Math.pow(1 + yearly, 1.0 / perYear) - 1);
    }

    /** Borrowing at the discount rate changes nothing, whatever the terms and however long they outlast the study. */
    @Property(tries = 100)
    void borrowingAtTheDiscountRateIsWorthNothing(@ForAll long seed) {
        Random random = new Random(seed);
        Borrowing terms = terms(random, TinyFinance.RATES.nominal());
        PlanFinance paid = NOMINAL.paid(TinyFinance.borrowing(Financing.Covers.ALL, 0.1 + 0.9 * random.nextDouble(), terms));
        assertEquals(0, paid.ledger().presentValue(), 1e-9 * NOMINAL.electric().measures().presentCost());
    }

    /** A dearer debt costs more, a cheaper one less, than cash. */
    @Property(tries = 50)
    void dearerDebtCostsMore(@ForAll long seed) {
        double dear = NOMINAL.paid(TinyFinance.borrowing(Financing.Covers.ALL, 1, terms(new Random(seed), 0.08))).ledger()
                .presentValue();
        double cheap = NOMINAL.paid(TinyFinance.borrowing(Financing.Covers.ALL, 1, terms(new Random(seed), 0.01))).ledger()
                .presentValue();
        assertTrue(dear > -CENT && cheap < CENT && dear >= cheap);
    }

    @Property(tries = 50)
    void bothKindsOfMoneyGiveTheSameDebts(@ForAll long seed) {
        PaymentPlan payment = TinyFinance.borrowing(Financing.Covers.ALL, 0.7, terms(new Random(seed), 0.06));
        PlanFinance constant = CONSTANT.paid(payment);
        PlanFinance nominal = NOMINAL.paid(payment);
        assertEquals(nominal.ledger().presentValue(), constant.ledger().presentValue(),
                1e-9 * NOMINAL.electric().measures().presentCost());
        for (int year = 0; year < TinyDistrict.YEARS; year++) {
            assertEquals(nominal.budget().get(year).appropriation(), constant.budget().get(year).appropriation(), 1e-6);
        }
    }

    @Test
    void appropriationIsCashCostsAndDebtsTogether() {
        PlanFinance paid = NOMINAL.paid(TinyFinance.borrowing(Financing.Covers.BUSES, 1,
                new Amortisation(Repayment.LEVEL, 0.05, 2, 4, false, 0, 0.02)));
        CostLedger costs = NOMINAL.electric().ledger();
        double left = costs.amount(3, CostCategory.BUS_VALUE_LEFT) + costs.amount(3, CostCategory.PACK_LIFE_LEFT)
                + costs.amount(3, CostCategory.INFRASTRUCTURE_LIFE_LEFT);
        double cash = TinyFinance.sum(costs::yearTotal) - left;
        double financing = TinyFinance.sum(y -> paid.ledger().amount(y, FinanceLine::cash));
        assertEquals(cash + financing, TinyFinance.sum(y -> paid.budget().get(y).appropriation()), CENT);
        BudgetYear first = paid.budget().get(1);
        assertEquals(first.appropriation(), first.whyAppropriation().value(), 1e-9);
        assertEquals(costs.amount(1, CostCategory.FUNDING), first.funding(), CENT);
        assertEquals(costs.amount(1, CostCategory.BUS_SALE), first.sales(), CENT);
    }

    @Test
    void yearsAboveTheCap() {
        PlanFinance capped = NOMINAL.paid(new PaymentPlan(List.of(), OptionalDouble.of(200_000)));
        double bought = capped.budget().get(1).appropriation();
        assertEquals(bought - 200_000, capped.budget().get(1).aboveCap().orElseThrow(), CENT);
        assertEquals(0, capped.budget().get(3).aboveCap().orElseThrow(), 0);
        assertEquals(OptionalDouble.empty(), NOMINAL.electric().finance().budget().get(1).aboveCap());
    }

    @Test
    void sharesAreFromZeroToAll() {
        Borrowing terms = Amortisation.of(Repayment.LEVEL, 0.05, 2, 1);
        assertThrows(IllegalArgumentException.class, () -> TinyFinance.borrowing(Financing.Covers.ALL, 1.1, terms));
        assertThrows(IllegalArgumentException.class, () -> TinyFinance.borrowing(Financing.Covers.ALL, 0, terms));
    }
}
