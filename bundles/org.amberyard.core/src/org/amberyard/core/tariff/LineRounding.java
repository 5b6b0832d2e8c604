package org.amberyard.core.tariff;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How the lines of a bill are rounded. */
public enum LineRounding {
    /** Not at all: for calculations. */
    NONE {
        @Override
        BillParts apply(BillParts parts) {
            return parts;
        }
    },
    /**
     * Each line to the cent, half a cent up, as utilities print it: percentages and taxes fall on the printed lines, and the
     * printed total is their sum.
     */
    CENT {
        @Override
        BillParts apply(BillParts parts) {
            return parts.withTotal(cents(parts.total()));
        }
    };

    private static final int NOISE_DIGITS = 8;

    abstract BillParts apply(BillParts parts);

    /** Money rounded to the cent; what binary numbers add beyond the eighth digit does not count. */
    static double cents(double amount) {
        return BigDecimal.valueOf(amount).setScale(NOISE_DIGITS, RoundingMode.HALF_UP).setScale(2, RoundingMode.HALF_UP)
                .doubleValue();
    }
}
