package org.amberyard.core.variants;

import java.util.List;
import org.amberyard.core.whatif.SortedDraws;

/**
 * A price that varies, over the years and over the draws.
 *
 * @param name what has the price
 * @param unit its unit
 * @param years by year of the study: the price over the draws, constant money of the base date
 */
public record PriceFan(String name, String unit, List<SortedDraws> years) {

    public PriceFan {
        years = List.copyOf(years);
    }
}
