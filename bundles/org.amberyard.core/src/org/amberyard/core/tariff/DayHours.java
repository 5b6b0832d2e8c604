package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.amberyard.core.tariff.TariffPeriod.Hours;

/**
 * Hours of a day that a charge counts; hours named twice count once.
 *
 * @param spans spans within the day, apart from each other and in order
 */
record DayHours(Hours... spans) {
    private static final int DAY_MIN = 1440;
    private static final DayHours NEVER = new DayHours();

    /** Hours of a kind of day in a month. */
    static DayHours of(List<TariffPeriod> periods, int month, DayClass day) {
        List<Hours> spans = new ArrayList<>();
        for (TariffPeriod period : periods) {
            if (period.months().contains(month) && period.days().contains(day)) {
                period.hours().forEach(h -> addWithinDay(h, spans));
            }
        }
        return spans.isEmpty() ? NEVER : new DayHours(joined(spans).toArray(new Hours[0]));
    }

    private static void addWithinDay(Hours hours, List<Hours> spans) {
        if (hours.fromMin() < hours.toMin()) {
            spans.add(hours);
            return;
        }
        spans.add(new Hours(hours.fromMin(), DAY_MIN));
        if (hours.toMin() > 0) {
            spans.add(new Hours(0, hours.toMin()));
        }
    }

    private static List<Hours> joined(List<Hours> spans) {
        spans.sort(Comparator.comparingInt(Hours::fromMin));
        List<Hours> joined = new ArrayList<>();
        for (Hours span : spans) {
            Hours last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && span.fromMin() <= last.toMin()) {
                joined.set(joined.size() - 1, new Hours(last.fromMin(), Math.max(last.toMin(), span.toMin())));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    /** Minutes of the hours between two minutes of the day. */
    double overlapMin(double fromMin, double toMin) {
        double sum = 0;
        for (Hours span : spans) {
            sum += Math.max(0, Math.min(toMin, span.toMin()) - Math.max(fromMin, span.fromMin()));
        }
        return sum;
    }

    /** True when a minute lies within. */
    boolean contains(double minute) {
        for (Hours span : spans) {
            if (span.contains(minute)) {
                return true;
            }
        }
        return false;
    }
}
