package org.amberyard.core.battery;

/**
 * A traction battery pack.
 *
 * @param nominalKwh nominal energy when new, kWh
 * @param usableShare share of it between the limits of the battery management
 * @param coldUsableLossPerK share of the usable energy that cannot be drawn per degree of a cold pack
 * @param cycleLimit full cycles after which the pack is replaced
 * @param endOfLifeShare share of the nominal energy at which the pack is replaced
 * @param fade loss of capacity over time and cycles
 */
public record BatterySpec(double nominalKwh, double usableShare, double coldUsableLossPerK, double cycleLimit,
        double endOfLifeShare, CapacityFade fade) {

    /** Pack temperature from which cold takes usable energy, °C; common practice, no source. */
    public static final double MILD_C = 15;
    /** How far a heated, massive pack follows the outside air below that temperature; common practice, no source. */
    private static final double FOLLOWS_AIR = 0.5;

    /**
     * Energy that can be drawn from a full pack, kWh.
     *
     * @param health present over nominal capacity
     * @param outsideC outside air temperature, °C
     */
    public double usableKwh(double health, double outsideC) {
        double packColdK = FOLLOWS_AIR * Math.max(0, MILD_C - outsideC);
        return nominalKwh * usableShare * health * Math.max(0, 1 - coldUsableLossPerK * packColdK);
    }
}
