package org.amberyard.core.battery;

/**
 * Charging at a constant power until the pack's acceptance falls below it, then along the taper; solved exactly, because the
 * taper falls evenly with the state of charge.
 */
public final class ConstantPowerTaper {
    private final BatterySpec battery;
    private final double health;

    /** Charging of a pack of a health. */
    public ConstantPowerTaper(BatterySpec battery, double health) {
        this.battery = battery;
        this.health = health;
    }

    /**
     * State of charge after a time of charging, 0 to 1.
     *
     * @param startShare state of charge at the start
     * @param portKw power that the port can bring into the battery, kW
     * @param packC pack temperature, °C
     * @param hours time, h
     */
    public double endShare(double startShare, double portKw, double packC, double hours) {
        double constantKw = Math.min(portKw, battery.acceptanceKw(packC, 0));
        if (!(constantKw > 0) || startShare >= 1) {
            return startShare;
        }
        double taperShare = taperBeginsAt(constantKw, packC);
        double usableKwh = battery.usableKwh(health);
        double constantHours = Math.max(0, taperShare - startShare) * usableKwh / constantKw;
        if (constantHours >= hours) {
            return startShare + constantKw * hours / usableKwh;
        }
        return tapered(Math.max(startShare, taperShare), packC, hours - constantHours);
    }

    /** State of charge at which the acceptance falls to the constant power; full where it never does. */
    private double taperBeginsAt(double constantKw, double packC) {
        double fullKw = battery.acceptanceKw(packC, 0);
        double leastKw = battery.acceptanceKw(packC, 1);
        double from = battery.acceptance().taperFromShare();
        return constantKw <= leastKw ? 1 : 1 - (1 - from) * (constantKw - leastKw) / (fullKw - leastKw);
    }

    private double tapered(double startShare, double packC, double hours) {
        double startKw = battery.acceptanceKw(packC, startShare);
        double leastKw = battery.acceptanceKw(packC, 1);
        double kwPerShare = (startKw - leastKw) / (1 - startShare);
        if (!(startShare < 1) || !(kwPerShare > 0)) {
            return Math.min(1, startShare + startKw * hours / battery.usableKwh(health));
        }
        double endKw = startKw * Math.exp(-kwPerShare * hours / battery.usableKwh(health));
        return Math.min(1, startShare + (startKw - endKw) / kwPerShare);
    }
}
