package org.amberyard.core.tariff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a meter counted, day by day. */
public final class DatedLoad {
    /** A meter of which no day is known. */
    public static final DatedLoad NONE = new DatedLoad(List.of());

    private final TreeMap<LocalDate, MeteredDay> days = new TreeMap<>();

    /** Known days in any order; of a day that stands there twice the first counts. */
    public DatedLoad(List<MeteredDay> days) {
        for (MeteredDay day : days) {
            this.days.putIfAbsent(day.date(), day);
        }
    }

    /** Days of a period that are not known, in order. */
    public List<LocalDate> missing(BillingPeriod period) {
        return period.dates().stream().filter(d -> !days.containsKey(d)).toList();
    }

    /**
     * The known days of a period, as what is metered in a month.
     *
     * @param month month by which the days are billed, 0 for January
     */
    public MeterMonth metered(BillingPeriod period, int month, List<HolidayRule> holidays) {
        List<LoadDay> load = new ArrayList<>();
        Map<LocalDate, MeteredDay> within = days.subMap(period.first(), true, period.last(), true);
        within.forEach((date, day) -> load.add(day.load(new BillingCalendar(date.getYear(), holidays).dayClass(date))));
        return new MeterMonth(month, load);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DatedLoad load && days.equals(load.days);
    }

    @Override
    public int hashCode() {
        return days.keySet().hashCode();
    }
}
