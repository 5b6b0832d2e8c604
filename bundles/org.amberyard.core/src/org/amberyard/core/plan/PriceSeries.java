package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.PricePath;

/** A price over the years at one time of the year, worked out anew for other values of the fields that it hangs on. */
final class PriceSeries {
    private static final int FIXED = -1;

    private final double level;
    private final double floor;
    private final int[] baseFields;
    private final double[] bases;
    private final int riseField;
    private final double[] factors;
    private final double startYears;

    /**
     * A series.
     *
     * @param price what has the price
     * @param fields fields that vary
     */
    PriceSeries(StudyInput study, UnitPrice price, FlowTime time, List<PriceField> fields) {
        floor = price.kind().floor();
        List<PriceField> of = price.kind().bases(price.of());
        baseFields = of.stream().mapToInt(fields::indexOf).toArray();
        bases = of.stream().mapToDouble(f -> f.in(study)).toArray();
        PricePath path = price.kind().path(study, price.of());
        level = path.level();
        Optional<PriceField> rise = price.kind().rise(study, price.of());
        riseField = path.points().isEmpty() ? rise.map(fields::indexOf).orElse(FIXED) : FIXED;
        startYears = path.yearsBefore() + time.years(0, study.money().midYear());
        factors = new double[study.years() + 1];
        for (int year = 0; year < factors.length; year++) {
            factors[year] = path.factor(year, time.years(year, study.money().midYear()));
        }
    }

    /** True when a field that varies moves it. */
    boolean moves() {
        for (int field : baseFields) {
            if (field != FIXED) {
                return true;
            }
        }
        return riseField != FIXED;
    }

    /** Writes the price of each year, that after the last included, at values of the fields. */
    void write(double[] values, double[] prices, int from) {
        double base = base(values);
        if (riseField == FIXED) {
            for (int year = 0; year < factors.length; year++) {
                prices[from + year] = base * factors[year];
            }
            return;
        }
        double growth = 1 + values[riseField];
        double price = base * level * (startYears == 0 ? 1 : startYears == 1 ? growth : Math.pow(growth, startYears));
        for (int year = 0; year < factors.length; year++) {
            prices[from + year] = price;
            price *= growth;
        }
    }

    private double base(double[] values) {
        double least = bases.length == 0 ? 1 : Double.POSITIVE_INFINITY;
        for (int i = 0; i < bases.length; i++) {
            least = Math.min(least, baseFields[i] == FIXED ? bases[i] : values[baseFields[i]]);
        }
        return Math.max(floor, least);
    }
}
