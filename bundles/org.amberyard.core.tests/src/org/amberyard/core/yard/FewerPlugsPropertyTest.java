package org.amberyard.core.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.PortOption;
import org.amberyard.core.depot.Port;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.tariff.BillParts;

/** Yards of every kind with fewer plugs than buses. */
class FewerPlugsPropertyTest {
    private static final double CENT = 0.01;
    /** More than the standby power of a port costs in a year under any of the tariffs, money. */
    private static final double STANDBY = 200;
    private static final Port CABINET = new Port("Cabinet", true, 60, 0.92, 50, 0, 0, 10, 20, 0, 2);

    private static YardYear under(YardInput yard, ChargePolicy policy) {
        return YardYear.of(yard.under(policy));
    }

    private static boolean ready(YardYear year) {
        return year.months().stream().allMatch(m -> m.shortfalls().isEmpty());
    }

    private static double cost(YardYear year) {
        BillParts parts = year.parts();
        return parts.energy() + year.input().demandIndex() * parts.demand() + parts.fixed();
    }

    private static List<ChargePolicy> managed(YardInput yard) {
        return Stream.of(ChargePolicy.values()).filter(p -> yard.rule().with(p).managed()).toList();
    }

    /** Charging at a set time is left out: who waits for the night has less time at a plug. */
    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
    void everyManagedPolicyServesWhereChargingAtOnceDoes(@ForAll long seed) {
        YardInput yard = new RandomYards(seed).crowded();
        if (ready(under(yard, ChargePolicy.AT_ONCE))) {
            for (ChargePolicy policy : managed(yard)) {
                YardYear year = under(yard, policy);
                assertTrue(ready(year), () -> policy + " misses " + year.totalMissingKwh());
                assertEquals(askedKwh(yard, ChargePolicy.AT_ONCE), askedKwh(yard, policy), 1e-6, policy.label());
            }
        }
    }

    private static double askedKwh(YardInput yard, ChargePolicy policy) {
        return new YardPlanner(yard.under(policy)).year().stream().flatMap(m -> m.stretches().stream())
                .mapToDouble(s -> s.times()
                        * s.charging().stretch().plugIns().stream().mapToDouble(PlugIn::batteryKwh).sum())
                .sum();
    }

    /** Nor does the search for ports know it otherwise. */
    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
    void portsThatServeAtOnceServeEveryManagedPolicy(@ForAll long seed) {
        YardInput yard = new RandomYards(seed).crowded();
        boolean atOnce = serves(yard, ChargePolicy.AT_ONCE);
        assertEquals(ready(under(yard, ChargePolicy.AT_ONCE)), atOnce);
        for (ChargePolicy policy : managed(yard)) {
            assertTrue(!atOnce || serves(yard, policy), policy::label);
        }
        assertTrue(!serves(yard, ChargePolicy.SPREAD) || serves(yard, ChargePolicy.LEAST_COST));
        assertTrue(!serves(yard, ChargePolicy.SET_TIME) || serves(yard, ChargePolicy.LEAST_COST));
    }

    private static boolean serves(YardInput yard, ChargePolicy policy) {
        ChargeRule rule = yard.rule().with(policy);
        return new PortTrial(List.of(yard), rule, new NeedsMemory()).serves(yard.ports());
    }

    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
    void leastCostIsNeverDearerThanAPolicyThatServes(@ForAll long seed) {
        YardInput yard = new RandomYards(seed).crowded();
        YardYear least = under(yard, ChargePolicy.LEAST_COST);
        for (ChargePolicy policy : ChargePolicy.values()) {
            YardYear other = under(yard, policy);
            assertTrue(!ready(other) || ready(least) && cost(least) <= cost(other) + 2 * CENT,
                    () -> policy + " costs " + cost(other) + ", least cost " + cost(least)
                            + ", missing " + least.totalMissingKwh());
        }
    }

    /** With a port of the cheapest type more, perhaps unused, swaps and bill are no dearer, and every bus is ready. */
    @Property(tries = 10, edgeCases = EdgeCasesMode.NONE)
    void aPortMoreNeverRaisesSwapsAndBill(@ForAll long seed) {
        YardInput yard = new RandomYards(seed).crowded();
        PortOffer offer = new PortOffer(
                List.of(new PortOption(SampleBuses.AC, 1400), new PortOption(CABINET, 6500)), 3);
        for (PortCurve curve : new PortQuestion(List.of(yard), offer, List.of()).answer(Progress.NONE)) {
            List<PortChoice> choices = curve.byNumber();
            for (int place = 1; place < choices.size(); place++) {
                PortChoice fewer = choices.get(place - 1);
                PortChoice more = choices.get(place);
                assertEquals(fewer.mix().ports() + 1, more.mix().ports());
                assertTrue(more.served() && more.cost() <= fewer.cost() + 1400 + STANDBY);
                boolean added = IntStream.range(0, 2)
                        .allMatch(o -> more.mix().counts().get(o) >= fewer.mix().counts().get(o));
                assertTrue(!added || swapsAndBill(more) <= swapsAndBill(fewer) + STANDBY, () -> fewer + " then " + more);
            }
        }
    }

    private static double swapsAndBill(PortChoice choice) {
        return choice.mix().swapCost() + choice.bill().total();
    }
}
