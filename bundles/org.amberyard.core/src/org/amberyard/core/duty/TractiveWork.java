package org.amberyard.core.duty;

/**
 * Work of one drive that starts and ends at rest, at the wheels and at the terminals of the battery (or, with an engine, at
 * the crankshaft), found by summing the road load over the steps of its trace.
 *
 * <p>In each step the force acts at the mean speed of the step, so that the kinetic terms cancel exactly:
 * {@code drawn − recovered = rolling + drag + climbing + friction brakes + driveline loss}.
 *
 * @param drawnKwh energy drawn at the terminals for driving, kWh
 * @param recoveredKwh braking energy that reaches the terminals, kWh
 * @param squareKw2h integral of the square of the terminal power, kW²h, for the resistance loss of the pack
 * @param rollingKwh work against rolling resistance, kWh
 * @param dragKwh work against air drag, kWh
 * @param climbingKwh work against gravity, kWh; zero where the drive ends as high as it began
 * @param frictionBrakeKwh braking work left to the friction brakes, kWh
 * @param drivelineKwh losses of motor and gears, kWh
 * @param peakRecoveredKw largest power that came back at the terminals, kW
 */
public record TractiveWork(double drawnKwh, double recoveredKwh, double squareKw2h, double rollingKwh, double dragKwh,
        double climbingKwh, double frictionBrakeKwh, double drivelineKwh, double peakRecoveredKw) {

    /** Sums the road load over a trace at rest at both ends. */
    public static TractiveWork of(SpeedTrace trace, RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery) {
        return of(new TraceSteps(trace), load, driveline, recovery, Double.MAX_VALUE);
    }

    /** The same with a limit on the power that may come back at the terminals, kW. */
    static TractiveWork of(TraceSteps steps, RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery,
            double terminalLimitKw) {
        return of(steps, VehicleRun.mostN(steps, load, driveline, recovery), load, driveline, recovery, terminalLimitKw);
    }

    /** The same with what the motor takes of braking at most in each step, N. */
    static TractiveWork of(TraceSteps steps, double[] mostBrakingN, RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery,
            double terminalLimitKw) {
        return new RoadLoadSum(load, driveline, recovery, terminalLimitKw).over(steps, mostBrakingN);
    }
}
