package org.amberyard.core.funding;

import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/**
 * Weight classes 1 to 8 of vehicles by their gross vehicle weight rating, of which notices of programmes speak.
 *
 * <p>Bounds in pounds: NTEA, “Gross Vehicle Weight Rating” (ntea.com), table “Truck Classification by GVWR”; the federal regulation behind them was not read.
 */
public final class WeightClass {
    private static final int[] MOST_LB = {6_000, 10_000, 14_000, 16_000, 19_500, 26_000, 33_000};
    /** Ratings are whole pounds; what is stored in kilograms comes back with a last digit of its own. */
    private static final double HALF = 0.5;

    private WeightClass() {
    }

    /**
     * Class of a vehicle.
     *
     * @param gvwrKg gross vehicle weight rating, kg
     */
    public static int of(double gvwrKg) {
        double lb = Unit.KILOGRAM.show(gvwrKg, UnitSystem.US);
        int place = 0;
        while (place < MOST_LB.length && lb >= MOST_LB[place] + HALF) {
            place++;
        }
        return place + 1;
    }
}
