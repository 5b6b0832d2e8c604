package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TractiveWorkTest {
    private static final RoadLoad BUS = new RoadLoad(10_000, 0.008, 4.5, 1.05, 1.2);

    private static SpeedTrace microTrip(double km, int stops, double climbM) {
        RunInput run = SampleBus.run("AM", 390, 200, km, stops, 20, 65, climbM, Collections.nCopies(12, 15));
        return new TraceSynthesis(new DriverStyle(0.8, 1.0, 1)).of(run).pieces().get(0).trace();
    }

    private static TractiveWork work(SpeedTrace trace, double limitKw, double cutoffKmh) {
        return TractiveWork.of(trace, BUS, SampleBus.DRIVELINE, new BrakeRecovery(limitKw, cutoffKmh, 1.3));
    }

    /** What is drawn at the terminals and not given back is rolling, drag, climbing, friction brakes and losses. */
    @Property(tries = 200)
    void energyIsConserved(@ForAll @DoubleRange(min = 3, max = 60) double km, @ForAll @IntRange(min = 1, max = 50) int stops,
            @ForAll @DoubleRange(min = 0, max = 300) double climbM, @ForAll @DoubleRange(min = 0, max = 200) double limitKw) {
        TractiveWork work = work(microTrip(km, stops, climbM), limitKw, 8);
        assertEquals(work.drawnKwh() - work.recoveredKwh(), work.rollingKwh() + work.dragKwh() + work.climbingKwh()
                + work.frictionBrakeKwh() + work.drivelineKwh(), 1e-9);
    }

    /** Higher limits never cost energy, at any cut-off, because the motor is not asked to brake at a loss. */
    @Property(tries = 200)
    void aHigherLimitNeverRaisesEnergy(@ForAll @DoubleRange(min = 0, max = 150) double kw,
            @ForAll @DoubleRange(min = 0, max = 20) double cutoffKmh, @ForAll @DoubleRange(min = 0, max = 300) double climbM) {
        SpeedTrace trace = microTrip(20, 20, climbM);
        TractiveWork weak = work(trace, kw, cutoffKmh);
        TractiveWork strong = work(trace, kw + 10, cutoffKmh);
        assertTrue(strong.frictionBrakeKwh() <= weak.frictionBrakeKwh());
        assertTrue(strong.drawnKwh() - strong.recoveredKwh() <= weak.drawnKwh() - weak.recoveredKwh() + 1e-12);
    }

    @Test
    void nothingIsRecoveredBelowTheCutoff() {
        TractiveWork work = work(microTrip(20, 20, 0), 1000, 500);
        assertEquals(0, work.recoveredKwh(), 0);
        assertEquals(0, work.peakRecoveredKw(), 0);
        assertTrue(work.frictionBrakeKwh() > 0);
    }

    @Test
    void harderBrakingLeavesMoreToTheFrictionBrakes() {
        double[] speeds = {15, 0};
        double soft = share(SpeedTrace.level(new double[] {0, 15}, speeds));
        double hard = share(SpeedTrace.level(new double[] {0, 5}, speeds));
        assertTrue(soft > 0.75 && hard < 0.6, soft + " of the braking is recovered softly, " + hard + " hard");
    }

    private static double share(SpeedTrace stop) {
        TractiveWork work = work(stop, 500, 0);
        return work.recoveredKwh() / (work.recoveredKwh() + work.frictionBrakeKwh());
    }

    @Test
    void aTraceIsCutWhereTheBusStandsAndDrivenAsFarAsAsked() {
        SpeedTrace trace = SpeedTrace.level(new double[] {0, 5, 15, 25, 40, 50, 60, 70}, new double[] {0, 0, 10, 0, 0, 10, 0, 0});
        List<SpeedTrace> pieces = trace.cutAtRest();
        assertEquals(2, pieces.size());
        assertEquals(trace.distanceM(), pieces.stream().mapToDouble(SpeedTrace::distanceM).sum(), 1e-12);
        assertEquals(trace.totalS(), pieces.stream().mapToDouble(SpeedTrace::totalS).sum(), 1e-12);
        DrivePattern pattern = DrivePattern.ofTrace(trace, 0.5);
        assertEquals(500, pattern.distanceM(), 1e-9);
        assertEquals(70 * 2.5, pattern.totalS(), 1e-9);
        assertThrows(IllegalArgumentException.class,
                () -> SpeedTrace.level(new double[] {0, 1}, new double[] {0, 5}).cutAtRest());
        assertThrows(IllegalArgumentException.class,
                () -> SpeedTrace.level(new double[] {0, 1}, new double[] {0, 0}).cutAtRest());
    }

    @Test
    void refusesATraceThatDoesNotGoOn() {
        double[] times = {0, 1, 1};
        assertThrows(IllegalArgumentException.class, () -> SpeedTrace.level(times, new double[3]));
        assertThrows(IllegalArgumentException.class, () -> SpeedTrace.level(new double[] {0, 1}, new double[] {0, -1}));
        assertThrows(IllegalArgumentException.class, () -> SpeedTrace.level(new double[] {0}, new double[] {0}));
    }

    /** What the battery takes in limits the terminals, not the wheels. */
    @Property(tries = 100)
    void recoveryMeetsTheLimitAtTheTerminals(@ForAll @DoubleRange(min = 1, max = 60) double limitKw) {
        TraceSteps steps = new TraceSteps(microTrip(20, 10, 0));
        TractiveWork free = TractiveWork.of(steps, BUS, SampleBus.DRIVELINE, SampleBus.RECOVERY, Double.MAX_VALUE);
        TractiveWork limited = TractiveWork.of(steps, BUS, SampleBus.DRIVELINE, SampleBus.RECOVERY, limitKw);
        assertEquals(Math.min(limitKw, free.peakRecoveredKw()), limited.peakRecoveredKw(), 1e-9);
        assertTrue(limited.drawnKwh() - limited.recoveredKwh() >= free.drawnKwh() - free.recoveredKwh() - 1e-12);
    }

    @Test
    void lossesFollowTheLoad() {
        DrivelineLoss loss = DrivelineLoss.electric(0.9, 120, 54);
        double ratedN = 120_000 / 15.0;
        assertEquals(120_000 * (1 / 0.9 - 1), loss.lossW(15, ratedN), 1e-9);
        double tenthShare = loss.lossW(15, ratedN / 10) / (15 * ratedN / 10);
        assertTrue(tenthShare > 0.25 && tenthShare < 0.4, "at a tenth of the load the losses weigh more: " + tenthShare);
    }

    @Test
    void whatRoundingLeavesOfARepeatIsNotDriven() {
        SpeedTrace trace = microTrip(20, 10, 0);
        double km = trace.distanceM() / 1000 * (1 + 3e-16);
        assertEquals(trace.cutAtRest().size(), DrivePattern.ofTrace(trace, km).pieces().size());
    }
}
