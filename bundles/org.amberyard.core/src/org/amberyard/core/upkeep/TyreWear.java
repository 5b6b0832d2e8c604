package org.amberyard.core.upkeep;

import org.amberyard.core.math.Checks;

/**
 * Tyre wear by the mass of the bus and the work that its tyres pass on, driving and braking. Half of the wear goes with the
 * load alone (cornering, scrub), half with the work per distance; the halves are assumed, no source.
 *
 * @param referenceKg mass of the bus with its average riders for which a distance interval holds, kg
 */
public record TyreWear(double referenceKg) {
    private static final double WORK_SHARE = 0.5;
    /** Work per distance and mass of a bus between stops on mild roads; common practice, no source. */
    private static final double REFERENCE_KWH_PER_KM_T = 0.08;

    /** @throws IllegalArgumentException when the mass is not above zero */
    public TyreWear {
        Checks.positive("Reference mass of tyre wear", referenceKg);
    }

    /**
     * Distance of the reference bus that wears tyres as much, km.
     *
     * @param km distance of the bus, km
     * @param massKg mass of the bus with its average riders, kg
     * @param tyreKwh work passed on by its tyres over that distance, kWh; zero where it is not known, which counts as usual work
     */
    public double equivalentKm(double km, double massKg, double tyreKwh) {
        double load = massKg / referenceKg;
        if (tyreKwh <= 0 || km <= 0) {
            return km * load;
        }
        double work = tyreKwh / km / (massKg / 1000) / REFERENCE_KWH_PER_KM_T;
        return km * load * (1 - WORK_SHARE + WORK_SHARE * work);
    }
}
