package org.amberyard.core.duty;

/**
 * Heat of the cabin: one thermal mass that loses heat through the shell, by fresh air and at each opening of the door, and
 * gains it from riders and sun.
 *
 * @param setpointC temperature to which it is heated, °C
 * @param shellKwPerK loss through the shell, kW/K
 * @param freshAirM3PerH outside air let in while driving, m³/h
 * @param doorLossKwhPerK heat lost at each stop, kWh/K
 * @param capacityKwhPerK heat that warms the cabin by one degree, kWh/K
 * @param sunApertureM2 glazed area times its transmittance, m²
 * @param coolingFromC temperature to which it is cooled, °C
 * @param coolingCop heat removed over power drawn by cooling
 * @param coolingCapKw largest power drawn by cooling, kW; 0 where there is none
 */
public record Cabin(double setpointC, double shellKwPerK, double freshAirM3PerH, double doorLossKwhPerK,
        double capacityKwhPerK, double sunApertureM2, double coolingFromC, double coolingCop, double coolingCapKw) {

    /** Sensible heat of one seated rider, kW; about 70 W in the handbooks of heating practice, from memory. */
    public static final double RIDER_KW = 0.07;
    /** Heat capacity of air by volume near 15 °C, kWh/(m³ K): 1.2 kg/m³ times 1.006 kJ/(kg K). */
    private static final double AIR_KWH_PER_M3_K = 1.2 * 1.006 / 3600;

    /** The cabin while standing closed. */
    HeatBalance closed() {
        return new HeatBalance(capacityKwhPerK, shellKwPerK);
    }

    /** The cabin while driving with so many stops per hour. */
    HeatBalance driving(double stopsPerHour) {
        return closed().with(freshAirM3PerH * AIR_KWH_PER_M3_K + doorLossKwhPerK * stopsPerHour);
    }

    /** Heat from riders and sun, kW. */
    double gainsKw(double riders, double sunWPerM2) {
        return RIDER_KW * riders + sunApertureM2 * sunWPerM2 / 1000;
    }

    /** Heat that holds the setpoint in a balance of this cabin, kW; negative where it holds itself. */
    double holdingKw(HeatBalance balance, double airC, double gainsKw) {
        return balance.conductanceKwPerK() * (setpointC - airC) - gainsKw;
    }

    /** The thermostat with a heater of a power. */
    HeatBalance.Thermostat thermostat(double heaterKw) {
        return new HeatBalance.Thermostat(setpointC, Math.max(setpointC, coolingFromC), heaterKw, coolingCapKw * coolingCop);
    }
}
