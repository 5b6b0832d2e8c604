package org.amberyard.core.tariff;

import java.util.Locale;
import org.amberyard.core.tariff.BlockPrices.Slice;

/** Words for a block on a bill. */
final class BlockLabel {
    private BlockLabel() {
    }

    /** Words such as "first 500 kWh", "next 250 kWh" or "over 300 kWh per kW"; none where there are no blocks. */
    static String of(Slice slice, BillUnit unit) {
        PriceBlock block = slice.block();
        if (slice.next().isEmpty()) {
            return block.start(1) == 0 ? "" : ", over " + width(block.from(), block.fromPerKw(), unit);
        }
        PriceBlock next = slice.next().get();
        return (block.start(1) == 0 ? ", first " : ", next ")
                + width(next.from() - block.from(), next.fromPerKw() - block.fromPerKw(), unit);
    }

    private static String width(double quantity, double perKw, BillUnit unit) {
        if (perKw == 0) {
            return String.format(Locale.ROOT, "%,.0f %s", quantity, unit.label());
        }
        return String.format(Locale.ROOT, quantity == 0 ? "%2$,.0f %3$s per kW" : "%1$,.0f and %2$,.0f %3$s per kW", quantity,
                perKw, unit.label());
    }
}
