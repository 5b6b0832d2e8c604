package org.amberyard.model.meta;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.depot.TariffDays;

/** Days that rows of a tariff can tell apart. */
public enum TariffDay {
    /** Monday to Friday, no holiday. */
    WEEKDAY("weekdays"),
    /** Saturday, no holiday. */
    SATURDAY("Saturdays"),
    /** Sunday, no holiday. */
    SUNDAY("Sundays"),
    /** Holiday of the tariff. */
    HOLIDAY("holidays");

    private static final Map<TariffDays, Set<TariffDay>> MEMBERS = new EnumMap<>(Map.of(
            TariffDays.ALL, EnumSet.allOf(TariffDay.class),
            TariffDays.WEEKDAYS, EnumSet.of(WEEKDAY),
            TariffDays.WEEKDAYS_AND_SATURDAYS, EnumSet.of(WEEKDAY, SATURDAY),
            TariffDays.SATURDAYS, EnumSet.of(SATURDAY),
            TariffDays.SUNDAYS_AND_HOLIDAYS, EnumSet.of(SUNDAY, HOLIDAY),
            TariffDays.WEEKENDS_AND_HOLIDAYS, EnumSet.of(SATURDAY, SUNDAY, HOLIDAY)));

    private final String plural;

    TariffDay(String plural) {
        this.plural = plural;
    }

    /** Days of a row's choice. */
    public static Set<TariffDay> of(TariffDays days) {
        return MEMBERS.get(days);
    }

    /** Days in words; {@code every day} when they are all of those that there are. */
    public static String words(Set<TariffDay> days, Set<TariffDay> all) {
        return days.equals(all) ? "every day" : days.stream().map(d -> d.plural).collect(Collectors.joining(", "));
    }
}
