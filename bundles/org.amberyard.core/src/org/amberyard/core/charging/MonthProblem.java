package org.amberyard.core.charging;

import java.util.List;
import org.amberyard.core.math.Checks;

/**
 * The least-cost problem of a month.
 *
 * @param stretches stretches of days of the month
 * @param demandPrices price of each demand charge, money/kW, riders and taxes included
 * @param demandFloorsKw demand that each charge bills at least, kW (a ratchet, or the demand of days without charging)
 * @param siteLimitKw demand that must not be exceeded, kW; infinite where nothing limits it
 */
public record MonthProblem(List<StretchProblem> stretches, double[] demandPrices, double[] demandFloorsKw,
        double siteLimitKw) {

    public MonthProblem {
        stretches = List.copyOf(stretches);
        if (demandFloorsKw.length != demandPrices.length) {
            throw new IllegalArgumentException("a month has " + demandPrices.length + " prices of demand and "
                    + demandFloorsKw.length + " floors but must have one of each for every demand charge");
        }
        for (int charge = 0; charge < demandPrices.length; charge++) {
            Checks.notNegative("price of demand charge " + charge, demandPrices[charge]);
            Checks.notNegative("floor of demand charge " + charge + ", kW,", demandFloorsKw[charge]);
        }
    }

    /** The same month with other stretches. */
    MonthProblem with(List<StretchProblem> other) {
        return new MonthProblem(other, demandPrices, demandFloorsKw, siteLimitKw);
    }

    /** The same month under other demand prices and floors. */
    MonthProblem with(double[] otherPrices, double[] otherFloorsKw) {
        return new MonthProblem(stretches, otherPrices, otherFloorsKw, siteLimitKw);
    }
}
