package org.amberyard.core.funding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** When awards become money, and what goes back. */
class PaymentsTest {

    private static SampleProgramme fixed(double amount) {
        return SampleProgramme.named("P").forBuses(new BusAward(amount, 0, 0, amount));
    }

    private static List<Payment> payments(Programme programme, Purchase... purchases) {
        return Payments.of(SamplePurchase.stacked(List.of(programme), purchases), List.of(programme));
    }

    @Test
    void reimbursementComesYearsLater() {
        Programme late = fixed(50_000).payout(new Payout(2, Optional.empty())).built();
        assertEquals(List.of(new Payment(0, 0, 3, 50_000)), payments(late, SamplePurchase.bus(0, 1, 300_000, 150_000, 0)));
    }

    /** Tax of 30,000 a year: the credit of year 0 is used first, what is older than two more years is not awarded. */
    @Test
    void aCreditIsSetAgainstTheTaxOfLaterYearsOldestFirst() {
        Programme credit = fixed(50_000).payout(new Payout(1, Optional.of(new Payout.Tax(30_000, 2)))).built();
        assertEquals(List.of(new Payment(0, 0, 1, 30_000), new Payment(0, 0, 2, 20_000), new Payment(1, 0, 2, 10_000),
                new Payment(1, 0, 3, 30_000), new Payment(1, 0, 4, 10_000)),
                payments(credit, SamplePurchase.bus(0, 0, 300_000, 150_000, 0), SamplePurchase.bus(1, 1, 300_000, 150_000, 0)));
        Programme small = fixed(50_000).payout(new Payout(0, Optional.of(new Payout.Tax(10_000, 2)))).built();
        assertEquals(30_000, payments(small, SamplePurchase.bus(0, 0, 300_000, 150_000, 0)).stream()
                .mapToDouble(Payment::amount).sum(), 0);
    }

    @Test
    void whoLetsABusGoEarlyPaysBackInProportion() {
        assertEquals(30_000, Clawback.owed(50_000, 5, 2), 1e-9);
        assertEquals(0, Clawback.owed(50_000, 5, 5), 0);
        assertEquals(0, Clawback.owed(50_000, 0, 0), 0);
        Programme held = fixed(50_000).conditions(new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 5)).built();
        AwardLedger ledger = SamplePurchase.stacked(List.of(held), SamplePurchase.bus(0, 1, 300_000, 150_000, 0),
                SamplePurchase.bus(1, 1, 300_000, 150_000, 0));
        assertEquals(List.of(new Repayment(1, 0, 4, 3, 20_000)), clawback(ledger, held).repayments());
    }

    private static Clawback clawback(AwardLedger ledger, Programme programme) {
        List<Programme> programmes = List.of(programme);
        return Clawback.of(ledger, programmes, Payments.of(ledger, programmes), Map.of("N1-1", 4, "N0-1", 6));
    }

    /** Two fifths of 50,000 are owed in year 4, when nothing has been paid yet: 30,000 come in year 5 and nothing goes back. */
    @Test
    void whatIsNotPaidOutYetIsWithheldInsteadOfPaidBack() {
        Programme late = fixed(50_000).payout(new Payout(4, Optional.empty()))
                .conditions(new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 5)).built();
        Clawback settled = clawback(SamplePurchase.stacked(List.of(late), SamplePurchase.bus(0, 1, 300_000, 150_000, 0),
                SamplePurchase.bus(1, 1, 300_000, 150_000, 0)), late);
        assertEquals(List.of(), settled.repayments());
        assertEquals(List.of(new Payment(0, 0, 5, 50_000), new Payment(1, 0, 5, 30_000)), settled.payments());
    }

    @Test
    void onlyWhatTheTaxLetsThroughIsAwardedAndPaidBack() {
        Programme credit = fixed(50_000).payout(new Payout(0, Optional.of(new Payout.Tax(10_000, 0))))
                .conditions(new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 5)).built();
        AwardLedger ledger = SamplePurchase.stacked(List.of(credit), SamplePurchase.bus(1, 1, 300_000, 150_000, 0));
        assertEquals(290_000, ledger.lines().get(0).own(), 1e-9);
        assertEquals(Limit.TAX, ledger.lines().get(0).awards().get(0).limit());
        assertEquals(List.of(new Repayment(0, 0, 4, 3, 4_000)), clawback(ledger, credit).repayments());
    }

    @Test
    void creditsOfTwoProgrammesShareTheTaxOfTheOperator() {
        Payout against = new Payout(0, Optional.of(new Payout.Tax(10_000, 0)));
        List<Programme> both = List.of(fixed(6_000).payout(against).built(), fixed(50_000).payout(against).built());
        AwardLedger ledger = SamplePurchase.stacked(both, SamplePurchase.bus(0, 1, 300_000, 150_000, 0, 1));
        assertEquals(List.of(new Payment(0, 0, 1, 6_000), new Payment(0, 1, 1, 4_000)), Payments.of(ledger, both));
    }

    @Test
    void depreciationEndsWithItsYears() {
        OperatingAid aid = new OperatingAid("Aid", 0, 20, 0.5, 0.5, 12, 1);
        assertEquals(10_000, aid.depreciation(120_000, 3, 3), 0);
        assertEquals(10_000, aid.depreciation(120_000, 3, 14), 0);
        assertEquals(0, aid.depreciation(120_000, 3, 15), 0);
        assertEquals(0, aid.depreciation(120_000, 3, 2), 0);
    }
}
