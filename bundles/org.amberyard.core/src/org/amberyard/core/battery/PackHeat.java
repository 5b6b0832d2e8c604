package org.amberyard.core.battery;

/**
 * Heat of the pack: one thermal mass that follows the outside air slowly and is held between two temperatures by its own
 * heater and cooler.
 *
 * @param timeConstantH hours in which an idle pack covers 63 % of the way to the outside air, h
 * @param heatedToC temperature to which the heater holds it, °C
 * @param heaterKw power of its heater, kW
 * @param cooledToC temperature to which it is cooled, °C
 * @param coolerKw power drawn by its cooler, kW
 */
public record PackHeat(double timeConstantH, double heatedToC, double heaterKw, double cooledToC, double coolerKw) {

    /** Heat removed over power drawn by the cooler; common practice, no source. */
    public static final double COOLER_COP = 2.5;
    /** Heat capacity over nominal energy, 1/K: about 1 kJ/(kg K) at 140 Wh/kg; common practice, no source. */
    private static final double CAPACITY_PER_K = 0.002;

    /**
     * Mean temperature of a standing pack, °C: it goes towards the air, and is held in its limits while plugged in.
     *
     * @param startC temperature at the start, °C
     * @param airC mean outside air, °C
     * @param hours time, h, above 0
     * @param plugged true when its heater and cooler have power
     */
    public double meanStandingC(double startC, double airC, double hours, boolean plugged) {
        double free = airC + (startC - airC) * timeConstantH / hours * -Math.expm1(-hours / timeConstantH);
        return plugged ? Math.max(heatedToC, Math.min(Math.max(heatedToC, cooledToC), free)) : free;
    }

    /** Heat that warms a pack by one degree, kWh/K. */
    public double capacityKwhPerK(double nominalKwh) {
        return CAPACITY_PER_K * nominalKwh;
    }

    /** Heat lost per degree above the outside air, kW/K. */
    public double conductanceKwPerK(double nominalKwh) {
        return capacityKwhPerK(nominalKwh) / timeConstantH;
    }
}
