package org.amberyard.core.yard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.charging.ChargeShortfall;
import org.amberyard.core.charging.PortOutage;
import org.amberyard.core.charging.YardCharging;

/**
 * What a yard misses while one of its ports is out of order for a school week of the coldest days, in the month that is hit
 * hardest.
 *
 * @param month month, 0 for January
 * @param outage the port that is down and who then leaves without enough
 */
public record YardOutage(int month, PortOutage outage) {
    private static final int WEEK_DAYS = 5;

    /**
     * A departure without the charge that it needs.
     *
     * @param day school day of the week, 0 for the first on which the port is down
     * @param shortfall the bus and what it lacks
     */
    public record Miss(int day, ChargeShortfall shortfall) {
    }

    /** The departure that lacks most, the first of equals; empty when every bus is ready. */
    public Optional<Miss> worst() {
        return IntStream.range(0, outage.days().size()).boxed()
                .flatMap(day -> outage.days().get(day).stream().map(shortfall -> new Miss(day, shortfall)))
                .reduce((a, b) -> b.shortfall().shortKwh() > a.shortfall().shortKwh() ? b : a);
    }

    /** For each type of port of a yard, one of them down. */
    public static List<YardOutage> of(YardInput yard) {
        List<List<YardOutage>> months = new LoadMemory().unscheduled(yard).year().stream().map(month -> ofMonth(month, yard))
                .filter(found -> !found.isEmpty()).toList();
        return yard.ports().stream().map(u -> u.port()).distinct()
                .flatMap(port -> months.stream().flatMap(List::stream).filter(o -> o.outage().port().equals(port))
                        .max(Comparator.comparingDouble((YardOutage o) -> o.outage().worstKwh())
                                .thenComparing(Comparator.comparingInt(YardOutage::month).reversed()))
                        .stream())
                .toList();
    }

    private static List<YardOutage> ofMonth(MonthLoad month, YardInput yard) {
        return month.stretches().stream().filter(s -> s.kind() == StretchKind.COLDEST_DAY).map(StretchLoad::charging)
                .flatMap(charging -> ofStretch(charging, month.month(), yard)).toList();
    }

    private static Stream<YardOutage> ofStretch(YardCharging charging, int month, YardInput yard) {
        return PortOutage.of(charging.stretch(), yard.ports(), charging.rule(), WEEK_DAYS).stream()
                .map(o -> new YardOutage(month, o));
    }
}
