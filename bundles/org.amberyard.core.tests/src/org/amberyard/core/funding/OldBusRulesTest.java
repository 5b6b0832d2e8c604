package org.amberyard.core.funding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a programme asks of the papers of an old bus; all figures are invented. */
class OldBusRulesTest {
    private static final double LB = 0.45359237;
    private static final OldBusRules ASKS = new OldBusRules(OptionalDouble.of(10_001 * LB), OptionalDouble.of(3), true);

    private static OldBus bus(BusPapers papers) {
        return new OldBus("B1", "C", true, 2009, true, papers);
    }

    private static BusPapers papers(double lb, double days, Owner owner) {
        return new BusPapers(OptionalDouble.of(lb * LB), OptionalDouble.of(days), Optional.of(owner));
    }

    private static List<String> words(OldBusRules rules, BusPapers papers) {
        return rules.failedBy(bus(papers)).stream().map(r -> r.field() + ": " + r.words()).toList();
    }

    @Test
    void whatIsAskedAndToldPasses() {
        assertEquals(List.of(), words(ASKS, papers(29_800, 5, Owner.DISTRICT)));
        assertEquals(List.of(), words(ASKS, papers(10_001, 3, Owner.DISTRICT)), "the least itself is taken");
        assertEquals(List.of(), words(OldBusRules.NONE, BusPapers.NOT_TOLD), "what is not asked for need not be told");
    }

    @Test
    void whatIsBelowIsRefusedWithBothFigures() {
        assertEquals(List.of("leastGvwrKg: the weight rating (GVWR) of old bus B1 is 10,000 lb (4,535.9 kg), less than 10,001 lb (4,536.4 kg)",
                "leastDaysPerWeek: old bus B1 is in service 2.5 days a week, less than 3",
                "ownedOnly: old bus B1 is a contractor's, not owned"), words(ASKS, papers(10_000, 2.5, Owner.CONTRACTOR)));
        assertEquals(List.of("leastGvwrKg: the weight rating (GVWR) of old bus B1 is 10,000.96 lb (4,536.36 kg), less than 10,001.00 lb (4,536.38 kg)"),
                words(ASKS, papers(10_000.96, 5, Owner.DISTRICT)), "no two of them read as the same");
        assertTrue(ASKS.failedBy(bus(papers(10_000, 2, Owner.LESSOR))).stream().noneMatch(Refusal::notTold));
    }

    @Test
    void whatIsNotToldIsNotZeroButRefusesToo() {
        List<Refusal> found = ASKS.failedBy(bus(BusPapers.NOT_TOLD));
        assertTrue(found.stream().allMatch(Refusal::notTold));
        assertEquals(List.of("the weight rating (GVWR) of old bus B1 is not told; the programme asks for at least 10,001 lb (4,536 kg)",
                "the days a week in service of old bus B1 are not told; the programme asks for at least 3",
                "who owns old bus B1 is not told; the programme asks for an owned one"), found.stream().map(Refusal::words).toList());
    }

    @Test
    void aBusOfWhichOnlySomethingIsNotToldIsToldApartFromOneThatIsRefused() {
        Conditions asks = new Conditions(false, false, false, false, false, OptionalInt.of(2010), false, 0, ASKS);
        Programme programme = SampleProgramme.named("A").forBuses(new BusAward(100_000, 0, 0, Double.POSITIVE_INFINITY)).conditions(asks).built();
        FundingInput funding = FundingInput.of(List.of(programme));
        Eligibility notTold = found(funding, new OldBus("B1", "C", true, 2009, true));
        Eligibility refused = found(funding, new OldBus("B1", "C", true, 2012, true));
        Eligibility taken = found(funding, bus(papers(29_800, 5, Owner.DISTRICT)));
        assertTrue(notTold.isNotTold() && !notTold.isEligible());
        assertFalse(refused.isNotTold() || refused.isEligible());
        assertTrue(taken.isEligible() && !taken.isNotTold());
        assertEquals(0, notTold.line().funded(), 0, "nothing is paid for it as long as it is not told");
        assertEquals(100_000, taken.line().funded(), 0);
    }

    private static Eligibility found(FundingInput funding, OldBus old) {
        Purchase purchase = SamplePurchase.bus(0, 1, 300_000, 150_000, Optional.of(old), 0);
        return Eligibility.of(funding, 0, Stacking.of(funding, List.of(purchase), false)).get(0);
    }

    @Test
    void aBusInTheStudyOfWhichNothingIsListedTellsNothing() {
        assertEquals(BusPapers.NOT_TOLD, FundingInput.Declared.NOTHING.papersOf("B9"));
        assertEquals(List.of("leastGvwrKg"), new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 0, ASKS)
                .failedBy(SamplePurchase.bus(0, 1, 300_000, 150_000, Optional.empty())).stream().map(Refusal::field).toList());
    }

    /** Bounds as {@link WeightClass} cites them: the last pound of a class, and the first of the next. */
    @Test
    void weightClassesChangeAboveTheirLastPound() {
        int[] last = {6_000, 10_000, 14_000, 16_000, 19_500, 26_000, 33_000};
        for (int i = 0; i < last.length; i++) {
            assertEquals(i + 1, WeightClass.of(last[i] * LB), last[i] + " lb");
            assertEquals(i + 2, WeightClass.of((last[i] + 1) * LB), last[i] + 1 + " lb");
        }
    }
}
