package org.amberyard.core.funding;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Awards small enough to be checked by hand; all amounts are invented. */
class StackingTest {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    private static final double CENT = 0.005;

    private static SampleProgramme fixed(String name, double amount) {
        return SampleProgramme.named(name).forBuses(new BusAward(amount, 0, 0, NO_LIMIT));
    }

    private static FundedLine line(Purchase purchase, SampleProgramme... programmes) {
        return ledger(List.of(purchase), programmes).lines().get(0);
    }

    private static AwardLedger ledger(List<Purchase> purchases, SampleProgramme... programmes) {
        return SamplePurchase.stacked(List.of(programmes).stream().map(SampleProgramme::built).toList(),
                purchases.toArray(Purchase[]::new));
    }

    private static List<Limit> limits(FundedLine line) {
        return line.awards().stream().map(Award::limit).toList();
    }

    @Test
    void amountAndSharesAddUpToTheCap() {
        BusAward award = new BusAward(10_000, 0.1, 0.5, 120_000);
        FundedLine below = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0), SampleProgramme.named("P").forBuses(award));
        assertEquals(10_000 + 30_000 + 75_000, below.funded(), CENT);
        assertEquals(Limit.NONE, below.awards().get(0).limit());
        FundedLine capped = line(SamplePurchase.bus(0, 0, 400_000, 150_000, 0), SampleProgramme.named("P").forBuses(award));
        assertEquals(120_000, capped.funded(), CENT);
        assertEquals(10_000 + 40_000 + 125_000, capped.awards().get(0).asked().value(), CENT);
        assertEquals(Limit.CAP, capped.awards().get(0).limit());
        assertEquals(280_000, capped.own(), CENT);
    }

    /** B finds nothing left to pay, but the bus takes one of its places. */
    @Test
    void aBusForWhichNothingIsLeftToPayTakesPart() {
        AwardLedger ledger = ledger(List.of(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1), SamplePurchase.bus(1, 1, 300_000, 150_000, 0, 1),
                SamplePurchase.bus(2, 1, 300_000, 150_000, 0), SamplePurchase.ports(0, 2, 1000, 1000, 1)), fixed("A", 300_000), fixed("B", 50_000));
        assertEquals(0, ledger.total(1), CENT);
        assertEquals(1, ledger.busesTakingPart(1, 1));
        assertEquals(2, ledger.busesTakingPart(1, 2));
        assertEquals(3, ledger.busesTakingPart(0, 2));
        assertEquals(0, ledger.busesTakingPart(1, 0));
    }

    @Test
    void aDearerLikeForLikeBusTakesNothingOffTheFixedAmount() {
        assertEquals(7000, line(SamplePurchase.bus(0, 0, 100_000, 150_000, 0),
                SampleProgramme.named("P").forBuses(new BusAward(7000, 0, 0.5, NO_LIMIT))).funded(), CENT);
    }

    @Test
    void programmesTogetherPayNoMoreThanTheCost() {
        FundedLine line = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1, 2), fixed("A", 200_000), fixed("B", 150_000),
                fixed("C", 20_000));
        assertArrayEquals(new double[] {200_000, 100_000, 0}, SamplePurchase.paid(line), CENT);
        assertEquals(List.of(Limit.NONE, Limit.COST, Limit.COST), limits(line));
        assertEquals(0, line.own(), CENT);
    }

    @Test
    void priorityDecidesWhoComesFirst() {
        FundedLine line = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1), fixed("A", 200_000).priority(5),
                fixed("B", 150_000).priority(2));
        assertEquals(List.of(1, 0), line.awards().stream().map(Award::programme).toList());
        assertArrayEquals(new double[] {150_000, 150_000}, SamplePurchase.paid(line), CENT);
    }

    @Test
    void ofTwoThatExcludeEachOtherTheFirstPays() {
        FundingInput funding = new FundingInput(List.of(fixed("A", 50_000).built(), fixed("B", 90_000).built()),
                List.of(new Exclusion("B", "A")), List.of(), List.of(), FundingInput.Declared.NOTHING);
        FundedLine both = Stacking.of(funding, List.of(SamplePurchase.bus(0, 0, 300_000, 150_000, 1, 0)), false).lines().get(0);
        assertArrayEquals(new double[] {50_000, 0}, SamplePurchase.paid(both), 0);
        assertEquals("it may not be combined with A, which pays first", both.awards().get(1).bite().orElseThrow().words());
        FundedLine late = Stacking.of(funding, List.of(SamplePurchase.bus(0, 4, 300_000, 150_000, 1, 0)), false).lines().get(0);
        assertEquals(List.of(Limit.WINDOW, Limit.WINDOW), limits(late));
    }

    /** 60 % of 300,000 is asked; a quarter must be own money, and 200,000 of state money is there already. */
    @Test
    void matchFromOwnMoneyIsLeftByLaterProgrammesToo() {
        SampleProgramme wantsOwn = fixed("A", 180_000).match(0.25, Match.From.OWN);
        FundedLine line = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1), wantsOwn, fixed("B", 100_000));
        assertArrayEquals(new double[] {180_000, 45_000}, SamplePurchase.paid(line), CENT);
        assertEquals("match of A from own money", line.awards().get(1).bite().orElseThrow().words());
        FundedLine alone = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0), fixed("A", 280_000).match(0.25, Match.From.OWN));
        assertEquals(225_000, alone.funded(), CENT);
        assertEquals(Limit.MATCH, alone.awards().get(0).limit());
    }

    /** For each unit of award a quarter must be own money: of 300,000 at most 240,000 are paid, to which 60,000 are the quarter. */
    @Test
    void matchMayBeAShareOfTheAward() {
        FundedLine alone = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0), fixed("A", 280_000).match(0.25, Match.From.OWN,
                Match.Base.AWARD));
        assertEquals(240_000, alone.funded(), CENT);
        assertEquals(Limit.MATCH, alone.awards().get(0).limit());
        SampleProgramme wantsOwn = fixed("A", 180_000).match(0.25, Match.From.OWN, Match.Base.AWARD);
        FundedLine line = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1), wantsOwn, fixed("B", 100_000));
        assertArrayEquals(new double[] {180_000, 75_000}, SamplePurchase.paid(line), CENT);
    }

    /** Two ports with hardware of 40,000 and installation of 60,000: hardware alone is covered, and a half must be own money. */
    @Test
    void matchMayBeAShareOfTheWholeCost() {
        SampleProgramme hardware = SampleProgramme.named("A").forPorts(new PortAward(0, 1, NO_LIMIT, PortAward.Cover.HARDWARE));
        Purchase ports = SamplePurchase.ports(0, 2, 40_000, 60_000, 0);
        assertEquals(40_000, line(ports, hardware).funded(), CENT);
        assertEquals(20_000, line(ports, hardware.match(0.5, Match.From.OWN)).funded(), CENT);
        assertEquals(40_000, line(ports, hardware.match(0.5, Match.From.OWN, Match.Base.WHOLE)).funded(), CENT);
        assertEquals(30_000, line(ports, hardware.match(0.7, Match.From.OWN, Match.Base.WHOLE)).funded(), CENT);
    }

    @Test
    void federalMoneyMatchesNoFederalMoney() {
        SampleProgramme first = fixed("A", 100_000).kind(MoneyKind.FEDERAL).match(0.5, Match.From.NON_FEDERAL);
        FundedLine federal = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1), first,
                fixed("B", 90_000).kind(MoneyKind.FEDERAL));
        assertArrayEquals(new double[] {100_000, 50_000}, SamplePurchase.paid(federal), CENT);
        FundedLine state = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1), first, fixed("B", 190_000));
        assertArrayEquals(new double[] {100_000, 190_000}, SamplePurchase.paid(state), CENT);
    }

    @Test
    void budgetsRunOutByYearAndInAll() {
        SampleProgramme programme = fixed("A", 100_000).budget(1000, 300_000, 150_000);
        List<Purchase> purchases = IntStream.range(0, 6).mapToObj(i -> SamplePurchase.bus(i, i / 2, 300_000, 150_000, 0)).toList();
        AwardLedger ledger = ledger(purchases, programme);
        assertArrayEquals(new double[] {100_000, 50_000, 100_000, 50_000, 0, 0},
                ledger.lines().stream().mapToDouble(FundedLine::funded).toArray(), CENT);
        assertEquals(Limit.YEAR_BUDGET, ledger.lines().get(1).awards().get(0).limit());
        assertEquals(Limit.BUDGET, ledger.lines().get(4).awards().get(0).limit());
        assertEquals(300_000, ledger.total(0), CENT);
        assertEquals(150_000, ledger.total(0, 1), CENT);
    }

    @Test
    void busesBeyondTheMostAreNotPaidFor() {
        AwardLedger ledger = ledger(IntStream.range(0, 3).mapToObj(i -> SamplePurchase.bus(i, 1, 300_000, 150_000, 0)).toList(),
                fixed("A", 100_000).budget(2, NO_LIMIT, NO_LIMIT));
        assertArrayEquals(new double[] {100_000, 100_000, 0}, ledger.lines().stream().mapToDouble(FundedLine::funded).toArray(), 0);
        assertEquals("it pays for 2 buses at most", ledger.lines().get(2).awards().get(0).bite().orElseThrow().words());
    }

    @Test
    void aPlanMayCountOnCertainAwardsOnly() {
        FundingInput funding = FundingInput.of(List.of(fixed("A", 50_000).probability(0.3).built(), fixed("B", 40_000).built()));
        List<Purchase> bus = List.of(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1));
        assertEquals(90_000, Stacking.of(funding, bus, false).lines().get(0).funded(), CENT);
        FundedLine certain = Stacking.of(funding, bus, true).lines().get(0);
        assertEquals(40_000, certain.funded(), CENT);
        assertEquals(50_000, certain.awards().get(0).asked().value(), CENT);
        assertEquals(Limit.UNCERTAIN, certain.awards().get(0).limit());
    }

    @Test
    void enginesAndOtherBodyTypesHaveNoAward() {
        NewBus engine = new NewBus("N", "C", false, false, SamplePurchase.bus(0, 0, 0, 0).parts().get(0), Optional.empty(), true);
        Purchase diesel = new Purchase(Purchase.Kind.BUS, "N", 0, 0, 1, SamplePurchase.bus(0, 0, 150_000, 0).parts(),
                Optional.of(engine), true, List.of(0));
        assertEquals(List.of(Limit.NO_AWARD), limits(line(diesel, fixed("A", 50_000))));
        NewBus small = new NewBus("N", "A", true, false, engine.likeForLike(), Optional.empty(), true);
        Purchase other = new Purchase(Purchase.Kind.BUS, "N", 0, 0, 1, diesel.parts(), Optional.of(small), true, List.of(0));
        assertEquals(List.of(Limit.NO_AWARD), limits(line(other, fixed("A", 50_000))));
    }

    /** One pays all of the hardware, the other 80 % of the installation; neither reaches into the other's part. */
    @Test
    void partsOfPortsArePaidForApart() {
        SampleProgramme hardware = SampleProgramme.named("A").forPorts(new PortAward(0, 1, NO_LIMIT, PortAward.Cover.HARDWARE));
        SampleProgramme installation =
                SampleProgramme.named("B").forPorts(new PortAward(0, 0.8, NO_LIMIT, PortAward.Cover.INSTALLATION));
        SampleProgramme all = SampleProgramme.named("C").forPorts(new PortAward(500, 0.5, 8000, PortAward.Cover.ALL));
        FundedLine line = line(SamplePurchase.ports(0, 4, 24_000, 36_000, 0, 1, 2), hardware, installation, all);
        assertArrayEquals(new double[] {24_000, 28_800, 7200}, SamplePurchase.paid(line), CENT);
        FundedLine alone = line(SamplePurchase.ports(0, 4, 24_000, 36_000, 0), all);
        assertEquals(Math.min(4 * 8000, 4 * 500 + 30_000), alone.funded(), CENT);
    }

    @Test
    void aSecondProgrammeOnAPartSeesOnlyWhatTheFirstLeftOfIt() {
        SampleProgramme all = SampleProgramme.named("A").forPorts(new PortAward(0, 0.5, NO_LIMIT, PortAward.Cover.ALL));
        SampleProgramme hardware = SampleProgramme.named("B").forPorts(new PortAward(0, 1, NO_LIMIT, PortAward.Cover.HARDWARE));
        FundedLine line = line(SamplePurchase.ports(0, 1, 6000, 9000, 0, 1), all, hardware);
        assertArrayEquals(new double[] {7500, 3000}, SamplePurchase.paid(line), CENT);
    }

    /** A credit of 30 % of the basis, which the grant has lowered. */
    @Test
    void basisOfATaxCreditIsWhatGrantsLeave() {
        SampleProgramme credit = SampleProgramme.named("T").kind(MoneyKind.TAX_CREDIT).priority(9)
                .forBuses(new BusAward(0, 0.3, 0, 40_000)).afterOthers();
        FundedLine line = line(SamplePurchase.bus(0, 0, 300_000, 150_000, 0, 1), credit, fixed("G", 200_000));
        assertArrayEquals(new double[] {200_000, 30_000}, SamplePurchase.paid(line), CENT);
    }

    @Test
    void worksAndTrainingHaveSharesAndCaps() {
        SampleProgramme yard = SampleProgramme.named("A").forYard(0.5, 30_000);
        assertEquals(30_000, line(SamplePurchase.work(0, 80_000, 0), yard).funded(), CENT);
        assertEquals(20_000, line(SamplePurchase.work(0, 40_000, 0), yard).funded(), CENT);
    }

    @Test
    void failedConditionsAreNamed() {
        Conditions all = new Conditions(true, true, true, true, true, OptionalInt.of(2010), true, 5);
        OldBus other = new OldBus("B16", "A", false, 2012, false);
        Award award = line(SamplePurchase.bus(0, 0, 300_000, 150_000, Optional.of(other), 0), fixed("A", 9000).conditions(all))
                .awards().get(0);
        assertEquals(0, award.paid(), 0);
        assertEquals("its domestic content is not declared; no bus leaves the fleet for it; "
                + "old bus B16 moves to another place instead of being scrapped; old bus B16 has body type A, not C; "
                + "old bus B16 has no diesel engine; the engine of old bus B16 is of model year 2012, newer than 2010",
                award.bite().orElseThrow().words());
        Award empty = line(SamplePurchase.bus(0, 0, 300_000, 150_000, Optional.empty(), 0),
                fixed("A", 9000).conditions(Conditions.SCRAP)).awards().get(0);
        assertEquals("it takes the place of no bus", empty.bite().orElseThrow().words());
        assertTrue(new Conditions(true, true, true, true, true, OptionalInt.of(2010), false, 5)
                .failedBy(SamplePurchase.bus(0, 0, 300_000, 150_000)).isEmpty());
    }

    @Test
    void anAwardTellsHowItComesAbout() {
        Award award = line(SamplePurchase.bus(0, 0, 400_000, 150_000, 0),
                SampleProgramme.named("P").forBuses(new BusAward(10_000, 0, 0.5, 120_000))).awards().get(0);
        var why = award.why("award of P");
        assertEquals(120_000, why.value(), CENT);
        assertEquals("least of what is asked and the limits: its cap per bus", why.rule());
        assertEquals(135_000, why.parts().get(0).value(), CENT);
        var cap = why.parts().get(1).input().orElseThrow();
        assertEquals("BusAward P / C cap", cap.kind() + " " + cap.element() + " " + cap.field());
    }
}
