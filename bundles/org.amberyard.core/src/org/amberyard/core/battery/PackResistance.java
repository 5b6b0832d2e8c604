package org.amberyard.core.battery;

/**
 * Heat in the pack's own resistance, which grows with the square of the power and in the cold.
 *
 * <p>Resistance follows the Arrhenius law with an activation temperature of 2,500 K (about 21 kJ/mol), which doubles it from
 * 25 °C to about 0 °C; common practice for lithium-ion cells, no source. Voltage is taken as constant.
 *
 * @param lossShareAtOneHour share of the power lost at 25 °C when the nominal energy is drawn in one hour
 */
public record PackResistance(double lossShareAtOneHour) {
    private static final double RATED_K = 298.15;
    private static final double ZERO_C_IN_K = 273.15;
    private static final double ACTIVATION_K = 2500;

    /** Resistance at a pack temperature over that at 25 °C. */
    public static double coldFactor(double packC) {
        return Math.exp(ACTIVATION_K * (1 / (packC + ZERO_C_IN_K) - 1 / RATED_K));
    }

    /**
     * Energy lost, kWh.
     *
     * @param squareKw2h integral of the square of the terminal power, kW²h
     * @param packC pack temperature, °C
     * @param nominalKwh nominal energy, kWh
     */
    public double lossKwh(double squareKw2h, double packC, double nominalKwh) {
        return lossShareAtOneHour * coldFactor(packC) * squareKw2h / nominalKwh;
    }
}
