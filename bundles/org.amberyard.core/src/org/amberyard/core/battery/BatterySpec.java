package org.amberyard.core.battery;

/**
 * A traction battery pack.
 *
 * @param nominalKwh nominal energy when new, kWh
 * @param usableShare share of it between the limits of the battery management
 * @param coldUsableLossPerK share of the usable energy that cannot be drawn per degree of a cold pack
 * @param resistance resistance heat
 * @param acceptance what it takes in while charging and braking
 * @param heat its temperature
 * @param life how it ages and when it is at its end
 */
public record BatterySpec(double nominalKwh, double usableShare, double coldUsableLossPerK, PackResistance resistance,
        ChargeAcceptance acceptance, PackHeat heat, PackLife life) {

    /** Pack temperature below which cold locks up usable energy, °C; common practice, no source. */
    public static final double MILD_C = 15;

    /** Energy between full and empty of a warm pack of a health, kWh. */
    public double usableKwh(double health) {
        return nominalKwh * usableShare * health;
    }

    /**
     * State of charge of the cells at a state of charge between full and empty; the battery management keeps as much above as
     * below (common practice, no source).
     */
    public double cellShare(double chargeShare) {
        return (1 - usableShare) / 2 + usableShare * chargeShare;
    }

    /** Share of the usable energy that a cold pack does not give until it is warm again. */
    public double lockedShare(double packC) {
        return Math.min(1, coldUsableLossPerK * Math.max(0, MILD_C - packC));
    }

    /** Power that the pack takes in at a temperature and a state of charge, kW. */
    public double acceptanceKw(double packC, double chargeShare) {
        return nominalKwh * acceptance.perHour(packC, chargeShare);
    }

    /** Energy lost in the pack's resistance, kWh. */
    public double resistanceKwh(double squareKw2h, double packC) {
        return resistance.lossKwh(squareKw2h, packC, nominalKwh);
    }
}
