package org.amberyard.core.plan;

import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.WeatherDay;

/** Which day of a month is meant. */
public enum DayKind {
    /** An average day. */
    NORMAL("normal day"),
    /** The coldest day on which buses ran. */
    COLDEST("coldest day"),
    /** The hottest day on which buses ran. */
    HOTTEST("hottest day");

    private final String label;

    DayKind(String label) {
        this.label = label;
    }

    /** Words for tables and charts. */
    public String label() {
        return label;
    }

    /** The weather of that day. */
    public WeatherDay in(Climate.MonthWeather month) {
        return switch (this) {
            case NORMAL -> month.normal();
            case COLDEST -> month.coldest();
            case HOTTEST -> month.hottest();
        };
    }
}
