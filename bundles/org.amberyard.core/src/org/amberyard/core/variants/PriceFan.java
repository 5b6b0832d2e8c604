package org.amberyard.core.variants;

import java.util.List;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
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

    /** The same in the units of a system, such as the price of a gallon. */
    public PriceFan in(UnitSystem system, String currency) {
        return Unit.ofToken(unit.replace(currency, Unit.MONEY.token()))
                .map(of -> new PriceFan(name, of.symbol(system, currency), years.stream().map(y -> y.times(of.show(1, system))).toList()))
                .orElse(this);
    }
}
