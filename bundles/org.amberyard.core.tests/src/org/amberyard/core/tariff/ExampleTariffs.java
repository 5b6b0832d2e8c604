package org.amberyard.core.tariff;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.tariff.TariffPeriod.Hours;

/** The invented tariffs of the example district. */
final class ExampleTariffs {
    static final Set<Integer> YEAR = months(0, 11);
    static final Set<Integer> SUMMER = months(5, 8);
    static final Set<DayClass> WEEKDAYS = Set.of(DayClass.WEEKDAY);
    static final Set<DayClass> FREE_DAYS = EnumSet.complementOf(EnumSet.of(DayClass.WEEKDAY));
    static final Hours ON_PEAK = hours(14, 20);
    static final Hours NIGHT = hours(22, 6);
    static final List<Hours> MID_PEAK = List.of(hours(6, 14), hours(20, 22));

    private ExampleTariffs() {
    }

    static Hours hours(int from, int to) {
        return new Hours(60 * from, 60 * to);
    }

    static Set<Integer> months(int first, int last) {
        return IntStream.rangeClosed(first, last).boxed().collect(Collectors.toSet());
    }

    private static TariffPeriod weekdays(Set<Integer> months, List<Hours> hours) {
        return new TariffPeriod(months, WEEKDAYS, hours);
    }

    private static List<EnergyCharge> energy(double onPeak, double midPeak, double offPeak) {
        return List.of(EnergyCharge.of("On-peak energy", weekdays(YEAR, List.of(ON_PEAK)), onPeak),
                EnergyCharge.of("Mid-peak energy", weekdays(YEAR, MID_PEAK), midPeak),
                new EnergyCharge("Off-peak energy",
                        List.of(ChargeRate.of(weekdays(YEAR, List.of(NIGHT)), offPeak),
                                ChargeRate.of(new TariffPeriod(YEAR, FREE_DAYS, List.of(Hours.ALL_DAY)), offPeak))));
    }

    private static Riders powerSupply() {
        return Riders.onEnergy(EnergyCharge.of("Power supply rider", TariffPeriod.ALWAYS, 0.0062));
    }

    /** Sheet 14, general service by time of use. */
    static Tariff generalService() {
        DemandCharge facilities = new DemandCharge("Facilities demand", List.of(ChargeRate.of(TariffPeriod.ALWAYS, 7.8)), 0,
                Optional.of(Ratchet.anyTime(0.6, 11)));
        Set<Integer> winter = YEAR.stream().filter(m -> !SUMMER.contains(m)).collect(Collectors.toSet());
        DemandCharge onPeak = new DemandCharge("On-peak demand",
                List.of(ChargeRate.of(weekdays(SUMMER, List.of(ON_PEAK)), 11.4),
                        ChargeRate.of(weekdays(winter, List.of(ON_PEAK)), 8.2)),
                0, Optional.empty());
        return new Tariff("KE-GS-TOU", List.of(FixedCharge.monthly("Customer charge", 68)), MinimumBill.NONE,
                energy(0.148, 0.104, 0.066), List.of(facilities, onPeak), powerSupply(), List.of(), 1);
    }

    /** Sheet 31, fleet charging on a meter of its own. */
    static Tariff fleetCharging() {
        DemandCharge demand = new DemandCharge("Demand",
                List.of(new ChargeRate(TariffPeriod.ALWAYS, new ContractYears(1, 3), BlockPrices.flat(0)),
                        new ChargeRate(TariffPeriod.ALWAYS, new ContractYears(4, 4), BlockPrices.flat(2.6)),
                        new ChargeRate(TariffPeriod.ALWAYS, ContractYears.from(5), BlockPrices.flat(5.2))),
                0, Optional.empty());
        return new Tariff("KE-EVD", List.of(FixedCharge.monthly("Customer charge", 112)), MinimumBill.NONE,
                energy(0.232, 0.139, 0.091), List.of(demand), powerSupply(), List.of(), 1);
    }
}
