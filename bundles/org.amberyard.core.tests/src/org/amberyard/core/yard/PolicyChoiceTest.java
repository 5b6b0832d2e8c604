package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

/**
 * Which schedule is taken beside that of the programme, told by years of other policies that are made up: what each costs, lacks and
 * draws is set, and the choice follows. Two buses, invented.
 */
class PolicyChoiceTest {
    private static final LoadMemory LOADS = new LoadMemory();
    private static final double BUILDING_KW = 40;

    private final List<ChargePolicy> asked = new ArrayList<>();

    private static YardInput yard(ChargePolicy policy, int ports, boolean midday, double limitKw, double monthlyCharge) {
        List<YardBus> buses = IntStream.range(0, 2).mapToObj(p -> SampleBuses.bus(p, SampleBuses.route(18, 30, 0, 25), 1, EnergyUse.ZERO)).toList();
        return SampleBuses.yard(buses, PortUnit.of(AC, 1, ports), ChargeRule.of(policy), midday,
                new Metering(Tariff.flat("Flat", monthlyCharge, 0.12, 0, 8, 0), false, List.of(), OptionalInt.empty()),
                BuildingLoad.constant(BUILDING_KW, SampleBuses.STEPS), 18).within(limitKw);
    }

    /** Two buses at one port, so that the bound of the programme does not speak for other policies. */
    private static YardInput crowded(ChargePolicy policy, double limitKw) {
        return yard(policy, 1, false, limitKw, 50);
    }

    /** Loads at full power stand for the schedule of the programme, with a gap to the bound in each month. */
    private static List<MonthLoad> scheduled(YardInput yard, double gap) {
        return LOADS.year(yard).stream().map(m -> m.withGap(OptionalDouble.of(gap))).toList();
    }

    /**
     * @param dearer monthly charge above that of the yard, by policy in the order of {@link ChargePolicy}
     * @param moreMissingKwh missing energy above that of the schedule
     * @param morePeakKw peak above that of the schedule
     */
    private List<MonthLoad> cheapest(YardInput yard, List<MonthLoad> scheduled, double[] dearer, double moreMissingKwh, double morePeakKw) {
        YardYear own = YardYear.of(yard, scheduled);
        return new PolicyChoice(yard, LOADS, input -> {
            asked.add(input.rule().policy());
            YardYear billed = YardYear.of(yard(yard.rule().policy(), yard.ports().size(), yard.midday(), yard.siteLimitKw(),
                    50 + dearer[input.rule().policy().ordinal()]), scheduled);
            List<YardYear.Month> months = own.months().stream().map(m -> new YardYear.Month(m.month(), m.yardKwh(), m.yardPeakKw() + morePeakKw,
                    m.servicePeakKw(), 0, List.of(), 0, OptionalDouble.empty())).toList();
            return new YardYear(input, months, own.busKwh(), List.of(own.totalMissingKwh() + moreMissingKwh, 0.0), billed.bills(),
                    billed.withoutCharging());
        }).cheapest(scheduled);
    }

    private static double[] dearer(double atOnce, double setTime, double spread) {
        return new double[] {atOnce, setTime, spread, 0, 0};
    }

    private static void assertTaken(ChargePolicy policy, List<MonthLoad> taken) {
        assertEquals(Climate.MONTHS, taken.size());
        assertTrue(taken.stream().flatMap(m -> m.stretches().stream()).allMatch(s -> s.charging().rule().policy() == policy), policy + " is not taken");
    }

    @Test
    void theCheapestOfAllIsTaken() {
        YardInput yard = crowded(ChargePolicy.LEAST_COST, Double.POSITIVE_INFINITY);
        List<MonthLoad> scheduled = scheduled(yard, 1);
        assertTaken(ChargePolicy.SET_TIME, cheapest(yard, scheduled, dearer(-5, -9, -7), 0, 0));
        assertEquals(List.of(ChargePolicy.AT_ONCE, ChargePolicy.SET_TIME, ChargePolicy.SPREAD), asked);
        assertTaken(ChargePolicy.AT_ONCE, cheapest(yard, scheduled, dearer(-5, 9, -4), 0, 0));
    }

    /** Less than a cent in the year decides nothing, nor does what is dearer. */
    @Test
    void theProgrammesScheduleStaysWhereNoneIsCheaper() {
        YardInput yard = crowded(ChargePolicy.LEAST_COST, Double.POSITIVE_INFINITY);
        List<MonthLoad> scheduled = scheduled(yard, 1);
        assertSame(scheduled, cheapest(yard, scheduled, dearer(3, 3, 3), 0, 0));
        assertSame(scheduled, cheapest(yard, scheduled, dearer(-0.0008, 0, 0), 0, 0));
        assertTaken(ChargePolicy.AT_ONCE, cheapest(yard, scheduled, dearer(-0.001, 0, 0), 0, 0));
    }

    /** What leaves a whole kWh more missing is not taken however cheap, and what leaves one less is, however dear; less than half counts not. */
    @Test
    void missingEnergyGoesBeforeMoney() {
        YardInput yard = crowded(ChargePolicy.LEAST_COST, Double.POSITIVE_INFINITY);
        List<MonthLoad> scheduled = scheduled(yard, 1);
        assertSame(scheduled, cheapest(yard, scheduled, dearer(-40, -40, -40), 1, 0));
        assertTaken(ChargePolicy.AT_ONCE, cheapest(yard, scheduled, dearer(-40, 9, 9), 0.4, 0));
        assertTaken(ChargePolicy.AT_ONCE, cheapest(yard, scheduled, dearer(40, 40, 40), -1, 0));
    }

    @Test
    void theLimitOfTheSiteIsKept() {
        double peakKw = YardYear.of(crowded(ChargePolicy.LEAST_COST, 1000), scheduled(crowded(ChargePolicy.LEAST_COST, 1000), 1)).yardPeakKw();
        YardInput yard = crowded(ChargePolicy.LEAST_COST, peakKw + 3);
        List<MonthLoad> scheduled = scheduled(yard, 1);
        assertSame(scheduled, cheapest(yard, scheduled, dearer(-40, -40, -40), 0, 3.01));
        assertTaken(ChargePolicy.AT_ONCE, cheapest(yard, scheduled, dearer(-40, -30, -30), 0, 3));
    }

    /** Nobody knows beforehand what will be cheaper: day by day another schedule is taken only where less is missing. */
    @Test
    void dayByDayNothingIsTakenForBeingCheaper() {
        YardInput yard = crowded(ChargePolicy.DAY_BY_DAY, Double.POSITIVE_INFINITY);
        List<MonthLoad> scheduled = scheduled(yard, 1);
        assertEquals(0, YardYear.of(yard, scheduled).totalMissingKwh(), 0.4);
        assertSame(scheduled, cheapest(yard, scheduled, dearer(-40, -40, -40), 0, 0));
        assertEquals(List.of(), asked, "where nothing is missing none is asked");
    }

    /** The bound moves by what the schedule that is taken costs more in the month; it holds where the buses stand at the same plugs. */
    @Test
    void theBoundHoldsForWhatIsTaken() {
        YardInput yard = crowded(ChargePolicy.LEAST_COST, Double.POSITIVE_INFINITY);
        List<MonthLoad> scheduled = scheduled(yard, 20);
        List<MonthLoad> taken = cheapest(yard, scheduled, dearer(-5, 9, 9), 0, 0);
        for (int month = 0; month < taken.size(); month++) {
            OptionalDouble gap = taken.get(month).costGap();
            if (taken.get(month).standsAs(scheduled.get(month))) {
                assertEquals(20 - 5, gap.orElseThrow(), 1e-6);
            } else {
                assertTrue(gap.isEmpty());
            }
        }
        assertTrue(taken.stream().anyMatch(m -> m.costGap().isPresent()));
        List<MonthLoad> unknown = scheduled.stream().map(m -> m.withGap(OptionalDouble.empty())).toList();
        assertTrue(cheapest(yard, unknown, dearer(-5, 9, 9), 0, 0).stream().allMatch(m -> m.costGap().isEmpty()));
    }

    /** Each bus has a plug of its own and nothing is missing: no policy can be below the bound, so where that is met none is asked. */
    @Test
    void whereTheBoundIsMetNoOtherIsAsked() {
        YardInput own = yard(ChargePolicy.LEAST_COST, 2, false, Double.POSITIVE_INFINITY, 50);
        List<MonthLoad> met = scheduled(own, 0);
        assertSame(met, cheapest(own, met, dearer(-40, -40, -40), 0, 0));
        assertEquals(List.of(), asked);
        List<MonthLoad> unknown = met.stream().map(m -> m.withGap(OptionalDouble.empty())).toList();
        assertTaken(ChargePolicy.AT_ONCE, cheapest(own, unknown, dearer(-40, 0, 0), 0, 0));
        assertEquals(3, asked.size(), "without a bound all are");
    }

    /** Twelve months may be off by 1,000 each: any policy may be cheaper, and each is asked. By a cent in all none is. */
    @Test
    void whereTheBoundIsFarOthersAreAsked() {
        YardInput own = yard(ChargePolicy.LEAST_COST, 2, false, Double.POSITIVE_INFINITY, 50);
        cheapest(own, scheduled(own, 1000), dearer(0, 0, 0), 0, 0);
        assertEquals(3, asked.size());
        asked.clear();
        cheapest(own, scheduled(own, 0.0008), dearer(0, 0, 0), 0, 0);
        assertEquals(List.of(), asked);
    }

    /** Charging at once between runs fills more than it must, so the bound of the programme does not speak for it; for managed ones it does. */
    @Test
    void plugsBetweenRunsAreAnotherNeed() {
        YardInput midday = yard(ChargePolicy.LEAST_COST, 2, true, Double.POSITIVE_INFINITY, 50);
        cheapest(midday, scheduled(midday, 0), dearer(0, 0, 0), 0, 0);
        assertEquals(Collections.emptyList(), asked.stream().filter(p -> midday.rule().with(p).managed()).toList());
        assertEquals(asked.size(), List.of(ChargePolicy.AT_ONCE, ChargePolicy.SET_TIME, ChargePolicy.SPREAD).stream()
                .filter(p -> !midday.rule().with(p).managed()).count());
        assertTrue(asked.contains(ChargePolicy.AT_ONCE));
    }
}
