package org.amberyard.core.air;

import java.util.Arrays;

/** Units of factors: mass by what causes it. */
public enum FactorUnit {
    /** By distance. */
    G_PER_KM("g/km", "km", 1e-3),
    /** By time. */
    G_PER_H("g/h", "h", 1e-3),
    /** By fuel. */
    G_PER_L("g/L", "L", 1e-3),
    /** By energy. */
    G_PER_KWH("g/kWh", "kWh", 1e-3),
    /** By fuel. */
    KG_PER_L("kg/L", "L", 1),
    /** By energy. */
    KG_PER_KWH("kg/kWh", "kWh", 1);

    private final String symbol;
    private final String activity;
    private final double kg;

    FactorUnit(String symbol, String activity, double kg) {
        this.symbol = symbol;
        this.activity = activity;
        this.kg = kg;
    }

    /**
     * The unit of a symbol.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static FactorUnit of(String symbol) {
        return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(symbol + " is no unit of emission factors"));
    }

    /** Its symbol, which is the token of the unit in models too. */
    public String symbol() {
        return symbol;
    }

    /** Unit of what causes the mass. */
    public String activity() {
        return activity;
    }

    /** Kilograms in its unit of mass. */
    public double kg() {
        return kg;
    }
}
