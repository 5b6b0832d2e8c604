package org.amberyard.core.yard;

import java.util.List;
import org.amberyard.core.tariff.DayClass;

/**
 * Stretches of days that make up a month of service. The end of each is followed by another that begins like it. Only
 * weekends make a
 * longer one: the night before a holiday or a school break is charged like one before a service day, in less time
 * than there is.
 */
public enum StretchKind {
    /** A service day followed by another. */
    SERVICE_DAY("normal day", List.of(DayClass.WEEKDAY)),
    /** The last service day of a week with the weekend after it. */
    BEFORE_WEEKEND("Friday to Sunday", List.of(DayClass.WEEKDAY, DayClass.SATURDAY, DayClass.SUNDAY)),
    /** The service day of the month on which buses drive most trips and come home late. */
    TRIP_DAY("busiest day of trips", List.of(DayClass.WEEKDAY)),
    /** The coldest service day of the month. */
    COLDEST_DAY("coldest day", List.of(DayClass.WEEKDAY)),
    /** The hottest service day of the month. */
    HOTTEST_DAY("hottest day", List.of(DayClass.WEEKDAY));

    private final String label;
    private final List<DayClass> days;

    StretchKind(String label, List<DayClass> days) {
        this.label = label;
        this.days = days;
    }

    /** Words for tables and charts. */
    public String label() {
        return label;
    }

    /** Its days in order. */
    public List<DayClass> days() {
        return days;
    }

    /** True for the two days of a month whose weather is extreme. */
    public boolean extreme() {
        return this == COLDEST_DAY || this == HOTTEST_DAY;
    }
}
