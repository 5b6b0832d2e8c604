package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.amberyard.core.yard.SampleBuses.DC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortOption;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

/** Ports for a plan of two years: three buses, of which one drives far, and then two that drive less; invented. */
class PortCurveTest {
    /** 20 W all year at 0.12, and rounding: so much dearer a port in use may be than one that is switched off. */
    private static final double STANDBY = 0.02 * 8760 * 0.12 + 8 * 12 * 0.02 + 1.01;
    private static final Metering OWN = Metering.own(Tariff.flat("Flat", 50, 0.12, 0, 8, 0));
    private static final List<PortOption> OPTIONS = List.of(new PortOption(AC, 1400), new PortOption(DC, 6500));
    private static final PortOffer OFFER = new PortOffer(OPTIONS, 2);
    private static final YardInput FIRST = yard(bus(0, 30, 20), bus(1, 30, 20), bus(2, 62, 60));
    private static final YardInput LAST = yard(bus(0, 30, 20), bus(1, 30, 20));

    private final YardComparison comparison = comparison(List.of(FIRST, LAST), PortUnit.of(AC, 1, 1));

    private static YardBus bus(int place, double morningKwh, double afternoonKwh) {
        return SampleBuses.bus(place, SampleBuses.route(18, morningKwh, 10, afternoonKwh), 1, EnergyUse.ZERO);
    }

    private static YardInput yard(YardBus... buses) {
        return SampleBuses.yard(List.of(buses), PortUnit.of(AC, 1, 1), ChargeRule.setTime(1260), true, OWN,
                BuildingLoad.constant(40, SampleBuses.STEPS), 18);
    }

    private static YardComparison comparison(List<YardInput> years, List<PortUnit> bought) {
        return new YardComparison(years, List.of(), OFFER, bought, new YardMemory());
    }

    /** A year with some ports, planned as any other. */
    private static YardYear year(YardInput yard, ChargePolicy policy, int ac, int dc) {
        List<PortUnit> ports = new ArrayList<>(PortUnit.of(AC, 1, ac));
        ports.addAll(PortUnit.of(DC, 1, dc));
        return YardYear.of(yard.under(policy).withPorts(ports));
    }

    private static boolean ready(YardYear year) {
        return year.months().stream().allMatch(m -> m.shortfalls().isEmpty());
    }

    /** Cost of the cheapest mix of a number, some perhaps unused, found by planning both years with each mix. */
    private static Optional<Double> lowestCost(ChargePolicy policy, int number) {
        List<Double> costs = new ArrayList<>();
        for (int dc = 0; dc <= number; dc++) {
            double portCost = 1400.0 * (number - dc) + 6500 * dc;
            for (int used = 1; used <= number; used++) {
                for (int fast = Math.max(0, used - number + dc); fast <= Math.min(used, dc); fast++) {
                    YardYear last = year(LAST, policy, used - fast, fast);
                    if (ready(last) && ready(year(FIRST, policy, used - fast, fast))) {
                        costs.add(portCost + 2 * last.swaps() + last.parts().total());
                    }
                }
            }
        }
        return costs.stream().min(Double::compare);
    }

    @Test
    void eachNumberHasItsCheapestMixThatServesEveryYear() {
        List<PortCurve> curves = comparison.ports(Progress.NONE);
        assertEquals(ChargePolicy.ofYards(), curves.stream().map(PortCurve::policy).toList());
        for (PortCurve curve : curves) {
            for (int number = 1; number <= 3; number++) {
                int ports = number;
                Optional<Double> found = curve.byNumber().stream().filter(c -> c.mix().ports() == ports).map(PortChoice::cost)
                        .findFirst();
                Optional<Double> lowest = lowestCost(curve.policy(), number);
                assertEquals(lowest.isPresent(), found.isPresent(), curve.policy() + " with " + number);
                lowest.ifPresent(cost -> assertEquals(cost, found.get(), STANDBY, curve.policy() + " with " + ports));
            }
        }
    }

    @Test
    void theCheapestAndTheFewestAreOfTheCurve() {
        for (PortCurve curve : comparison.ports(Progress.NONE)) {
            PortChoice cheapest = curve.cheapest().orElseThrow();
            assertTrue(curve.byNumber().stream().allMatch(c -> c.cost() >= cheapest.cost()));
            assertTrue(curve.byNumber().stream().allMatch(c -> c.served() && c.mix().ports() >= curve.fewest().orElseThrow().mix().ports()));
        }
    }

    /** One AC port serves the last year, not the first with its bus that drives far. */
    @Test
    void aYearBeforeTheLastMayAskForMore() {
        PortCurve both = comparison.ports(Progress.NONE).get(ChargePolicy.SPREAD.ordinal());
        PortCurve lastOnly = comparison(List.of(LAST), List.of()).ports(Progress.NONE).get(ChargePolicy.SPREAD.ordinal());
        assertEquals(List.of(1, 0), lastOnly.fewest().orElseThrow().mix().counts());
        assertTrue(both.byNumber().stream().noneMatch(c -> c.mix().counts().equals(List.of(1, 0))));
        assertTrue(both.fewest().orElseThrow().cost() > lastOnly.fewest().orElseThrow().cost());
    }

    @Test
    void whatThePlanBuysIsJudgedWhetherItServesOrNot() {
        PortCurve curve = comparison.ports(Progress.NONE).get(ChargePolicy.AT_ONCE.ordinal());
        PortChoice bought = curve.bought().orElseThrow();
        assertEquals(List.of(1, 0), bought.mix().counts());
        assertFalse(bought.served());
        assertEquals(year(LAST, ChargePolicy.AT_ONCE, 1, 0).parts(), bought.bill());
        assertEquals(Optional.empty(), comparison(List.of(LAST), List.of()).ports(Progress.NONE).get(0).bought());
    }

    @Test
    void planWithoutElectricBusesNeedsNone() {
        assertEquals(List.of(), comparison(List.of(yard()), List.of()).ports(Progress.NONE));
    }

    /** What nobody wants any more is not worked out to the end, and asked again it is. */
    @Test
    void theSearchCanBeStopped() {
        List<Double> shares = Collections.synchronizedList(new ArrayList<>());
        assertThrows(CancellationException.class, () -> comparison.ports(share -> {
            shares.add(share);
            throw new CancellationException();
        }));
        assertTrue(shares.stream().allMatch(s -> s == 0), "it stops at once");
        shares.clear();
        List<PortCurve> found = comparison.ports(shares::add);
        assertTrue(shares.contains(1.0) && shares.stream().allMatch(s -> s >= 0 && s <= 1));
        assertSame(found, comparison.ports(Progress.NONE), "what is known is not looked for again");
    }

    /** Years that are alike come out of one plan. */
    @Test
    void policiesByYearAreThoseOfTheYears() {
        YardComparison three = comparison(List.of(FIRST, LAST, LAST), List.of());
        List<List<YardYear>> years = three.policiesByYear(Progress.NONE);
        assertEquals(3, years.size());
        List<ChargePolicy> policies = FIRST.rule().comparable();
        assertEquals(ChargePolicy.values().length - 1, policies.size(), "without a cap there is no charging under one");
        for (int place = 0; place < policies.size(); place++) {
            assertSame(years.get(1).get(place), years.get(2).get(place));
            assertSame(three.under(0, policies.get(place)), years.get(0).get(place));
            assertEquals(policies.get(place), years.get(0).get(place).input().rule().policy());
        }
    }
}
