package org.amberyard.core.finance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.amberyard.core.finance.DebtSchedule.Payment;

/** What holds of every schedule, whatever its terms. */
class DebtSchedulePropertyTest {
    private static final double NEAR = 1e-9;

    private static Borrowing terms(Random random) {
        double rate = random.nextInt(10) == 0 ? 0 : random.nextDouble() * 0.15;
        int years = 1 + random.nextInt(30);
        int perYear = List.of(1, 2, 4, 12).get(random.nextInt(4));
        Repayment repayment = Repayment.values()[random.nextInt(3)];
        boolean advance = random.nextBoolean();
        double share = random.nextBoolean() ? 0 : random.nextDouble();
        return switch (random.nextInt(3)) {
            case 0 -> new Amortisation(repayment, rate, years, perYear, advance, random.nextInt(years * perYear), 0.01);
            case 1 -> new Lease(rate, years, perYear, advance, share, 0.01);
            default -> new Bond(repayment, rate, years, 0.02, repayment == Repayment.AT_END && random.nextBoolean()
                    ? OptionalDouble.of(random.nextDouble() * 0.06) : OptionalDouble.empty());
        };
    }

    private static double sum(DebtSchedule schedule, ToDoubleFunction<Payment> part) {
        return schedule.payments().stream().mapToDouble(part).sum();
    }

    @Property(tries = 500)
    void principalSumsToTheSumAndTheBalanceEndsAtZero(@ForAll long seed) {
        DebtSchedule schedule = terms(new Random(seed)).schedule(400_000);
        Payment last = schedule.payments().get(schedule.payments().size() - 1);
        assertEquals(400_000, sum(schedule, Payment::principal), 400_000 * NEAR);
        assertEquals(0, last.balance(), 0);
        assertEquals(0, last.fund(), 0);
        assertEquals(0, schedule.owedAfter(schedule.years()), 0);
    }

    @Property(tries = 500)
    void yearsSumToThePayments(@ForAll long seed) {
        DebtSchedule schedule = terms(new Random(seed)).schedule(400_000);
        double byYear = IntStream.range(0, schedule.years())
                .mapToDouble(y -> schedule.interest(y) + schedule.principal(y) + schedule.deposits(y)).sum();
        assertEquals(sum(schedule, Payment::paid), byYear, 1e-6);
        assertEquals(schedule.interest(), sum(schedule, Payment::interest), 0);
    }

    /** At its own rate a debt is worth nothing: what is paid by any year and what is owed then are worth the sum drawn. */
    @Property(tries = 500)
    void presentValueAtItsOwnRateIsTheSumDrawn(@ForAll long seed) {
        DebtSchedule schedule = terms(new Random(seed)).schedule(400_000);
        if (sum(schedule, p -> Math.abs(p.deposit())) > 0) {
            return;
        }
        double growth = 1 + schedule.periodRate();
        for (int years = 0; years <= schedule.years(); years++) {
            int until = years;
            double paid = schedule.payments().stream().filter(p -> p.year() < until)
                    .mapToDouble(p -> p.paid() * Math.pow(growth, -p.timeYears() * schedule.paymentsPerYear())).sum();
            double owed = schedule.owedAfter(years) * Math.pow(growth, -years * schedule.paymentsPerYear());
            assertEquals(400_000, paid + owed, 400_000 * NEAR);
        }
    }

    /** The fund holds the face when the bond matures: deposits and what they earn come to it. */
    @Property(tries = 200)
    void aSinkingFundHoldsTheFace(@ForAll long seed) {
        Random random = new Random(seed);
        int years = 1 + random.nextInt(30);
        double rate = random.nextDouble() * 0.08;
        Bond bond = new Bond(Repayment.AT_END, 0.04, years, 0.01, OptionalDouble.of(rate));
        double fund = 0;
        for (int k = 0; k < 2 * years; k++) {
            fund = fund * (1 + rate / 2) + bond.deposit(1e6);
        }
        assertEquals(1e6, fund, 1e6 * NEAR);
        DebtSchedule schedule = bond.schedule(1e6);
        double last = schedule.payments().get(2 * years - 1).paid();
        assertEquals(bond.deposit(1e6) + 1e6 * 0.04 / 2, last, 1e-6);
    }

    @Property(tries = 200)
    void balancesNeverRiseAndPaymentsAreNotNegative(@ForAll long seed) {
        DebtSchedule schedule = terms(new Random(seed)).schedule(1000);
        double before = 1000;
        for (Payment payment : schedule.payments()) {
            assertTrue(payment.balance() <= before + NEAR);
            assertTrue(payment.paid() >= -NEAR && payment.interest() >= 0);
            before = payment.balance();
        }
    }
}
