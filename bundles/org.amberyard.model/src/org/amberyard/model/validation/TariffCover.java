package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.meta.Season;
import org.amberyard.model.meta.TariffDay;

/** Hours of a year of service that the energy charges of a tariff leave without price, or price more than once. */
final class TariffCover {
    private static final int DAY_MIN = 1440;

    private final List<TariffCharge> energy;
    private final Set<TariffDay> days;
    private final Map<Fault, Map<Month, Set<TariffDay>>> faults = new LinkedHashMap<>();

    /**
     * Hours that are not priced just once.
     *
     * @param fromMin start, minutes after midnight
     * @param toMin end; before the start when they run over midnight
     * @param charges charges that price them
     */
    record Fault(int fromMin, int toMin, Set<String> charges) {

        boolean isWholeDay() {
            return fromMin == 0 && toMin == DAY_MIN;
        }
    }

    /** A fault with the days and months that have it alike. */
    record Place(Fault fault, Set<TariffDay> days, Set<Month> months) {
    }

    /** @param year year of service */
    TariffCover(ScheduledTariff tariff, int year) {
        energy = tariff.getCharges().stream().filter(r -> r.getKind() == TariffChargeKind.ENERGY)
                .filter(r -> r.getFirstContractYear() <= year && year <= r.getLastContractYear()).toList();
        boolean holidays = tariff.getHolidays() != null && !tariff.getHolidays().isBlank();
        days = holidays ? EnumSet.allOf(TariffDay.class) : EnumSet.complementOf(EnumSet.of(TariffDay.HOLIDAY));
        for (Month month : Month.VALUES) {
            days.forEach(day -> look(month, day));
        }
    }

    /** Faults, alike ones together. */
    List<Place> places() {
        List<Place> places = new ArrayList<>();
        faults.forEach((fault, byMonth) -> {
            Map<Set<TariffDay>, Set<Month>> alike = new LinkedHashMap<>();
            byMonth.forEach((month, on) -> alike.computeIfAbsent(on, d -> EnumSet.noneOf(Month.class)).add(month));
            alike.forEach((on, months) -> places.add(new Place(fault, on, months)));
        });
        return places;
    }

    /** Days that the tariff tells apart. */
    Set<TariffDay> days() {
        return days;
    }

    private void look(Month month, TariffDay day) {
        List<TariffCharge> rows = energy.stream()
                .filter(r -> TariffDay.of(r.getDays()).contains(day) && Season.of(r).contains(month)).toList();
        List<Fault> spans = new ArrayList<>();
        int from = 0;
        for (int to : bounds(rows)) {
            add(spans, new Fault(from, to, charges(rows, from)));
            from = to;
        }
        overMidnight(spans).stream().filter(s -> s.charges().size() != 1).forEach(s -> faults
                .computeIfAbsent(s, f -> new EnumMap<>(Month.class))
                .computeIfAbsent(month, m -> EnumSet.noneOf(TariffDay.class)).add(day));
    }

    private static Set<Integer> bounds(List<TariffCharge> rows) {
        Set<Integer> bounds = new TreeSet<>(Set.of(DAY_MIN));
        rows.forEach(r -> bounds.addAll(List.of(r.getFromMin(), r.getToMin())));
        bounds.remove(0);
        return bounds;
    }

    private static Set<String> charges(List<TariffCharge> rows, int minute) {
        return rows.stream().filter(r -> contains(r, minute)).map(TariffCharge::getCharge)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean contains(TariffCharge row, int minute) {
        int from = row.getFromMin();
        int to = row.getToMin();
        return from < to ? from <= minute && minute < to : from == to || minute >= from || minute < to;
    }

    /** Adds a span, to the one before when nothing changes between them. */
    private static void add(List<Fault> spans, Fault span) {
        int last = spans.size() - 1;
        if (last >= 0 && spans.get(last).charges().equals(span.charges())) {
            spans.set(last, new Fault(spans.get(last).fromMin(), span.toMin(), span.charges()));
        } else {
            spans.add(span);
        }
    }

    private static List<Fault> overMidnight(List<Fault> spans) {
        Fault first = spans.get(0);
        Fault last = spans.get(spans.size() - 1);
        if (spans.size() == 1 || !first.charges().equals(last.charges())) {
            return spans;
        }
        List<Fault> joined = new ArrayList<>(spans.subList(1, spans.size() - 1));
        joined.add(new Fault(last.fromMin(), first.toMin(), first.charges()));
        return joined;
    }
}
