package org.amberyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.PriceBlock;
import org.amberyard.core.tariff.Ratchet;
import org.amberyard.core.tariff.TariffPeriod;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.meta.Season;
import org.amberyard.model.meta.TariffDay;

/** Makes one charge of the rows of a tariff that bear its name. */
final class ChargeRows {
    private static final Map<TariffDay, DayClass> DAYS = Map.of(TariffDay.WEEKDAY, DayClass.WEEKDAY, TariffDay.SATURDAY,
            DayClass.SATURDAY, TariffDay.SUNDAY, DayClass.SUNDAY, TariffDay.HOLIDAY, DayClass.HOLIDAY);

    private ChargeRows() {
    }

    /** When and in which years a row applies; rows that agree on it are blocks of one price. */
    private record When(TariffPeriod period, ContractYears years) {
    }

    /** A charge or rider on energy. */
    static EnergyCharge energy(String name, List<TariffCharge> rows) {
        return new EnergyCharge(name, rates(rows, TariffCharge::getPricePerKwh));
    }

    /** A charge on demand; its ratchet remembers the demand of its own hours. */
    static DemandCharge demand(String name, List<TariffCharge> rows) {
        List<ChargeRate> rates = rates(rows, TariffCharge::getPricePerKw);
        Optional<Ratchet> ratchet = rows.stream().filter(r -> r.getRatchetShare() > 0).findFirst()
                .map(r -> new Ratchet(r.getRatchetShare(), r.getRatchetMonths(),
                        rates.stream().map(ChargeRate::period).distinct().toList()));
        return new DemandCharge(name, rates, 0, ratchet);
    }

    private static List<ChargeRate> rates(List<TariffCharge> rows, ToDoubleFunction<TariffCharge> price) {
        Map<When, List<PriceBlock>> blocks = new LinkedHashMap<>();
        rows.stream().sorted(Comparator.comparingDouble(TariffCharge::getFromKwh)).forEach(row -> blocks
                .computeIfAbsent(when(row), w -> new ArrayList<>())
                .add(new PriceBlock(row.getFromKwh(), price.applyAsDouble(row))));
        return blocks.entrySet().stream()
                .map(e -> new ChargeRate(e.getKey().period(), e.getKey().years(), new BlockPrices(e.getValue()))).toList();
    }

    private static When when(TariffCharge row) {
        return new When(period(row), new ContractYears(row.getFirstContractYear(), row.getLastContractYear()));
    }

    private static TariffPeriod period(TariffCharge row) {
        boolean allDay = row.getFromMin() == row.getToMin();
        return new TariffPeriod(Season.of(row).stream().map(Month::getValue).collect(Collectors.toSet()),
                TariffDay.of(row.getDays()).stream().map(DAYS::get).collect(Collectors.toSet()),
                List.of(allDay ? TariffPeriod.Hours.ALL_DAY : new TariffPeriod.Hours(row.getFromMin(), row.getToMin())));
    }
}
