package org.amberyard.exchange;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.LoadDayKind;
import org.amberyard.model.meta.NumberSeries;

/** Days of a meter's file, and the days that stand for the months of a year. */
final class MeterYear {
    /** Ten watts: finer than meters of buildings. */
    private static final int DECIMALS = 2;
    private static final int DAY_HOURS = 24;

    private final int steps;
    private final TreeMap<LocalDate, MeterDay> days = new TreeMap<>();

    /** @throws ImportException when readings stand there twice for another reason than the change of the clock */
    MeterYear(MeterFile file) throws ImportException {
        steps = file.stepsPerDay();
        for (MeterReading reading : file.readings()) {
            int minute = reading.start().getHour() * 60 + reading.start().getMinute();
            days.computeIfAbsent(reading.start().toLocalDate(), d -> new MeterDay(d, steps))
                    .add(minute / file.stepMin(), file.unit().kw(reading.number(), file.stepMin()));
        }
        ProblemList problems = new ProblemList(file.file());
        days.values().stream().filter(MeterDay::hasDuplicates).forEach(d -> problems.add(0, "", d.date()
                + " has more than one reading of the same time; remove the doubled rows."));
        problems.refuseIfAny();
    }

    Collection<MeterDay> days() {
        return days.values();
    }

    List<MeterDay> days(Month month) {
        return days.values().stream().filter(d -> d.date().getMonthValue() == month.getValue() + 1).toList();
    }

    /** Mean load of a month by what has been read, times its hours, kWh. */
    double kwh(Month month) {
        List<MeterDay> read = days(month);
        double kw = read.stream().flatMapToDouble(d -> IntStream.range(0, steps).filter(d::hasReading).mapToDouble(d::kw))
                .average().orElse(0);
        return read.isEmpty() ? 0 : kw * DAY_HOURS * YearMonth.from(read.get(0).date()).lengthOfMonth();
    }

    /** The days that stand for weekdays and weekends of each month that has been read. */
    List<BuildingLoadDay> loadDays() {
        List<BuildingLoadDay> rows = new ArrayList<>();
        for (Month month : Month.VALUES) {
            for (LoadDayKind kind : LoadDayKind.VALUES) {
                List<MeterDay> alike = days(month).stream().filter(d -> d.isWeekend() == (kind == LoadDayKind.WEEKEND)).toList();
                if (!alike.isEmpty()) {
                    rows.add(row(month, kind, alike));
                }
            }
        }
        return rows;
    }

    /**
     * The days that were read whole, in their order. Where clocks are put forward nothing was drawn in the hour that there was not, so the
     * energy of the day stays what was metered; where they are put back the hour that came twice has its mean.
     */
    List<org.amberyard.model.depot.MeterDay> datedDays() {
        return days.values().stream().filter(d -> d.missing() == 0 || d.isClockPutForward()).map(this::dated).toList();
    }

    private org.amberyard.model.depot.MeterDay dated(MeterDay day) {
        org.amberyard.model.depot.MeterDay dated = DepotFactory.eINSTANCE.createMeterDay();
        dated.setDate(day.date().toString());
        dated.setLoadKw(NumberSeries.text(IntStream.range(0, steps).mapToDouble(s -> day.hasReading(s) ? day.kw(s) : 0).toArray(), DECIMALS));
        return dated;
    }

    private BuildingLoadDay row(Month month, LoadDayKind kind, List<MeterDay> alike) {
        double[] mean = IntStream.range(0, steps).mapToDouble(s -> mean(alike, s)).toArray();
        MeterDay peak = alike.stream().max(Comparator.comparingDouble(MeterDay::peakKw)).orElseThrow();
        double[] peakDay = IntStream.range(0, steps).mapToDouble(s -> peak.hasReading(s) ? peak.kw(s) : mean[s]).toArray();
        BuildingLoadDay row = DepotFactory.eINSTANCE.createBuildingLoadDay();
        row.setMonth(month);
        row.setDayKind(kind);
        row.setMeanKw(NumberSeries.text(mean, DECIMALS));
        row.setPeakDayKw(NumberSeries.text(peakDay, DECIMALS));
        return row;
    }

    /** Mean of a step over the days that have read it; of the whole days' loads where none has. */
    private double mean(List<MeterDay> alike, int step) {
        return alike.stream().filter(d -> d.hasReading(step)).mapToDouble(d -> d.kw(step)).average()
                .orElseGet(() -> alike.stream().flatMapToDouble(d -> IntStream.range(0, steps).filter(d::hasReading)
                        .mapToDouble(d::kw)).average().orElseThrow());
    }
}
