package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.tariff.TariffPeriod.Hours;
import org.junit.jupiter.api.Test;

class TariffCheckTest {

    private static Tariff tariff(EnergyCharge... energy) {
        return new Tariff("Test", List.of(), MinimumBill.NONE, List.of(energy), List.of(), Riders.NONE, List.of(), 1);
    }

    private static TariffPeriod weekdays(Set<Integer> months, int fromHour, int toHour) {
        return new TariffPeriod(months, ExampleTariffs.WEEKDAYS, List.of(ExampleTariffs.hours(fromHour, toHour)));
    }

    private static final EnergyCharge FREE_DAYS = EnergyCharge.of("Free days",
            new TariffPeriod(ExampleTariffs.YEAR, ExampleTariffs.FREE_DAYS, List.of(Hours.ALL_DAY)), 0.1);

    private static List<String> messages(Tariff tariff) {
        return TariffCheck.hours(tariff).stream().map(HoursFault::message).toList();
    }

    @Test
    void theExampleTariffsCoverEachHourOnce() {
        assertEquals(List.of(), messages(ExampleTariffs.generalService()));
        assertEquals(List.of(), messages(ExampleTariffs.fleetCharging()));
        assertEquals(List.of(), messages(Tariff.flat("Flat", 1, 0.1, 0, 1, 0)));
    }

    @Test
    void hoursCoveredTwiceOrNotAtAllAreNamed() {
        Set<Integer> january = Set.of(0);
        Set<Integer> rest = ExampleTariffs.months(1, 11);
        Tariff slips = tariff(FREE_DAYS, EnergyCharge.of("Day", weekdays(january, 14, 20), 0.2),
                EnergyCharge.of("Night", weekdays(january, 18, 6), 0.1), EnergyCharge.of("Rest", weekdays(rest, 0, 24), 0.1));
        assertEquals(List.of("weekday in January 06:00–14:00 not covered by an energy charge",
                "weekday in January 18:00–20:00 covered twice, by Day and Night"), messages(slips));
    }

    @Test
    void daysAndMonthsAlikeAreNamedTogether() {
        assertEquals(List.of("Saturday, Sunday, holiday in every month 00:00–24:00 not covered by an energy charge"),
                messages(tariff(EnergyCharge.of("Week", weekdays(ExampleTariffs.YEAR, 0, 24), 0.1))));
    }

    @Test
    void aGapOfLaterContractYearsIsNamedWithItsYear() {
        EnergyCharge firstYears = new EnergyCharge("First years",
                List.of(new ChargeRate(TariffPeriod.ALWAYS, new ContractYears(1, 3), BlockPrices.flat(0.1))));
        assertEquals(List.of("in contract year 4, weekday, Saturday, Sunday, holiday in every month 00:00–24:00 "
                + "not covered by an energy charge"), messages(tariff(firstYears)));
    }

    @Test
    void centsAreSuspected() {
        assertEquals(List.of("Energy is 14.8 per kWh, which looks like cents; was 0.148 meant?"),
                TariffCheck.prices(tariff(EnergyCharge.of("Energy", TariffPeriod.ALWAYS, 14.8))).stream()
                        .map(PriceFault::message).toList());
        assertEquals(List.of(), TariffCheck.prices(ExampleTariffs.generalService()));
    }

    @Test
    void monthsInARowAreNamedAsASpan() {
        Set<Integer> months = Set.of(0, 1, 2, 7, 9, 10);
        Tariff gaps = tariff(FREE_DAYS, EnergyCharge.of("Rest",
                weekdays(ExampleTariffs.YEAR.stream().filter(m -> !months.contains(m)).collect(Collectors.toSet()), 0, 24), 0.1));
        assertEquals(List.of("weekday in January to March, August, October to November 00:00–24:00 "
                + "not covered by an energy charge"), messages(gaps));
    }
}
