package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

/**
 * What a controller without hindsight reaches. Each day it knows the day before it and the highest demand of the month so far:
 * demand up to that costs nothing more, demand above it is worth paying for only what it saves on that day. The stretches of the
 * month follow each other as they stand in it, each as often as it does; a day like the one before is charged like it.
 */
public final class RollingCharge {
    private RollingCharge() {
    }

    /** Schedules a month. A session that cannot be ready gets what {@link LeastCost} gives it. */
    public static MonthSchedule of(MonthProblem month) {
        List<double[][]> kw = new ArrayList<>();
        double[] demandKw = month.demandFloorsKw();
        for (StretchProblem stretch : month.stretches()) {
            MonthSchedule day = LeastCost.of(month.with(List.of(stretch.once())).with(month.demandPrices(), demandKw)).schedule();
            kw.addAll(day.kw());
            demandKw = day.demandKw();
        }
        return MonthSchedule.of(month, kw);
    }
}
