package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
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

    /**
     * Schedules a year. Where demand charges have a ratchet, each month bills at least a share of the highest demand of the months
     * before, and demand up to that costs nothing more either; what a demand costs in the months after is not seen. The year
     * before was like this one.
     *
     * @param months the months, all with the same demand charges
     * @param ratchetShares share of the year's highest demand that each demand charge bills at least, 0 where it has no ratchet
     */
    public static List<MonthSchedule> ofYear(List<MonthProblem> months, double[] ratchetShares) {
        double[] peaksKw = new double[ratchetShares.length];
        List<MonthSchedule> first = year(months, ratchetShares, peaksKw);
        return Arrays.stream(ratchetShares).anyMatch(share -> share > 0) ? year(months, ratchetShares, peaksKw) : first;
    }

    /** The months in order, each after the highest demands so far, which it raises. */
    private static List<MonthSchedule> year(List<MonthProblem> months, double[] ratchetShares, double[] peaksKw) {
        List<MonthSchedule> schedules = new ArrayList<>();
        for (MonthProblem month : months) {
            double[] floorsKw = month.demandFloorsKw().clone();
            Arrays.setAll(floorsKw, charge -> Math.max(floorsKw[charge], ratchetShares[charge] * peaksKw[charge]));
            MonthSchedule schedule = of(month.with(month.demandPrices(), floorsKw));
            double[] loadsKw = MonthSchedule.of(month.with(month.demandPrices(), new double[floorsKw.length]), schedule.kw()).demandKw();
            Arrays.setAll(peaksKw, charge -> Math.max(peaksKw[charge], loadsKw[charge]));
            schedules.add(schedule);
        }
        return schedules;
    }
}
