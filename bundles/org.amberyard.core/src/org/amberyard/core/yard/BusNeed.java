package org.amberyard.core.yard;

import java.util.List;

/**
 * What one bus needs from the ports on one stretch of days.
 *
 * @param stays times at the yard in which it is charged, in order
 * @param heat heat from the yard while plugged in
 */
public record BusNeed(List<Stay> stays, List<Heat> heat) {

    /** Nothing needed. */
    public static final BusNeed NONE = new BusNeed(List.of(), List.of());

    /**
     * A time at the yard.
     *
     * @param fromMin start, minutes after the stretch's start
     * @param toMin departure; beyond the stretch's end where the bus leaves on the morning after it
     * @param chargeByMin moment by which it is charged
     * @param batteryKwh energy into the battery, kWh
     * @param leastKwh energy of it without which the bus could not go on, kWh; the rest may wait for the night
     * @param endShare state of charge aimed at by the end, 0 to 1
     * @param packC pack temperature while it is charged, °C
     * @param heatKw power that heat takes of the port through the whole stay, kW
     */
    public record Stay(double fromMin, double toMin, double chargeByMin, double batteryKwh, double leastKwh,
            double endShare, double packC, double heatKw) {

        /** The same that takes more, kWh. */
        Stay taking(double moreKwh) {
            return new Stay(fromMin, toMin, chargeByMin, batteryKwh + moreKwh, leastKwh + moreKwh, endShare, packC,
                    heatKw);
        }
    }

    /**
     * Heat for cabin or pack, behind the port.
     *
     * @param fromMin start, minutes after the stretch's start
     * @param toMin end
     * @param kw power, kW
     */
    public record Heat(double fromMin, double toMin, double kw) {

        double kwh() {
            return kw * (toMin - fromMin) / 60;
        }
    }

    public BusNeed {
        stays = List.copyOf(stays);
        heat = List.copyOf(heat);
    }

    /** Energy into the battery, kWh. */
    public double batteryKwh() {
        return stays.stream().mapToDouble(Stay::batteryKwh).sum();
    }

    /** Energy for heat behind the port, kWh. */
    public double heatKwh() {
        return heat.stream().mapToDouble(Heat::kwh).sum();
    }
}
