package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.RoadLoad;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.core.duty.TractiveWork;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A bus that coasts in neutral on level road: {@code dv/dt = −(a + b·v²)} has the closed solution
 * {@code v(t) = √(a/b)·tan(atan(v₀·√(b/a)) − √(ab)·t)}, the analytic coast-down of the vehicle dynamics handbooks (Gillespie,
 * "Fundamentals of Vehicle Dynamics", SAE, 1992, chapter 4, from memory; solution worked by hand). Along it no force is needed
 * but what rolling and drag take from the kinetic energy.
 */
class CoastDownReferenceTest {
    private static final RoadLoad BUS = new RoadLoad(11_000, 0.008, 0.65 * 7.0, 1.05, 1.225);
    private static final double A = 0.008 * RoadLoad.GRAVITY / 1.05;
    private static final double B = 0.5 * 1.225 * 0.65 * 7.0 / (1.05 * 11_000);

    private static double speedMps(double startMps, double seconds) {
        return Math.sqrt(A / B) * Math.tan(Math.atan(startMps * Math.sqrt(B / A)) - Math.sqrt(A * B) * seconds);
    }

    private static SpeedTrace coastDown(double startMps) {
        double stopS = Math.atan(startMps * Math.sqrt(B / A)) / Math.sqrt(A * B);
        int steps = (int) Math.floor(stopS);
        double[] times = new double[steps + 2];
        double[] speeds = new double[steps + 2];
        for (int step = 0; step <= steps; step++) {
            times[step] = step;
            speeds[step] = speedMps(startMps, step);
        }
        times[steps + 1] = stopS;
        return SpeedTrace.level(times, speeds);
    }

    @ParameterizedTest
    @ValueSource(doubles = {8, 15, 25})
    void coastingNeedsNoForce(double startMps) {
        TractiveWork work = TractiveWork.of(coastDown(startMps), BUS, DrivelineLoss.mechanical(1), BrakeRecovery.NONE);
        double kineticKwh = 0.5 * 1.05 * 11_000 * startMps * startMps / 3.6e6;
        assertEquals(kineticKwh, work.rollingKwh() + work.dragKwh(), 2e-4 * kineticKwh);
        assertEquals(0, work.drawnKwh(), 2e-4 * kineticKwh);
        assertEquals(0, work.frictionBrakeKwh(), 2e-4 * kineticKwh);
    }

    /** The distance of the coast-down, {@code ln(1 + b·v₀²/a) / (2b)}, also in closed form, and what drag takes over it. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 15, 25})
    void rollsAsFarAsTheClosedForm(double startMps) {
        SpeedTrace trace = coastDown(startMps);
        double metres = Math.log(1 + B * startMps * startMps / A) / (2 * B);
        assertEquals(metres, trace.distanceM(), 1e-4 * metres);
        TractiveWork work = TractiveWork.of(trace, BUS, DrivelineLoss.mechanical(1), BrakeRecovery.NONE);
        assertEquals(0.008 * 11_000 * RoadLoad.GRAVITY * metres / 3.6e6, work.rollingKwh(), 1e-4 * work.rollingKwh());
    }
}
