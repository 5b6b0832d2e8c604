package org.amberyard.core.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TaskClockTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final TaskTrigger SERVICE = new TaskTrigger(10_000, 6, INF, BrakeWear.NONE);

    @Test
    void distanceComesFirst() {
        TaskClock.Walk walk = TaskClock.NEW.walk(SERVICE, new Meters(25_000, 12, 0, 0));
        assertEquals(2, walk.times());
        assertEquals(5000, walk.after().since().km(), 1e-6);
    }

    @Test
    void timeComesFirst() {
        TaskClock.Walk walk = TaskClock.NEW.walk(SERVICE, new Meters(3000, 12, 0, 0));
        assertEquals(2, walk.times());
        assertEquals(Meters.ZERO, walk.after().since(), "it is due as the stretch ends");
    }

    @Test
    void hoursAndBrakeEnergyCountToo() {
        TaskTrigger hours = new TaskTrigger(INF, INF, 250, BrakeWear.NONE);
        assertEquals(4, TaskClock.NEW.walk(hours, new Meters(9000, 12, 1000, 0)).times());
        TaskTrigger brakes = new TaskTrigger(INF, INF, INF, new BrakeWear(900));
        assertEquals(2, TaskClock.NEW.walk(brakes, new Meters(9000, 12, 1000, 2000)).times());
    }

    @Test
    void aTaskThatNeverFallsDueHasNoEvents() {
        assertEquals(0, TaskClock.NEW.walk(TaskTrigger.NEVER, new Meters(1e6, 400, 1e5, 1e6)).times());
    }

    @Test
    void aPastLivedEvenlyLeavesTheClockWhereItStopped() {
        TaskClock clock = TaskClock.ofLife(SERVICE, new Meters(95_000, 48, 0, 0));
        assertEquals(5000, clock.since().km(), 1e-6);
        assertEquals(48 * 5.0 / 95, clock.since().months(), 1e-9);
    }

    @Test
    void anIntervalMustBeAboveZero() {
        String message = assertThrows(IllegalArgumentException.class, () -> new TaskTrigger(0, INF, INF, BrakeWear.NONE)).getMessage();
        assertEquals("Task distance is 0.0 but must be above 0", message);
    }

    /** What is passed over at rest is, to the bit, what the months would have left, and none of them would have had an event. */
    @Property
    void aTaskThatRestsForAYearRestsInEachMonth(@ForAll long seed) {
        Random random = new Random(seed);
        TaskTrigger trigger = new TaskTrigger(20_000 * random.nextDouble() + 1, random.nextBoolean() ? INF : 1 + random.nextInt(48),
                random.nextBoolean() ? INF : 2000 * random.nextDouble() + 1, random.nextBoolean() ? BrakeWear.NONE : new BrakeWear(900));
        TaskClock start = new TaskClock(new Meters(10_000 * random.nextDouble(), random.nextInt(24), 500 * random.nextDouble(),
                500 * random.nextDouble()));
        Meters year = new Meters(15_000 * random.nextDouble(), 12, 800 * random.nextDouble(), 600 * random.nextDouble());
        double[] shares = random.doubles(WearYear.MONTHS).toArray();
        double all = Arrays.stream(shares).sum();
        List<Meters> months = Arrays.stream(shares).map(share -> share / all)
                .mapToObj(share -> new Meters(year.km() * share, 1, year.hours() * share, year.brakeKwh() * share)).toList();
        TaskClock clock = start;
        int times = 0;
        for (Meters month : months) {
            TaskClock.Walk walk = clock.walk(trigger, month);
            times += walk.times();
            clock = walk.after();
        }
        if (start.restsFor(trigger, year)) {
            assertEquals(0, times);
            assertEquals(clock, start.past(months));
        } else {
            assertTrue(times > 0 || trigger.dueAfter(start.since(), year) > 1 - 1e-9);
        }
    }

    @Test
    void whatIsDueAtTheEndOfTheYearDoesNotRest() {
        Meters year = new Meters(10_000, 12, 0, 0);
        assertFalse(TaskClock.NEW.restsFor(new TaskTrigger(10_000, INF, INF, BrakeWear.NONE), year));
        assertFalse(TaskClock.NEW.restsFor(new TaskTrigger(10_000 * (1 + 1e-7), INF, INF, BrakeWear.NONE), year));
        assertTrue(TaskClock.NEW.restsFor(new TaskTrigger(10_000 * (1 + 1e-5), INF, INF, BrakeWear.NONE), year));
    }

    @Property
    void splittingAStretchGivesTheSameEvents(@ForAll @DoubleRange(min = 0, max = 60_000) double km,
            @ForAll @DoubleRange(min = 0, max = 9000) double sinceKm, @ForAll @DoubleRange(min = 0.01, max = 0.99) double cut) {
        Meters whole = new Meters(km, 12, 0, 0);
        TaskClock start = new TaskClock(new Meters(sinceKm, 3, 0, 0));
        TaskClock.Walk one = start.walk(SERVICE, whole);
        TaskClock.Walk first = start.walk(SERVICE, whole.times(cut));
        TaskClock.Walk second = first.after().walk(SERVICE, whole.times(1 - cut));
        boolean border = nearBorder(one) || nearBorder(first);
        assertTrue(Math.abs(one.times() - first.times() - second.times()) <= (border ? 1 : 0));
        assertTrue(border || Math.abs(one.after().since().km() - second.after().since().km()) < 1e-6);
        assertTrue(border || Math.abs(one.after().since().months() - second.after().since().months()) < 1e-9);
    }

    /** An event within rounding of the border of a stretch may be counted on either side of it. */
    private static boolean nearBorder(TaskClock.Walk walk) {
        return walk.after().since().months() < 1e-6 || Math.abs(walk.after().since().months() - 6) < 1e-6
                || Math.abs(walk.after().since().km() - 10_000) < 1e-3;
    }

    @Property
    void moreDistanceNeverMeansFewerEvents(@ForAll @DoubleRange(min = 0, max = 60_000) double km,
            @ForAll @DoubleRange(min = 0, max = 30_000) double more) {
        int events = TaskClock.NEW.walk(SERVICE, new Meters(km, 12, 0, 0)).times();
        assertTrue(TaskClock.NEW.walk(SERVICE, new Meters(km + more, 12, 0, 0)).times() >= events);
    }
}
