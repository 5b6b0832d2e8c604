package org.amberyard.core.charging;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.TaperCurve;
import org.amberyard.core.depot.Port;

/**
 * What a bus takes from ports.
 *
 * @param acKw largest power that its own charger draws from an alternating-current port, kW; 0 without one
 * @param dcKw largest power that it takes from a direct-current port, kW; 0 without an inlet
 * @param heatKw power that heat for cabin and pack takes of its port meanwhile, behind the port, kW
 * @param curve what its pack takes at the temperature that it has while it stands
 */
public record BusAcceptance(double acKw, double dcKw, double heatKw, TaperCurve curve) {

    /** A bus that is not heated meanwhile. */
    public BusAcceptance(double acKw, double dcKw, TaperCurve curve) {
        this(acKw, dcKw, 0, curve);
    }

    /** Acceptance of a bus with a pack of a health at a temperature, °C. */
    public static BusAcceptance of(double acKw, double dcKw, BatterySpec battery, double health, double packC) {
        return new BusAcceptance(acKw, dcKw, TaperCurve.of(battery, health, packC));
    }

    /** The same while heat takes a power of the port, kW. */
    public BusAcceptance besideHeat(double kw) {
        return new BusAcceptance(acKw, dcKw, kw, curve);
    }

    /** Largest power into its battery through a port, kW; 0 when the port does not fit it. */
    public double batteryKw(Port port) {
        return Math.max(0, port.batteryKw(port.direct() ? dcKw : acKw) - heatKw);
    }

    /** Largest power that the bus draws at the meter through a port, kW; 0 when the port does not fit it. */
    public double meterKw(Port port) {
        return batteryKw(port) / port.efficiency();
    }
}
