package org.amberyard.study;

import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.yard.Metering;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.meta.Holidays;

/** Compiles tariffs with the meter that they belong to. */
final class MeteringCompiler {
    private final int baseYear;
    private final int years;

    /** For a study of some years from a base year. */
    MeteringCompiler(int baseYear, int years) {
        this.baseYear = baseYear;
        this.years = years;
    }

    Metering compile(Tariff tariff) {
        if (tariff instanceof ScheduledTariff scheduled) {
            int start = scheduled.getContractStartYear();
            return new Metering(TariffCompiler.compile(tariff), tariff.isSharedMeter(), holidays(scheduled),
                    start > 0 ? OptionalInt.of(start - baseYear) : OptionalInt.empty());
        }
        return new Metering(TariffCompiler.compile(tariff), tariff.isSharedMeter(), Set.of(), OptionalInt.empty());
    }

    private Set<LocalDate> holidays(ScheduledTariff tariff) {
        Holidays holidays = Holidays.parse(tariff.getHolidays());
        return IntStream.range(0, years).mapToObj(y -> holidays.of(baseYear + y)).flatMap(Set::stream)
                .collect(Collectors.toUnmodifiableSet());
    }
}
