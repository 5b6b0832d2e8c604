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

    /** Tax of 30,000 a year: the credit of year 0 is used first, what is older than two more years is lost. */
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
        assertEquals(List.of(new Repayment(1, 0, 4, 3, 20_000)), Clawback.of(ledger, List.of(held), Map.of("N1-1", 4, "N0-1", 6)));
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
