package org.amberyard.report;

import static org.amberyard.report.WhatIfColumns.number;
import static org.amberyard.report.WhatIfColumns.text;
import static org.amberyard.report.WhatIfColumns.year;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.PriceFan;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.SortedDraws;

/** Table of the prices that vary, over the years and the draws. */
final class PriceFanTable {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    private PriceFanTable() {
    }

    /** The table; empty where no price varies or nothing is drawn yet. */
    static Optional<ResultTable> of(WhatIfResults results, UnitSystem system) {
        List<List<Object>> rows = new ArrayList<>();
        for (PriceFan stored : results.prices()) {
            PriceFan fan = stored.in(system, results.base().input().currency());
            for (int year = 0; year < fan.years().size(); year++) {
                SortedDraws draws = fan.years().get(year);
                rows.add(List.of(fan.name(), fan.unit(), results.base().input().baseYear() + year, draws.quantile(LOW),
                        draws.quantile(0.5), draws.quantile(HIGH)));
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new ResultTable("what_if_prices", "Prices as drawn", List.of(
                text("price", "Price", "What has the price, or what an index scales."),
                text("unit", "Unit", "Unit of the price; an index is 1 at the base date."), year(),
                number("p10", "P10", "Price that one draw in ten stays below, constant money of the base date."),
                number("p50", "P50", "That half the draws stay below."), number("p90", "P90", "That one draw in ten exceeds.")), rows));
    }
}
