package org.amberyard.core.battery;

/** Charging of a pack of a health at a constant power, then along its taper, at any temperature; see {@link TaperCurve}. */
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
        return TaperCurve.of(battery, health, packC).endShare(startShare, portKw, hours);
    }
}
