package org.amberyard.core.yard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargeShortfall;
import org.amberyard.core.tariff.BillIndex;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.tariff.BillYear;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.Tariff;

/**
 * A yard's year: energy and peaks by month, what each bus drew, and the bills. Loads by step are not kept; {@link YardPlanner}
 * gives them again for the same input.
 *
 * @param input the yard
 * @param months months from January to December
 * @param busKwh energy at the meter that each bus needs, heat included, in the order of the yard's buses, kWh
 * @param missingKwh how much of it the yard cannot bring, kWh
 * @param bills bills of the meter that charging is on
 * @param withoutCharging bills of the same meter without charging, where it is shared with the building
 */
public record YardYear(YardInput input, List<Month> months, List<Double> busKwh, List<Double> missingKwh, BillYear bills,
        Optional<BillYear> withoutCharging) {

    /**
     * A month in single figures.
     *
     * @param month month, 0 for January
     * @param yardKwh energy of charging, heat and standby at the meter, kWh
     * @param yardPeakKw highest demand of charging, heat and standby, kW
     * @param servicePeakKw highest demand behind the service, the building included, kW
     * @param swaps plug swaps
     * @param shortfalls buses that leave without the charge that they need, on the stretches of the month
     * @param movedKwh energy that a least-cost schedule had planned when the packs could not take it, kWh
     * @param costGap how far the bill at most lies above the least cost, money; see {@link MonthLoad}
     */
    public record Month(int month, double yardKwh, double yardPeakKw, double servicePeakKw, double swaps,
            List<Shortfall> shortfalls, double movedKwh, OptionalDouble costGap) {

        public Month {
            shortfalls = List.copyOf(shortfalls);
        }
    }

    /**
     * A bus that leaves without the charge that it needs.
     *
     * @param stretch words for the stretch
     * @param bus its place among the yard's buses
     * @param shortfall what is missing
     */
    public record Shortfall(String stretch, int bus, ChargeShortfall shortfall) {
    }

    public YardYear {
        months = List.copyOf(months);
        busKwh = List.copyOf(busKwh);
        missingKwh = List.copyOf(missingKwh);
    }

    /** Plans and bills a year. */
    public static YardYear of(YardInput input) {
        return of(input, new YardPlanner(input).year());
    }

    /** Bills a year whose loads are known. */
    public static YardYear of(YardInput input, List<MonthLoad> loads) {
        return billed(input, loads.stream().map(m -> ChargedMonth.of(m, input)).toList());
    }

    /** Bills months that are known. */
    static YardYear billed(YardInput input, List<ChargedMonth> months) {
        Optional<BillYear> without = input.metering().shared()
                ? Optional.of(steady(input, months.stream().flatMap(m -> m.withoutCharging().stream()).toList())) : Optional.empty();
        return new YardYear(input, months.stream().map(ChargedMonth::figures).toList(), byBus(input, months, ChargedMonth::busKwh),
                byBus(input, months, ChargedMonth::missingKwh), steady(input, months.stream().map(ChargedMonth::metered).toList()), without);
    }

    /** The same year of a yard that differs in what its ports cost alone. */
    YardYear ofYard(YardInput yard) {
        return input.ports().equals(yard.ports()) ? this
                : new YardYear(yard, months, busKwh, missingKwh, bills, withoutCharging);
    }

    private static BillYear steady(YardInput input, List<MeterMonth> months) {
        return BillYear.steady(input.metering().tariff(), input.contractYear(), months);
    }

    private static List<Double> byBus(YardInput input, List<ChargedMonth> months, Function<ChargedMonth, List<double[]>> kwh) {
        return IntStream.range(0, input.buses().size()).mapToObj(bus -> months.stream().flatMap(m -> kwh.apply(m).stream())
                .mapToDouble(stretch -> stretch[bus]).sum()).toList();
    }

    /** Money of the year for charging: the bills, less those of the building alone where both share a meter. */
    public BillParts parts() {
        return withoutCharging.map(w -> bills.parts().plus(w.parts().times(-1))).orElse(bills.parts());
    }

    /** The same when prices have risen. */
    public BillParts parts(BillIndex index) {
        Tariff tariff = input.metering().tariff();
        BillParts with = bills.parts(tariff, index);
        return withoutCharging.map(w -> with.plus(w.parts(tariff, index).times(-1))).orElse(with);
    }

    /** Energy at the meter that the bus in a place of the fleet needs, kWh; none for an engine bus. */
    public double neededKwh(int place) {
        return IntStream.range(0, input.buses().size()).filter(b -> input.buses().get(b).place() == place)
                .mapToDouble(busKwh::get).sum();
    }

    /** Energy of charging, heat and standby at the meter, kWh. */
    public double yardKwh() {
        return months.stream().mapToDouble(Month::yardKwh).sum();
    }

    /** Energy at the meter with what the yard cannot bring, kWh. */
    public double neededKwh() {
        return yardKwh() + totalMissingKwh();
    }

    /** Buses that leave without the charge that they need, each once, by their labels. */
    public List<String> busesShort() {
        return months.stream().flatMap(m -> m.shortfalls().stream()).map(s -> s.shortfall().plugIn().label()).distinct().sorted().toList();
    }

    /** Energy at the meter that the yard cannot bring, kWh. */
    public double totalMissingKwh() {
        return missingKwh.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Plug swaps of the year. */
    public double swaps() {
        return months.stream().mapToDouble(Month::swaps).sum();
    }

    /** Highest demand of charging, heat and standby, kW. */
    public double yardPeakKw() {
        return months.stream().mapToDouble(Month::yardPeakKw).max().orElseThrow();
    }

    /** Highest demand behind the service, kW. */
    public double servicePeakKw() {
        return months.stream().mapToDouble(Month::servicePeakKw).max().orElseThrow();
    }
}
