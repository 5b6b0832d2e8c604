package org.amberyard.study;

import java.util.List;
import java.util.OptionalInt;
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
            return new Metering(TariffCompiler.compile(tariff), tariff.isSharedMeter(), HolidayText.parse(scheduled.getHolidays()),
                    start > 0 ? OptionalInt.of(start - baseYear) : OptionalInt.empty());
        }
        return new Metering(TariffCompiler.compile(tariff), tariff.isSharedMeter(), List.of(), OptionalInt.empty());
    }
}
