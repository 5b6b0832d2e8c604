package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.battery.TaperCurve;

/** Made yards of up to nine buses with a night and often a midday stay each, and up to seven ports of three types. */
class YardChargingPropertyTest {
    private static final double CAP_KW = 45;
    private static final PortUnit CABINET = new PortUnit(SampleYard.port("cabinet", true, 50, 0.92), 3);

    private final Random random = new Random(5);

    private BusAcceptance acceptance() {
        return new BusAcceptance(random.nextInt(4) == 0 ? 9.6 : 19.2, random.nextInt(3) == 0 ? 0 : 60,
                new TaperCurve(120, 6, 0.85, 130));
    }

    private YardStretch yard(int seed) {
        random.setSeed(seed);
        List<PlugIn> plugIns = new ArrayList<>();
        int buses = 1 + random.nextInt(9);
        for (int bus = 1; bus <= buses; bus++) {
            BusAcceptance acceptance = acceptance();
            double arrivalMin = 930 + random.nextInt(200);
            double leavesMin = 1440 + 320 + random.nextInt(90) + (random.nextInt(6) == 0 ? 480 : 0);
            plugIns.add(SampleYard.bus(bus, arrivalMin, leavesMin, random.nextInt(110), acceptance));
            if (random.nextBoolean() && leavesMin < 1440 + 420) {
                plugIns.add(SampleYard.bus(bus, 510 + random.nextInt(60), 800 + random.nextInt(60), random.nextInt(30),
                        acceptance));
            }
        }
        SwapHours hours = random.nextBoolean() ? SwapHours.always(1440) : SampleYard.between(300, 1150);
        return new YardStretch(1, SampleYard.DAY, plugIns, hours);
    }

    private List<PortUnit> units(YardStretch yard) {
        List<PortUnit> units = new ArrayList<>();
        int count = 1 + random.nextInt(7);
        for (int unit = 0; unit < count; unit++) {
            units.add(List.of(new PortUnit(SampleYard.SLOW, 1), new PortUnit(SampleYard.FAST, 1), CABINET)
                    .get(random.nextInt(3)));
        }
        return units;
    }

    private static ChargeRule rule(int number) {
        ChargePolicy policy = ChargePolicy.values()[number];
        return switch (policy) {
            case SET_TIME -> ChargeRule.setTime(1350);
            case CAPPED -> ChargeRule.capped(CAP_KW);
            default -> ChargeRule.of(policy);
        };
    }

    /** Policies by which no bus takes power from another that has a plug of its own, as one that leaves earlier does under a cap. */
    private static ChargeRule uncapped(int number) {
        return number < ChargePolicy.CAPPED.ordinal() ? rule(number) : rule(number + 1);
    }

    private static double storedKwh(YardCharging charging, int place) {
        PlugIn stay = charging.stretch().plugIns().get(place);
        return (charging.schedule().endShares()[place] - stay.startShare()) * stay.acceptance().curve().usableKwh();
    }

    /** What the meter saw is what the batteries store over the efficiency, and that is the need less what is named missing. */
    @Property(tries = 150)
    void energyIsKept(@ForAll @IntRange(min = 0) int seed, @ForAll @IntRange(min = 0, max = 4) int policy) {
        YardStretch yard = yard(seed);
        YardCharging charging = YardCharging.of(yard, units(yard), rule(policy));
        double needKwh = 0;
        double stored = 0;
        for (Plugged one : charging.assignment().plugged()) {
            double efficiency = charging.units().get(one.unit()).port().efficiency();
            assertEquals(storedKwh(charging, one.place()), charging.schedule().meterKwh(one.place()) * efficiency, 1e-9);
        }
        for (int place = 0; place < yard.plugIns().size(); place++) {
            needKwh += yard.plugIns().get(place).batteryKwh();
            stored += storedKwh(charging, place);
        }
        assertEquals(needKwh, stored + charging.schedule().shortKwh(), 1e-7);
    }

    /** No port gives more than its power at any step, no bus draws outside its time at the plug, no plug holds two buses. */
    @Property(tries = 150)
    void portsAndPlugsAreKept(@ForAll @IntRange(min = 0) int seed, @ForAll @IntRange(min = 0, max = 4) int policy) {
        YardStretch yard = yard(seed);
        YardCharging charging = YardCharging.of(yard, units(yard), rule(policy));
        double[][] unitKw = new double[charging.units().size()][SampleYard.DAY.steps()];
        for (Plugged one : charging.assignment().plugged()) {
            assertTrue(one.fromMin() >= one.plugIn().fromMin() && one.toMin() <= one.plugIn().toMin(), one::toString);
            for (int step = 0; step < SampleYard.DAY.steps(); step++) {
                double kw = charging.schedule().meterKw()[one.place()][step];
                unitKw[one.unit()][step] += kw;
                assertTrue(kw == 0 || minutesAt(one, step) > 0, one::toString);
            }
        }
        for (int unit = 0; unit < unitKw.length; unit++) {
            for (double kw : unitKw[unit]) {
                assertTrue(kw <= charging.units().get(unit).port().powerKw() + 1e-9);
            }
        }
        noTwoAtOnePlug(charging.assignment());
    }

    private static double minutesAt(Plugged one, int step) {
        double sum = 0;
        for (double from = step * 15; from < 2880; from += 1440) {
            sum += Math.max(0, Math.min(one.toMin(), from + 15) - Math.max(one.fromMin(), from));
        }
        return sum;
    }

    private static void noTwoAtOnePlug(PortAssignment assignment) {
        for (Plugged one : assignment.plugged()) {
            for (Plugged other : assignment.plugged()) {
                boolean samePlug = one.unit() == other.unit() && one.plug() == other.plug() && one != other;
                for (int turn = -1; samePlug && turn <= 1; turn++) {
                    double overlap = Math.min(one.toMin(), other.toMin() + turn * 1440)
                            - Math.max(one.fromMin(), other.fromMin() + turn * 1440);
                    assertTrue(overlap <= 1e-9, () -> one + " and " + other);
                }
            }
        }
    }

    @Property(tries = 150)
    void orderOfTheBusesDoesNotMatter(@ForAll @IntRange(min = 0) int seed, @ForAll @IntRange(min = 0, max = 4) int policy) {
        YardStretch yard = yard(seed);
        List<PortUnit> units = units(yard);
        List<PlugIn> turned = new ArrayList<>(yard.plugIns());
        Collections.reverse(turned);
        ChargeSchedule one = YardCharging.of(yard, units, rule(policy)).schedule();
        ChargeSchedule other = YardCharging.of(yard.with(turned), units, rule(policy)).schedule();
        for (int place = 0; place < turned.size(); place++) {
            assertArrayEquals(one.meterKw()[place], other.meterKw()[turned.size() - 1 - place], 1e-9);
        }
    }

    /** With plugs of their own another port of any type never leaves a bus with less. */
    @Property(tries = 150)
    void anotherPortNeverTakesFromABusWithAPlugOfItsOwn(@ForAll @IntRange(min = 0) int seed, @ForAll boolean fast) {
        YardStretch yard = yard(seed);
        List<PortUnit> units = new ArrayList<>(Collections.nCopies(9, new PortUnit(SampleYard.SLOW, 1)));
        Collections.fill(units.subList(0, random.nextInt(9)), new PortUnit(SampleYard.FAST, 1));
        PolicyRun few = new PolicyRun(yard, units, rule(0));
        var before = DedicatedPlugs.of(yard, units);
        List<PortUnit> more = new ArrayList<>(units);
        more.add(random.nextInt(9), new PortUnit(fast ? SampleYard.FAST : SampleYard.SLOW, 1));
        PolicyRun many = new PolicyRun(yard, more, rule(0));
        if (before.isPresent()) {
            neverLess(few.of(before.get()), many.of(DedicatedPlugs.of(yard, more).orElseThrow()));
        }
    }

    /** In a queue another port of the same type never leaves more energy missing, but under a cap, which more buses then share. */
    @Property(tries = 150)
    void anotherPortNeverLeavesMoreMissing(@ForAll @IntRange(min = 0) int seed, @ForAll @IntRange(min = 0, max = 3) int policy) {
        YardStretch yard = yard(seed);
        int count = 1 + random.nextInt(6);
        double few = YardCharging.of(yard, SampleYard.slow(count), uncapped(policy)).schedule().shortKwh();
        double many = YardCharging.of(yard, SampleYard.slow(count + 1), uncapped(policy)).schedule().shortKwh();
        assertTrue(many <= few + 1e-9, count + " ports leave " + few + " kWh missing, one more " + many);
    }

    /** A bus that leaves later never leaves with less while it has a plug of its own. */
    @Property(tries = 150)
    void aLaterDepartureNeverTakes(@ForAll @IntRange(min = 0) int seed, @ForAll @IntRange(min = 0, max = 3) int policy,
            @ForAll @IntRange(min = 1, max = 60) int laterMin) {
        YardStretch yard = yard(seed);
        List<PortUnit> units = Collections.nCopies(9, new PortUnit(SampleYard.SLOW, 1));
        List<PlugIn> later = new ArrayList<>(yard.plugIns());
        int place = random.nextInt(later.size());
        PlugIn one = later.get(place);
        later.set(place, new PlugIn(one.bus(), one.label(), one.fromMin(), one.toMin() + laterMin,
                one.chargeByMin() + laterMin,
                one.batteryKwh(), one.leastKwh(), one.endShare(), one.acceptance()));
        PolicyRun run = new PolicyRun(yard, units, uncapped(policy));
        PolicyRun runLater = new PolicyRun(yard.with(later), units, uncapped(policy));
        neverLess(run.of(DedicatedPlugs.of(yard, units).orElseThrow()),
                runLater.of(DedicatedPlugs.of(yard.with(later), units).orElseThrow()));
    }

    private static void neverLess(ChargeSchedule before, ChargeSchedule after) {
        for (int place = 0; place < before.endShares().length; place++) {
            assertTrue(after.endShares()[place] >= before.endShares()[place] - 1e-12,
                    place + ": " + before.endShares()[place] + " then " + after.endShares()[place]);
        }
    }
}
