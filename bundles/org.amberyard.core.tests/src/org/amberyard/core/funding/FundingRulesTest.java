package org.amberyard.core.funding;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;

/** What notices of programmes say in a sentence each, with invented amounts. */
class FundingRulesTest {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

    private static SampleProgramme fixed(String name, double amount) {
        return SampleProgramme.named(name).forBuses(new BusAward(amount, 0, 0, NO_LIMIT));
    }

    private static Conditions asking(boolean newOnly, boolean scraps, boolean sameBody, boolean oneForOne, boolean diesel, OptionalInt year) {
        return new Conditions(newOnly, scraps, sameBody, oneForOne, diesel, year, false, 0);
    }

    private static Purchase with(NewBus bus) {
        return new Purchase(Purchase.Kind.BUS, bus.unit(), 0, 0, 1, List.of(bus.likeForLike()), Optional.of(bus), true, List.of(0));
    }

    private static NewBus bus(boolean used, Optional<OldBus> old, boolean oneLeaves) {
        return new NewBus("N1", "C", true, used, Derivation.of("price", 300_000, Derivation.MONEY, "given"), old, oneLeaves);
    }

    private static List<String> fields(Conditions conditions, NewBus bus) {
        return conditions.failedBy(with(bus)).stream().map(Refusal::field).toList();
    }

    @Test
    void eachConditionRefusesByItself() {
        Optional<OldBus> old = Optional.of(new OldBus("B1", "A", true, 2010, true));
        assertEquals(List.of("newOnly"), fields(asking(true, false, false, false, false, OptionalInt.empty()), bus(true, old, true)));
        assertEquals(List.of(), fields(asking(true, false, false, false, false, OptionalInt.empty()), bus(false, old, true)));
        assertEquals(List.of("oneForOne"), fields(asking(false, false, false, true, false, OptionalInt.empty()), bus(false, old, false)));
        assertEquals(List.of("sameBodyType"), fields(asking(false, false, true, false, false, OptionalInt.empty()), bus(false, old, true)));
        OptionalInt to2010 = OptionalInt.of(2010);
        assertEquals(List.of(), fields(asking(false, false, false, false, false, to2010), bus(false, old, true)), "the newest year itself is taken");
        OptionalInt to2009 = OptionalInt.of(2009);
        assertEquals(List.of("latestEngineYear"), fields(asking(false, false, false, false, false, to2009), bus(false, old, true)));
    }

    @Test
    void whatIsAskedOfAnOldBusFailsWithoutOne() {
        NewBus added = bus(false, Optional.empty(), true);
        assertEquals(List.of(), fields(Conditions.NONE, added));
        assertEquals(List.of("scrapsOldBus"), fields(asking(false, true, true, false, true, OptionalInt.of(2010)), added), "said once");
        assertEquals(List.of("sameBodyType"), fields(asking(false, false, true, false, true, OptionalInt.empty()), added));
        assertEquals(List.of("oldDiesel"), fields(asking(false, false, false, false, true, OptionalInt.of(2010)), added));
        assertEquals(List.of("latestEngineYear"), fields(asking(false, false, false, false, false, OptionalInt.of(2010)), added));
    }

    @Test
    void aProgrammePaysFromItsFirstToItsLastYear() {
        Programme p = fixed("P", 50_000).built();
        Programme second = new Programme("S", p.kind(), 1, 1, 2, 1, p.offer(), p.budget(), p.match(), p.conditions(), p.payout());
        assertEquals(List.of(false, true, true, false), List.of(second.paysIn(0), second.paysIn(1), second.paysIn(2), second.paysIn(3)));
        assertEquals("firstYear", Refusals.byRules(second, SamplePurchase.bus(0, 0, 300_000, 150_000)).get(0).field());
        assertEquals("lastYear", Refusals.byRules(second, SamplePurchase.bus(0, 3, 300_000, 150_000)).get(0).field());
        assertEquals(List.of(), Refusals.byRules(second, SamplePurchase.bus(0, 1, 300_000, 150_000)));
        assertFalse(Refusals.refuses(second, SamplePurchase.bus(0, 1, 300_000, 150_000), true));
        assertTrue(Refusals.refuses(fixed("U", 1).probability(0.9).built(), SamplePurchase.bus(0, 1, 300_000, 150_000), true));
        assertFalse(Refusals.refuses(fixed("U", 1).probability(0.9).built(), SamplePurchase.bus(0, 1, 300_000, 150_000), false));
    }

    /** 300,000 over ten years. */
    @Test
    void anAidCoversItsYearsAndWhatDepreciatesInThem() {
        OperatingAid aid = new OperatingAid("Aid", 1, 3, 0.5, 0.9, 10, 1);
        assertEquals(List.of(false, true, true, false), List.of(aid.covers(0), aid.covers(1), aid.covers(3), aid.covers(4)));
        assertEquals(30_000, aid.depreciation(300_000, 2, 2), 1e-9);
        assertEquals(30_000, aid.depreciation(300_000, 2, 11), 1e-9);
        assertEquals(0, aid.depreciation(300_000, 2, 12));
        assertEquals(0, aid.depreciation(300_000, 2, 1));
    }

    @Test
    void trainingIsPaidByShareUpToItsCap() {
        Programme half = SampleProgramme.named("P").forYard(0.5, 3000).built();
        Derivation price = Derivation.of("price", 10_000, Derivation.MONEY, "given");
        Purchase training = new Purchase(Purchase.Kind.TRAINING, "Training", 9, 0, 1, List.of(price), Optional.empty(), true, List.of(0));
        Award award = SamplePurchase.stacked(List.of(half), training).lines().get(0).awards().get(0);
        assertEquals(3000, award.paid(), 1e-9);
        assertEquals(Limit.CAP, award.limit());
    }

    /**
     * Credits of 100,000 a bus, set from the year after the purchase against tax of 60,000 a year, carried on for a year: two buses of
     * year 0 have 120,000 between them; one of year 1 finds year 2 used up and has the 60,000 of year 3.
     */
    @Test
    void creditsOfAllBusesShareTheTaxOfTheYears() {
        Programme credit = fixed("Credit", 100_000).payout(new Payout(1, Optional.of(new Payout.Tax(60_000, 1)))).built();
        List<Purchase> buses = List.of(SamplePurchase.bus(0, 0, 300_000, 150_000, 0), SamplePurchase.bus(1, 0, 300_000, 150_000, 0),
                SamplePurchase.bus(2, 1, 300_000, 150_000, 0));
        AwardLedger ledger = SamplePurchase.stacked(List.of(credit), buses.toArray(new Purchase[0]));
        assertEquals(List.of(100_000.0, 20_000.0, 60_000.0), ledger.lines().stream().map(FundedLine::funded).toList());
        assertArrayEquals(new double[] {100_000, 20_000, 60_000}, sums(List.of(credit), List.of(), buses), 1e-9);
    }

    private static double[] sums(List<Programme> programmes, List<Exclusion> exclusions, List<Purchase> buses) {
        FundingInput funding = new FundingInput(programmes, exclusions, List.of(), List.of(), FundingInput.Declared.NOTHING);
        double[] paid = new double[buses.size()];
        double[][] parts = buses.stream().map(b -> b.parts().stream().mapToDouble(Derivation::value).toArray()).toArray(double[][]::new);
        double[] likeForLike = new double[buses.size()];
        Arrays.fill(likeForLike, 150_000);
        new AwardSums(funding, buses, false).at(parts, likeForLike, (line, programme, amount) -> paid[line] += amount);
        return paid;
    }

    /** B may not pay beside A, whether the notice of the one or of the other says so. */
    @Test
    void sumsLeaveOutWhatMayNotBeCombined() {
        List<Programme> both = List.of(fixed("A", 40_000).built(), fixed("B", 30_000).priority(2).built());
        List<Purchase> one = List.of(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1));
        assertArrayEquals(new double[] {70_000}, sums(both, List.of(), one), 1e-9);
        assertArrayEquals(new double[] {40_000}, sums(both, List.of(new Exclusion("B", "A")), one), 1e-9);
        assertArrayEquals(new double[] {40_000}, sums(both, List.of(new Exclusion("A", "B")), one), 1e-9);
    }

    /** The bus goes in the year in which it came, and nothing has been paid yet. */
    @Test
    void anAwardThatIsOwedWholeIsNotPaidAtAll() {
        Programme late = fixed("P", 50_000).payout(new Payout(2, Optional.empty()))
                .conditions(new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 5)).built();
        AwardLedger ledger = SamplePurchase.stacked(List.of(late), SamplePurchase.bus(0, 1, 300_000, 150_000, 0));
        List<Programme> programmes = List.of(late);
        Clawback settled = Clawback.of(ledger, programmes, new ArrayList<>(Payments.of(ledger, programmes)), Map.of("N0-1", 1));
        assertEquals(List.of(), settled.payments());
        assertEquals(List.of(), settled.repayments());
        assertEquals(50_000, settled.withheld().get(0).amount(), 1e-9);
    }
}
