package org.amberyard.core.plan;

import org.amberyard.core.money.StraightLine;

/**
 * A bus that is bought used, as it is when it is bought.
 *
 * @param ageYears age, whole years since it was delivered new: its model year is that of its purchase less these
 * @param odometerKm odometer, km
 * @param price price at the base date; it moves as prices of new buses of its kind do
 * @param packHealth present over nominal capacity of its pack; without effect for an engine bus
 */
public record SecondHand(int ageYears, double odometerKm, double price, double packHealth) {

    /**
     * Share of the life that it had left when it was bought which is left later: by age or by odometer, whichever is less; none of
     * a bus that was bought beyond the age or odometer at which its type is replaced.
     */
    double lifeLeft(double laterAgeYears, double laterOdometerKm, VehiclePrices life) {
        return Math.min(left(ageYears, laterAgeYears, life.lifeYears()), left(odometerKm, laterOdometerKm, life.lifeKm()));
    }

    private static double left(double from, double now, double end) {
        return from < end ? StraightLine.lifeLeft(now - from, end - from) : 0;
    }
}
