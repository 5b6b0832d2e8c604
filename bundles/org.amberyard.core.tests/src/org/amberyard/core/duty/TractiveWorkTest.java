package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TractiveWorkTest {
    private static final RoadLoad BUS = new RoadLoad(10_000, 0.008, 4.5, 1.05, 1.2);

    private static DrivePattern drive(double km, int stops, double climbM) {
        RunInput run = new RunInput("AM", 390, 200, km, stops, 20, 20, 65, climbM, true, false, Collections.nCopies(12, 15));
        return new TraceSynthesis(new DriverStyle(0.8, 1.0)).of(run);
    }

    /** Work goes in as driving and out as rolling, drag and braking; what is climbed is descended. */
    @Property(tries = 200)
    void energyIsConserved(@ForAll @DoubleRange(min = 3, max = 60) double km, @ForAll @IntRange(min = 1, max = 50) int stops,
            @ForAll @DoubleRange(min = 0, max = 300) double climbM) {
        TractiveWork work = TractiveWork.of(drive(km, stops, climbM), BUS, new BrakeRecovery(80, 8, 0.8));
        assertEquals(work.rollingKwh() + work.dragKwh() + work.brakingKwh(), work.drivingKwh(), 1e-9);
    }

    @Property(tries = 100)
    void strongerRecoveryLeavesLessFriction(@ForAll @DoubleRange(min = 0, max = 150) double kw) {
        DrivePattern drive = drive(20, 20, 80);
        double weak = TractiveWork.of(drive, BUS, new BrakeRecovery(kw, 8, 0.8)).frictionKwh();
        double strong = TractiveWork.of(drive, BUS, new BrakeRecovery(kw + 10, 8, 0.8)).frictionKwh();
        assertTrue(strong <= weak);
    }

    @Test
    void nothingIsRecoveredBelowTheCutoff() {
        TractiveWork work = TractiveWork.of(drive(20, 20, 0), BUS, new BrakeRecovery(1000, 500, 0.8));
        assertEquals(0, work.recoverableKwh(), 0);
        assertTrue(work.frictionKwh() > 0);
    }

    @Test
    void moreStopsTakeMore() {
        assertTrue(TractiveWork.of(drive(20, 40, 0), BUS, BrakeRecovery.NONE).drivingKwh()
                > TractiveWork.of(drive(20, 10, 0), BUS, BrakeRecovery.NONE).drivingKwh());
    }

    @Test
    void refusesATraceThatDoesNotGoOn() {
        double[] times = {0, 1, 1};
        assertThrows(IllegalArgumentException.class, () -> SpeedTrace.level(times, new double[3]));
        assertThrows(IllegalArgumentException.class, () -> SpeedTrace.level(new double[] {0, 1}, new double[] {0, -1}));
        assertThrows(IllegalArgumentException.class, () -> SpeedTrace.level(new double[] {0}, new double[] {0}));
    }
}
