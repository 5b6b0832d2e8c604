package org.amberyard.core.tariff;

import java.util.Arrays;
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

    /** Share of a step of a kind of day that lies within: that share of the step's energy counts. */
    double share(DayClass day, double fromMin, double toMin) {
        return byDayClass[day.ordinal()].overlapMin(fromMin, toMin) / (toMin - fromMin);
    }

    /** True when the demand of a step of a kind of day counts: some of it lies within. */
    boolean counts(DayClass day, double fromMin, double toMin) {
        return byDayClass[day.ordinal()].overlapMin(fromMin, toMin) > 0;
    }

    /** True when both are the same hours of the same days. */
    boolean sameAs(MonthHours other) {
        return Stream.of(DayClass.values()).allMatch(day -> Arrays.equals(spans(day), other.spans(day)));
    }

    /** Spans of a kind of day. */
    Hours[] spans(DayClass day) {
        return byDayClass[day.ordinal()].spans();
    }

    /** Energy within the hours, kWh; a step of the load on a boundary counts by its share of time. */
    double kwh(MeterMonth month) {
        double kwh = 0;
        for (LoadDay day : month.days()) {
            kwh += day.days() * kwh(day);
        }
        return kwh;
    }

    private double kwh(LoadDay day) {
        double kw = 0;
        double stepMin = day.stepMin();
        int next = 0;
        for (Hours span : spans(day.dayClass())) {
            int end = Math.min(day.kw().length, (int) Math.ceil(span.toMin() / stepMin));
            for (int step = Math.max(next, (int) (span.fromMin() / stepMin)); step < end; step++) {
                boolean whole = step * stepMin >= span.fromMin() && (step + 1) * stepMin <= span.toMin();
                kw += day.kw()[step] * (whole ? 1 : share(day.dayClass(), step * stepMin, (step + 1) * stepMin));
            }
            next = Math.max(next, end);
        }
        return kw * stepMin / 60;
    }

    /** Highest demand within the hours, the first where it comes again; none without demand. */
    Optional<PeakMoment> peak(MeterMonth month) {
        LoadDay peakDay = null;
        int peakStep = 0;
        double peakKw = 0;
        for (LoadDay day : month.days()) {
            int step = day.days() > 0 ? peakStep(day, peakKw) : -1;
            if (step >= 0) {
                peakDay = day;
                peakStep = step;
                peakKw = day.kw()[step];
            }
        }
        return peakDay == null ? Optional.empty() : Optional.of(new PeakMoment(month.month(), peakDay, peakStep));
    }

    private int peakStep(LoadDay day, double aboveKw) {
        int peak = -1;
        double peakKw = aboveKw;
        double stepMin = day.stepMin();
        for (int step = 0; step < day.kw().length; step++) {
            if (day.kw()[step] > peakKw && counts(day.dayClass(), step * stepMin, (step + 1) * stepMin)) {
                peak = step;
                peakKw = day.kw()[step];
            }
        }
        return peak;
    }
}
