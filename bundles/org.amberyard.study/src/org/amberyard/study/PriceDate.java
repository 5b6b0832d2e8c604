package org.amberyard.study;

import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.PricePath;
import org.amberyard.model.study.Settings;

/**
 * When the prices of a study were stated.
 *
 * @param years years from then to the base date
 * @param inflation money of the base date over money of then
 */
record PriceDate(int years, double inflation) {

    static PriceDate of(Settings settings, MoneyRates rates) {
        int years = settings.getPriceYear() == 0 ? 0 : Math.max(0, settings.getBaseYear() - settings.getPriceYear());
        return new PriceDate(years, rates.inflationFactor(years));
    }

    /** A path of the prices, as it counts from the base date. */
    PricePath from(PricePath path) {
        return years == 0 ? path : path.stated(years, inflation);
    }
}
