package org.amberyard.core.yard;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.RouteInput;

/**
 * Days on which routes are driven.
 *
 * @param school school days from January to December
 * @param extendedYear days of the extended-year programme from January to December
 */
public record ServiceDays(List<Integer> school, List<Integer> extendedYear) {

    public ServiceDays {
        school = List.copyOf(school);
        extendedYear = List.copyOf(extendedYear);
    }

    /** Those of the most frequent run of each month. */
    public static ServiceDays of(Collection<RouteInput> routes) {
        return new ServiceDays(days(routes, false), days(routes, true));
    }

    private static List<Integer> days(Collection<RouteInput> routes, boolean extendedYear) {
        return IntStream.range(0, Climate.MONTHS).mapToObj(month -> routes.stream().flatMap(r -> r.runs().stream())
                .filter(run -> run.extendedYear() == extendedYear).mapToInt(run -> run.daysByMonth().get(month)).max()
                .orElse(0)).toList();
    }

    /** Days of one kind in a month. */
    public int of(int month, boolean ofExtendedYear) {
        return (ofExtendedYear ? extendedYear : school).get(month);
    }

    /** All of them. */
    public int total() {
        return IntStream.range(0, Climate.MONTHS).map(m -> school.get(m) + extendedYear.get(m)).sum();
    }
}
