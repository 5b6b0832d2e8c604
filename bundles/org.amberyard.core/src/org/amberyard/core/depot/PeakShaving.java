package org.amberyard.core.depot;

import java.util.Optional;

/**
 * The smallest battery beside the building that keeps a load below a limit: it discharges whenever the load is above the limit
 * and charges as soon as there is room below it.
 *
 * @param kwh energy that it must hold, kWh
 * @param kw power that it must give, kW
 */
public record PeakShaving(double kwh, double kw) {
    /** Energy out over energy in of a stationary lithium-ion battery with its converter; from memory. */
    public static final double ROUND_TRIP = 0.86;
    private static final double ROUNDING_KWH = 1e-9;

    /**
     * The battery for a load that comes again and again.
     *
     * @param loadKw load by step, kW
     * @param stepHours length of a step, h
     * @param limitKw the limit, kW
     * @return the battery; empty when there is too little room below the limit to charge it again
     */
    public static Optional<PeakShaving> of(double[] loadKw, double stepHours, double limitKw) {
        double powerKw = 0;
        for (double load : loadKw) {
            powerKw = Math.max(powerKw, load - limitKw);
        }
        double oneWay = Math.sqrt(ROUND_TRIP);
        double emptyKwh = 0;
        double mostKwh = 0;
        double before = 0;
        for (int turn = 0; turn < 2; turn++) {
            before = emptyKwh;
            for (double load : loadKw) {
                double takenKwh = load > limitKw ? (load - limitKw) / oneWay * stepHours
                        : -Math.min(powerKw, limitKw - load) * oneWay * stepHours;
                emptyKwh = Math.max(0, emptyKwh + takenKwh);
                mostKwh = Math.max(mostKwh, emptyKwh);
            }
        }
        return emptyKwh > before + ROUNDING_KWH ? Optional.empty() : Optional.of(new PeakShaving(mostKwh, powerKw));
    }
}
