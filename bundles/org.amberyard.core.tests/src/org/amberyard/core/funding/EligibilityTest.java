package org.amberyard.core.funding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Who may be paid for by the rules of a programme alone; all amounts are invented. */
class EligibilityTest {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

    private static SampleProgramme fixed(String name) {
        return SampleProgramme.named(name).forBuses(new BusAward(100_000, 0, 0, NO_LIMIT));
    }

    private static List<Eligibility> found(boolean certainOnly, FundingInput funding, Purchase... purchases) {
        return Eligibility.of(funding, 0, Stacking.of(funding, List.of(purchases), certainOnly));
    }

    private static List<Eligibility> found(SampleProgramme programme, Purchase... purchases) {
        return found(false, FundingInput.of(List.of(programme.built())), purchases);
    }

    private static Purchase replacing(int row, int engineYear, Integer... programmes) {
        return SamplePurchase.bus(row, 1, 300_000, 150_000, Optional.of(new OldBus("B" + row, "C", true, engineYear, true)), programmes);
    }

    private static List<String> rules(Eligibility found) {
        return found.refusals().stream().map(r -> r.field() + ": " + r.words()).toList();
    }

    @Test
    void aBusForWhichThePlanDoesNotApplyIsEligibleAllTheSame() {
        Eligibility found = found(fixed("A"), SamplePurchase.bus(0, 0, 300_000, 150_000)).get(0);
        assertTrue(found.isEligible());
        assertFalse(found.applied());
    }

    @Test
    void countingOnCertainAwardsRefusesNoBus() {
        FundingInput funding = FundingInput.of(List.of(fixed("A").probability(0.3).budget(1, NO_LIMIT, NO_LIMIT).built()));
        List<Eligibility> found = found(true, funding, replacing(0, 2005, 0), replacing(1, 2006, 0));
        assertEquals(0, found.get(0).line().funded(), 0);
        assertTrue(found.get(0).isEligible() && found.get(0).applied());
        assertEquals(List.of("maxBuses: beyond the 1 buses the programme takes"), rules(found.get(1)));
    }

    @Test
    void everyRuleThatRefusesIsNamedWithItsField() {
        Conditions asks = new Conditions(true, true, false, false, true, OptionalInt.of(2010), false, 5);
        OldBus young = new OldBus("B16", "C", false, 2012, false);
        Purchase late = SamplePurchase.bus(0, 4, 300_000, 150_000, Optional.of(young));
        assertEquals(List.of("lastYear: it pays for purchases of other years",
                "scrapsOldBus: old bus B16 moves to another place instead of being scrapped",
                "oldDiesel: old bus B16 has no diesel engine",
                "latestEngineYear: the engine of old bus B16 is of model year 2012, newer than 2010"),
                rules(found(fixed("A").conditions(asks), late).get(0)));
    }

    @Test
    void placesGoToThoseAppliedForAndThenToTheOldestEngines() {
        List<Eligibility> found = found(fixed("A").budget(3, NO_LIMIT, NO_LIMIT), replacing(0, 2003), replacing(1, 2004, 0),
                replacing(2, 2005), replacing(3, 2006, 0), replacing(4, 2002));
        assertEquals(List.of("N4-1", "N0-1", "N1-1", "N2-1", "N3-1"), found.stream().map(e -> e.line().purchase().name()).toList());
        assertEquals(List.of(true, false, true, false, true), found.stream().map(Eligibility::isEligible).toList());
        assertEquals(List.of("maxBuses: beyond the 3 buses the programme takes"), rules(found.get(1)));
    }

    @Test
    void busesBeyondTheMostAreThoseThatAwardsLeaveOutToo() {
        List<Eligibility> found = found(fixed("A").budget(2, NO_LIMIT, NO_LIMIT), replacing(0, 2003, 0), replacing(1, 2004, 0),
                replacing(2, 2005, 0));
        for (Eligibility each : found) {
            assertEquals(each.isEligible(), each.line().funded() > 0, each.line().purchase().name());
        }
        assertEquals(2, found.stream().filter(Eligibility::isEligible).count());
    }

    @Test
    void whatAnotherProgrammePaysMayNotBeCombined() {
        FundingInput funding = new FundingInput(List.of(fixed("A").built(), fixed("B").built()), List.of(new Exclusion("B", "A")),
                List.of(), List.of(), FundingInput.Declared.NOTHING);
        List<Eligibility> found = found(false, funding, replacing(0, 2003, 1), replacing(1, 2004, 0, 1), replacing(2, 2005));
        assertEquals(List.of("excludes: it may not be combined with B, which pays for this"), rules(found.get(0)));
        assertTrue(found.get(1).isEligible(), "it pays first itself");
        assertTrue(found.get(2).isEligible(), "nothing pays for it yet");
    }

    @Test
    void whatThereIsNoAwardForIsRefused() {
        Purchase bus = SamplePurchase.bus(0, 0, 300_000, 150_000);
        NewBus asked = bus.bus().orElseThrow();
        NewBus engine = new NewBus("N", "C", false, false, asked.likeForLike(), asked.old(), true);
        NewBus small = new NewBus("S", "A", true, false, asked.likeForLike(), asked.old(), true);
        assertEquals(List.of("busAwards: it pays for electric buses only"), rules(found(fixed("A"), with(bus, engine)).get(0)));
        assertEquals(List.of("busAwards: it has no award for body type A"), rules(found(fixed("A"), with(bus, small)).get(0)));
        SampleProgramme difference = SampleProgramme.named("A").forBuses(new BusAward(0, 0, 0.5, NO_LIMIT));
        assertEquals(List.of("busAwards: its award comes to nothing at this price"),
                rules(found(difference, SamplePurchase.bus(0, 0, 100_000, 150_000)).get(0)));
        assertEquals(List.of("infrastructureShare: it pays nothing for site work"),
                rules(found(fixed("A"), SamplePurchase.work(0, 1000)).get(0)));
        assertTrue(found(SampleProgramme.named("A").forYard(0.5, 1000), SamplePurchase.work(0, 1000)).get(0).isEligible());
    }

    private static Purchase with(Purchase bus, NewBus of) {
        return new Purchase(bus.kind(), bus.name(), bus.row(), bus.year(), 1, bus.parts(), Optional.of(of), true, List.of());
    }
}
