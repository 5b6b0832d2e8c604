package org.amberyard.core.consumption;

/**
 * What a fitted curve makes of one log entry.
 *
 * @param entry what was measured
 * @param fittedKwh what the curve says, kWh
 */
public record Residual(LogEntry entry, double fittedKwh) {

    /** Measured less fitted, kWh. */
    public double kwh() {
        return entry.energyKwh() - fittedKwh;
    }

    /** Measured less fitted as a share of the measured energy. */
    public double share() {
        return kwh() / entry.energyKwh();
    }
}
