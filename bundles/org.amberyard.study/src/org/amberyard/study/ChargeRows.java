package org.amberyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.HoursFault;
import org.amberyard.core.tariff.PriceBlock;
import org.amberyard.core.tariff.Ratchet;
import org.amberyard.core.tariff.TariffPeriod;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffDays;
import org.amberyard.model.meta.Season;

/** Makes one charge of the rows of a tariff that bear its name. */
final class ChargeRows {
    private static final int NO_END = (int) DepotPackage.Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR.getDefaultValue();
    private static final Map<TariffDays, Set<DayClass>> DAYS = Map.of(
            TariffDays.ALL, Set.of(DayClass.values()),
            TariffDays.WEEKDAYS, Set.of(DayClass.WEEKDAY),
            TariffDays.WEEKDAYS_AND_SATURDAYS, Set.of(DayClass.WEEKDAY, DayClass.SATURDAY),
            TariffDays.SATURDAYS, Set.of(DayClass.SATURDAY),
            TariffDays.SUNDAYS_AND_HOLIDAYS, Set.of(DayClass.SUNDAY, DayClass.HOLIDAY),
            TariffDays.WEEKENDS_AND_HOLIDAYS, Set.of(DayClass.SATURDAY, DayClass.SUNDAY, DayClass.HOLIDAY));

    private static final Comparator<TariffCharge> BLOCK_ORDER =
            Comparator.comparingDouble(TariffCharge::getFromKwh).thenComparingDouble(TariffCharge::getFromHoursOfUse);

    private ChargeRows() {
    }

    /** When and in which years a row applies; rows that agree on it are blocks of one price. */
    private record When(TariffPeriod period, ContractYears years) {
    }

    /** A charge or rider on energy. */
    static EnergyCharge energy(String name, List<TariffCharge> rows) {
        return new EnergyCharge(name, rates(rows, TariffCharge::getPricePerKwh));
    }

    /**
     * A charge on demand; its ratchet is that of the first row that has one, and remembers the demand in the hours of
     * all rows, each
     * in its months, whatever their years of the contract.
     */
    static DemandCharge demand(String name, List<TariffCharge> rows) {
        List<ChargeRate> rates = rates(rows, TariffCharge::getPricePerKw);
        Optional<Ratchet> ratchet = rows.stream().filter(r -> r.getRatchetShare() > 0).findFirst()
                .map(r -> new Ratchet(r.getRatchetShare(), r.getRatchetMonths(),
                        rates.stream().map(ChargeRate::period).distinct().toList()));
        return new DemandCharge(name, rates, 0, ratchet);
    }

    private static List<ChargeRate> rates(List<TariffCharge> rows, ToDoubleFunction<TariffCharge> price) {
        Map<When, List<PriceBlock>> blocks = new LinkedHashMap<>();
        rows.stream().sorted(BLOCK_ORDER).forEach(row -> blocks
                .computeIfAbsent(when(row), w -> new ArrayList<>())
                .add(new PriceBlock(row.getFromKwh(), row.getFromHoursOfUse(), price.applyAsDouble(row))));
        return blocks.entrySet().stream()
                .map(e -> new ChargeRate(e.getKey().period(), e.getKey().years(), new BlockPrices(e.getValue()))).toList();
    }

    /** True when a row is one of those that cover hours which are covered more than once. */
    static boolean isOf(TariffCharge row, HoursFault fault) {
        When when = when(row);
        return fault.charges().contains(row.getCharge()) && when.years().contains(fault.contractYear())
                && when.period().covers(fault.months().get(0), fault.days().get(0), fault.hours().fromMin());
    }

    private static When when(TariffCharge row) {
        int last = row.getLastContractYear() == NO_END ? Integer.MAX_VALUE : row.getLastContractYear();
        return new When(period(row), new ContractYears(row.getFirstContractYear(), last));
    }

    private static TariffPeriod period(TariffCharge row) {
        boolean allDay = row.getFromMin() == row.getToMin();
        return new TariffPeriod(Season.of(row).stream().map(Month::getValue).collect(Collectors.toSet()),
                DAYS.get(row.getDays()),
                List.of(allDay ? TariffPeriod.Hours.ALL_DAY : new TariffPeriod.Hours(row.getFromMin(), row.getToMin())));
    }
}
