package org.amberyard.core.air;

import java.util.Arrays;

/**
 * Masses by pollutant. A mass that is not known is not a number, and so is every sum that holds it. A mass remembers whether a
 * factor took part that only stands in.
 */
public final class Masses {
    private static final Pollutant[] POLLUTANTS = Pollutant.values();

    /** Nothing emitted. */
    public static final Masses NONE = new Masses(new double[POLLUTANTS.length], 0);

    private final double[] kg;
    private final int placeholders;

    private Masses(double[] kg, int placeholders) {
        this.kg = kg;
        this.placeholders = placeholders;
    }

    /** Mass of a pollutant, kg; not a number where it is not known. */
    public double kg(Pollutant pollutant) {
        return kg[pollutant.ordinal()];
    }

    /** True when a mass is known. */
    public boolean known(Pollutant pollutant) {
        return !Double.isNaN(kg(pollutant));
    }

    /** True when a factor that only stands in took part in a mass. */
    public boolean placeholder(Pollutant pollutant) {
        return (placeholders & bit(pollutant)) != 0;
    }

    /** True when one took part in any of them. */
    public boolean anyPlaceholder() {
        return placeholders != 0;
    }

    /** These and others. */
    public Masses plus(Masses other) {
        return with(other, 1);
    }

    /** These less others. */
    public Masses minus(Masses other) {
        return with(other, -1);
    }

    private Masses with(Masses other, int sign) {
        double[] sum = new double[kg.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = kg[i] + sign * other.kg[i];
        }
        return new Masses(sum, placeholders | other.placeholders);
    }

    /** These a number of times. */
    public Masses times(double n) {
        return n == 0 ? NONE : new Masses(Arrays.stream(kg).map(m -> n * m).toArray(), placeholders);
    }

    /** With the sum of the three gases by their warming. */
    public Masses withCo2e(WarmingPotentials warming) {
        double[] all = kg.clone();
        all[Pollutant.CO2E.ordinal()] = kg(Pollutant.CO2) + warming.ch4() * kg(Pollutant.CH4)
                + warming.n2o() * kg(Pollutant.N2O);
        boolean standsIn = placeholder(Pollutant.CO2) || placeholder(Pollutant.CH4) || placeholder(Pollutant.N2O);
        return new Masses(all, standsIn ? placeholders | bit(Pollutant.CO2E) : placeholders);
    }

    private static int bit(Pollutant pollutant) {
        return 1 << pollutant.ordinal();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Masses m && Arrays.equals(kg, m.kg) && placeholders == m.placeholders;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(kg) + placeholders;
    }

    @Override
    public String toString() {
        return "Masses" + Arrays.toString(kg);
    }

    /** Collects masses. */
    static final class Builder {
        private final double[] kg = new double[POLLUTANTS.length];
        private int placeholders;

        void set(Pollutant pollutant, double mass, boolean standsIn) {
            kg[pollutant.ordinal()] = mass;
            placeholders |= standsIn ? bit(pollutant) : 0;
        }

        Masses build() {
            return new Masses(kg, placeholders);
        }
    }
}
