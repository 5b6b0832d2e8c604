package org.amberyard.study;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.tariff.HolidayRule;
import org.amberyard.core.yard.Metering;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;

/** Compiles tariffs with the meter that they belong to. */
final class MeteringCompiler {
    private final int baseYear;

    /** For a study from a base year, whose calendar stands for all years. */
    MeteringCompiler(int baseYear) {
        this.baseYear = baseYear;
    }

    Metering compile(Tariff tariff) {
        if (tariff instanceof ScheduledTariff scheduled) {
            int start = scheduled.getContractStartYear();
            return new Metering(TariffCompiler.compile(tariff), tariff.isSharedMeter(), holidays(scheduled),
                    start > 0 ? OptionalInt.of(start - baseYear) : OptionalInt.empty());
        }
        return new Metering(TariffCompiler.compile(tariff), tariff.isSharedMeter(), Set.of(), OptionalInt.empty());
    }

    /** Days of the base year; a holiday of the year before or after may be kept in it. */
    private Set<LocalDate> holidays(ScheduledTariff tariff) {
        List<HolidayRule> rules = HolidayText.parse(tariff.getHolidays());
        return IntStream.rangeClosed(baseYear - 1, baseYear + 1).boxed()
                .flatMap(year -> rules.stream().map(rule -> rule.kept(year)))
                .filter(day -> day.getYear() == baseYear).collect(Collectors.toUnmodifiableSet());
    }
}
