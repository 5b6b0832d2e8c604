package org.amberyard.core.tariff;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.tariff.TariffPeriod.Hours;

/** Hours of a month that a charge counts. */
final class MonthHours {
    private final DayHours[] byDayClass;

    /** Hours of periods in a month; hours that several periods cover count once. */
    MonthHours(List<TariffPeriod> periods, int month) {
        byDayClass = Stream.of(DayClass.values()).map(day -> DayHours.of(periods, month, day)).toArray(DayHours[]::new);
    }

    /** True when a minute of a kind of day lies within. */
    boolean contains(DayClass day, double minute) {
        return byDayClass[day.ordinal()].contains(minute);
    }

    /** Spans of a kind of day. */
    Hours[] spans(DayClass day) {
        return byDayClass[day.ordinal()].spans();
    }

    /** Energy within the hours, kWh; a step of the load on a boundary counts by its share of time. */
    double kwh(MeterMonth month) {
        double kwMinutes = 0;
        for (LoadDay day : month.days()) {
            kwMinutes += day.days() * kwMinutes(day, byDayClass[day.dayClass().ordinal()]);
        }
        return kwMinutes / 60;
    }

    private static double kwMinutes(LoadDay day, DayHours hours) {
        double sum = 0;
        double stepMin = day.stepMin();
        for (int step = 0; step < day.kw().length; step++) {
            sum += day.kw()[step] * hours.overlapMin(step * stepMin, (step + 1) * stepMin);
        }
        return sum;
    }

    /** Highest demand within the hours, the first where it comes again; none without demand. */
    Optional<PeakMoment> peak(MeterMonth month) {
        LoadDay peakDay = null;
        int peakStep = 0;
        double peakKw = 0;
        for (LoadDay day : month.days()) {
            int step = day.days() > 0 ? peakStep(day, byDayClass[day.dayClass().ordinal()], peakKw) : -1;
            if (step >= 0) {
                peakDay = day;
                peakStep = step;
                peakKw = day.kw()[step];
            }
        }
        return peakDay == null ? Optional.empty() : Optional.of(new PeakMoment(month.month(), peakDay, peakStep));
    }

    private static int peakStep(LoadDay day, DayHours hours, double aboveKw) {
        int peak = -1;
        double peakKw = aboveKw;
        double stepMin = day.stepMin();
        for (int step = 0; step < day.kw().length; step++) {
            if (day.kw()[step] > peakKw && hours.overlapMin(step * stepMin, (step + 1) * stepMin) > 0) {
                peak = step;
                peakKw = day.kw()[step];
            }
        }
        return peak;
    }
}
