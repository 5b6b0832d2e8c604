package org.amberyard.study;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.yard.BuildingLoad;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.LoadDayKind;
import org.amberyard.model.meta.NumberSeries;

/**
 * Compiles the load of the building: from metered days where there are some, else from monthly bills, else the building's peak
 * at all hours. Solar power is taken off mean days only: on the day of the highest demand clouds may hide the sun.
 */
final class BuildingCompiler {
    private static final int DAY_MIN = 1440;
    private static final double DAY_START_SHARE = 0.25;
    private static final double DAY_END_SHARE = 0.75;
    private static final double HOURS_OF_DAY = 24;
    private static final double WEEKDAY_SHARE = 5.0 / 7;

    private final Depot depot;
    private final int steps;

    private BuildingCompiler(Depot depot) {
        this.depot = depot;
        this.steps = DAY_MIN / depot.getStepMin();
    }

    static BuildingLoad compile(Depot depot) {
        return new BuildingCompiler(depot).load();
    }

    private BuildingLoad load() {
        List<double[]> weekdays = new ArrayList<>();
        List<double[]> freeDays = new ArrayList<>();
        List<double[]> peakDays = new ArrayList<>();
        for (Month month : Month.values()) {
            Optional<BuildingLoadDay> weekday = metered(month, LoadDayKind.WEEKDAY);
            Optional<BuildingLoadDay> weekend = metered(month, LoadDayKind.WEEKEND);
            Levels levels = levels(month);
            weekdays.add(weekday.map(this::meanDay).orElseGet(() -> levels.weekday(steps)));
            freeDays.add(weekend.map(this::meanDay).orElseGet(() -> levels.flat(steps, levels.nightKw())));
            peakDays.add(weekday.map(this::peakDay).orElseGet(() -> levels.peakDay(steps)));
        }
        return new BuildingLoad(weekdays, freeDays, peakDays);
    }

    private Optional<BuildingLoadDay> metered(Month month, LoadDayKind kind) {
        return depot.getBuildingLoadDays().stream()
                .filter(d -> d.getMonth().getValue() == month.ordinal() && d.getDayKind() == kind).findFirst();
    }

    /** The mean load where the day of the highest demand was not entered. */
    private double[] peakDay(BuildingLoadDay day) {
        boolean known = day.getPeakDayKw() != null && !day.getPeakDayKw().isBlank();
        return steps(known ? day.getPeakDayKw() : day.getMeanKw());
    }

    /** The mean load less what the sun brings; more than the building takes is not credited. */
    private double[] meanDay(BuildingLoadDay day) {
        double[] kw = steps(day.getMeanKw());
        double[] solarKw = steps(day.getSolarKw());
        for (int step = 0; step < kw.length; step++) {
            kw[step] = Math.max(0, kw[step] - solarKw[step]);
        }
        return kw;
    }

    /** Loads in steps of the study; a step takes the mean of what it covers. */
    private double[] steps(String text) {
        double[] given = NumberSeries.parse(text);
        double[] kw = new double[steps];
        for (int step = 0; step < steps; step++) {
            double from = (double) step * given.length / steps;
            double to = (double) (step + 1) * given.length / steps;
            for (int part = (int) from; part < given.length && part < to; part++) {
                kw[step] += given[part] * (Math.min(to, part + 1) - Math.max(from, part)) / (to - from);
            }
        }
        return kw;
    }

    private Levels levels(Month month) {
        return depot.getBuildingMonths().stream().filter(m -> m.getMonth().getValue() == month.ordinal()).findFirst()
                .map(bill -> Levels.of(bill, month)).orElse(new Levels(depot.getBuildingPeakKw(), depot.getBuildingPeakKw(),
                        depot.getBuildingPeakKw()));
    }

    /**
     * A month known by its bill: weekdays from six to eighteen at one level, all other hours at another (common practice
     * where nothing is metered, no source).
     *
     * @param dayKw level of weekdays
     * @param nightKw level of all other hours
     * @param peakKw highest demand
     */
    private record Levels(double dayKw, double nightKw, double peakKw) {

        static Levels of(BuildingMonth bill, Month month) {
            double meanKw = bill.getEnergyKwh() / (HOURS_OF_DAY * month.minLength());
            double dayShare = WEEKDAY_SHARE * (DAY_END_SHARE - DAY_START_SHARE);
            double nightKw = Math.max(0, (meanKw - bill.getPeakKw() * dayShare) / (1 - dayShare));
            double dayKw = (meanKw - nightKw * (1 - dayShare)) / dayShare;
            return dayKw >= nightKw ? new Levels(dayKw, nightKw, bill.getPeakKw()) : new Levels(meanKw, meanKw, bill.getPeakKw());
        }

        double[] weekday(int steps) {
            return byDay(steps, dayKw);
        }

        double[] peakDay(int steps) {
            return byDay(steps, peakKw);
        }

        private double[] byDay(int steps, double kw) {
            double[] day = flat(steps, nightKw);
            Arrays.fill(day, (int) (DAY_START_SHARE * steps), (int) (DAY_END_SHARE * steps), kw);
            return day;
        }

        double[] flat(int steps, double kw) {
            double[] day = new double[steps];
            Arrays.fill(day, kw);
            return day;
        }
    }
}
