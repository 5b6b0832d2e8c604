package org.amberyard.exchange;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the readings of a meter are: ReadingType of the Energy Services Provider Interface. Its numbers stand for units,
 * directions and kinds of readings (codes after IEC 61968-9, from memory).
 *
 * @param uom unit: 72 Wh, 38 W
 * @param powerOfTen exponent of the factor on values
 * @param flow direction: 1 delivered to the customer, 19 received from him, 4 net
 * @param behaviour what a reading is: 4 what passed in its interval; 1, 3 and 9 running totals
 * @param intervalS length of an interval, seconds; 0 when not said
 */
record EspiReadingType(long uom, int powerOfTen, long flow, long behaviour, long intervalS) {
    private static final int WATT = 38;
    private static final int WATT_HOUR = 72;
    private static final int DELIVERED = 1;
    private static final int NET = 4;
    private static final int RECEIVED = 19;
    private static final Set<Long> TOTALS = Set.of(1L, 3L, 9L);
    private static final int KILO = 3;

    /** The type that elements of an entry tell; without a direction they count as delivered. */
    static EspiReadingType of(Map<String, String> leaves, int line, ProblemList problems) {
        EspiNumbers numbers = new EspiNumbers(leaves, line, problems);
        return new EspiReadingType(numbers.whole("uom", 0, 1000, 0), (int) numbers.whole("powerOfTenMultiplier", -12, 12, 0),
                numbers.whole("flowDirection", 0, 1000, DELIVERED), numbers.whole("accumulationBehaviour", 0, 1000, 0),
                numbers.whole("intervalLength", 0, 10_000_000, 0));
    }

    /** Why readings of this type cannot be a building's load; empty when they can. */
    Optional<String> objection() {
        if (uom != WATT && uom != WATT_HOUR) {
            return Optional.of("its unit (uom " + uom + ") is neither Wh (72) nor W (38)");
        }
        if (flow == RECEIVED) {
            return Optional.of("it counts reversed flow (flowDirection 19), power that the site feeds into the grid");
        }
        if (flow != DELIVERED && flow != NET && flow != 0) {
            return Optional.of("its direction (flowDirection " + flow + ") is neither delivered (1) nor net (4)");
        }
        return TOTALS.contains(behaviour) ? Optional.of("it holds running totals (accumulationBehaviour " + behaviour
                + ") and not what passed in each interval (4)") : Optional.empty();
    }

    boolean isNet() {
        return flow == NET;
    }

    MeterUnit unit() {
        return uom == WATT ? MeterUnit.KW : MeterUnit.KWH;
    }

    /** A value of the file in kW or kWh. */
    double kilo(double value) {
        int exponent = powerOfTen - KILO;
        return exponent < 0 ? value / Math.pow(10, -exponent) : value * Math.pow(10, exponent);
    }
}
