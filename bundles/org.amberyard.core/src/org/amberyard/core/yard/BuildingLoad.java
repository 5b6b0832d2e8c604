package org.amberyard.core.yard;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.DayClass;

/**
 * Load of the building and everything else behind the yard's service that is no charging, by month.
 *
 * @param weekdays mean weekday of each month, kW by step
 * @param freeDays mean weekend day or holiday of each month, kW by step
 * @param peakDays day of the highest demand of each month, kW by step
 */
public record BuildingLoad(List<double[]> weekdays, List<double[]> freeDays, List<double[]> peakDays) {

    public BuildingLoad {
        weekdays = List.copyOf(weekdays);
        freeDays = List.copyOf(freeDays);
        peakDays = List.copyOf(peakDays);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BuildingLoad load && same(weekdays, load.weekdays) && same(freeDays, load.freeDays)
                && same(peakDays, load.peakDays);
    }

    private static boolean same(List<double[]> one, List<double[]> other) {
        return Arrays.deepEquals(one.toArray(), other.toArray());
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(weekdays.toArray());
    }

    /** The same load at all hours of the year. */
    public static BuildingLoad constant(double kw, int stepsPerDay) {
        double[] day = new double[stepsPerDay];
        Arrays.fill(day, kw);
        List<double[]> months = Collections.nCopies(Climate.MONTHS, day);
        return new BuildingLoad(months, months, months);
    }

    /** A mean day of a kind, kW by step; not to be changed. */
    double[] day(int month, DayClass kind) {
        return (kind == DayClass.WEEKDAY ? weekdays : freeDays).get(month);
    }

    /** The day of the highest demand, kW by step; not to be changed. */
    double[] peakDay(int month) {
        return peakDays.get(month);
    }

    /** Load through a stretch of days, kW by step; the day of the highest demand where the weather is extreme. */
    double[] through(int month, StretchKind kind) {
        if (kind.extreme()) {
            return peakDay(month).clone();
        }
        int steps = weekdays.get(month).length;
        double[] kw = new double[kind.days().size() * steps];
        for (int day = 0; day < kind.days().size(); day++) {
            System.arraycopy(day(month, kind.days().get(day)), 0, kw, day * steps, steps);
        }
        return kw;
    }
}
