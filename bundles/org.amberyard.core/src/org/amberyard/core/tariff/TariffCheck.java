package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.amberyard.core.tariff.TariffPeriod.Hours;

/** What in a tariff is likely to be a slip of whoever typed it. */
public final class TariffCheck {
    private static final double HIGH_PER_KWH = 3;
    private static final int MONTHS = 12;
    private static final int DAY_MIN = 1440;

    private TariffCheck() {
    }

    /** Prices of energy above 3 money/kWh. */
    public static List<PriceFault> prices(Tariff tariff) {
        return Stream.concat(tariff.energy().stream(), tariff.riders().perKwh().stream())
                .flatMap(charge -> charge.rates().stream()
                        .flatMap(rate -> rate.prices().blocks().stream())
                        .map(block -> new PriceFault(charge.name(), block.price())))
                .filter(fault -> fault.pricePerKwh() > HIGH_PER_KWH)
                .distinct()
                .toList();
    }

    /** Hours that no energy charge covers, or more than one, in any contract year; each with the first year of it. */
    public static List<HoursFault> hours(Tariff tariff) {
        Map<List<Object>, HoursFault> faults = new LinkedHashMap<>();
        for (int contractYear : yearsOfChange(tariff)) {
            for (HoursFault fault : hours(tariff, contractYear)) {
                faults.putIfAbsent(List.of(fault.days(), fault.months(), fault.hours(), fault.charges()), fault);
            }
        }
        return List.copyOf(faults.values());
    }

    private static Set<Integer> yearsOfChange(Tariff tariff) {
        Set<Integer> years = new TreeSet<>(Set.of(1));
        for (EnergyCharge charge : tariff.energy()) {
            for (ChargeRate rate : charge.rates()) {
                years.add(rate.years().from());
                if (rate.years().to() < Integer.MAX_VALUE) {
                    years.add(rate.years().to() + 1);
                }
            }
        }
        return years;
    }

    private static List<HoursFault> hours(Tariff tariff, int contractYear) {
        List<HoursFault> faults = new ArrayList<>();
        for (int month = 0; month < MONTHS; month++) {
            List<ChargeTerms> energy = tariff.inForce(month, contractYear).energyTerms(BillComponent.ENERGY);
            for (DayClass day : DayClass.values()) {
                for (Stretch stretch : stretches(energy, day)) {
                    faults.add(new HoursFault(contractYear, List.of(day), List.of(month), stretch.hours, stretch.charges));
                }
            }
        }
        return joined(joined(faults, HoursFault::days, TariffCheck::withMonths), HoursFault::months, TariffCheck::withDays);
    }

    /** Hours of a day with the charges that cover them. */
    private record Stretch(Hours hours, List<String> charges) {
    }

    private static List<Stretch> stretches(List<ChargeTerms> energy, DayClass day) {
        List<Stretch> stretches = new ArrayList<>();
        int start = 0;
        for (int end : boundaries(energy, day)) {
            double within = start;
            List<String> charges = energy.stream().filter(c -> c.hours().contains(day, within)).map(ChargeTerms::name).toList();
            if (charges.size() != 1) {
                stretches.add(new Stretch(new Hours(start, end), charges));
            }
            start = end;
        }
        return stretches;
    }

    private static Set<Integer> boundaries(List<ChargeTerms> energy, DayClass day) {
        Set<Integer> boundaries = new TreeSet<>(Set.of(DAY_MIN));
        for (ChargeTerms charge : energy) {
            for (Hours span : charge.hours().spans(day)) {
                boundaries.add(span.fromMin());
                boundaries.add(span.toMin());
            }
        }
        boundaries.remove(0);
        return boundaries;
    }

    private static List<HoursFault> joined(List<HoursFault> faults, Function<HoursFault, Object> alike,
            Function<List<HoursFault>, HoursFault> join) {
        Map<List<Object>, List<HoursFault>> groups = new LinkedHashMap<>();
        for (HoursFault fault : faults) {
            groups.computeIfAbsent(List.of(alike.apply(fault), fault.hours(), fault.charges()), k -> new ArrayList<>())
                    .add(fault);
        }
        return groups.values().stream().map(join).toList();
    }

    private static HoursFault withMonths(List<HoursFault> group) {
        HoursFault first = group.get(0);
        return new HoursFault(first.contractYear(), first.days(), all(group, HoursFault::months), first.hours(),
                first.charges());
    }

    private static HoursFault withDays(List<HoursFault> group) {
        HoursFault first = group.get(0);
        return new HoursFault(first.contractYear(), all(group, HoursFault::days), first.months(), first.hours(),
                first.charges());
    }

    private static <T> List<T> all(List<HoursFault> group, Function<HoursFault, List<T>> of) {
        Set<T> all = new LinkedHashSet<>();
        group.forEach(f -> all.addAll(of.apply(f)));
        return List.copyOf(all);
    }
}
