package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Ratchet;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;
import org.junit.jupiter.api.Test;

/** Yards of buses and tariffs drawn at random: what foresight is worth. */
class DayByDayTest {
    private static final long SEED = 7;

    private static Tariff tariff(Random random) {
        int peakFrom = 60 * (6 + random.nextInt(8));
        int peakTo = peakFrom + 60 * (2 + random.nextInt(6));
        TariffPeriod peak = new TariffPeriod(TariffPeriod.ALWAYS.months(), EnumSet.of(DayClass.WEEKDAY),
                List.of(new TariffPeriod.Hours(peakFrom, peakTo)));
        TariffPeriod rest = new TariffPeriod(TariffPeriod.ALWAYS.months(), EnumSet.of(DayClass.WEEKDAY),
                List.of(new TariffPeriod.Hours(peakTo, peakFrom)));
        TariffPeriod free = new TariffPeriod(TariffPeriod.ALWAYS.months(), EnumSet.complementOf(EnumSet.of(DayClass.WEEKDAY)),
                List.of(TariffPeriod.Hours.ALL_DAY));
        double offPeak = 0.05 + 0.1 * random.nextDouble();
        Optional<Ratchet> ratchet = random.nextBoolean() ? Optional.of(Ratchet.anyTime(random.nextDouble(), 11)) : Optional.empty();
        return new Tariff("T", List.of(), MinimumBill.NONE,
                List.of(EnergyCharge.of("On-peak", peak, 0.1 + 0.3 * random.nextDouble()),
                        new EnergyCharge("Off-peak", List.of(rate(rest, offPeak), rate(free, offPeak)))),
                List.of(new DemandCharge("Demand", List.of(rate(TariffPeriod.ALWAYS, 10 * random.nextDouble())), 0, ratchet)),
                Riders.NONE, List.of(), 1);
    }

    private static ChargeRate rate(TariffPeriod period, double price) {
        return new ChargeRate(period, ContractYears.ALL, BlockPrices.flat(price));
    }

    private static YardInput yard(Random random) {
        List<YardBus> buses = new ArrayList<>();
        for (int place = 0; place < 4; place++) {
            buses.add(SampleBuses.bus(place, SampleBuses.route(18, 10 + 40 * random.nextDouble(), 10, 10 + 40 * random.nextDouble()), 1,
                    EnergyUse.ZERO));
        }
        return SampleBuses.yard(buses, PortUnit.of(AC, 1, 2 + random.nextInt(3)), ChargeRule.of(ChargePolicy.LEAST_COST),
                random.nextBoolean(), new Metering(tariff(random), random.nextBoolean(), List.of(), OptionalInt.empty()),
                BuildingLoad.constant(40 * random.nextDouble(), SampleBuses.STEPS), 18);
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void costsNoLessThanLeastCost(@ForAll long seed) {
        YardInput yard = yard(new Random(seed));
        YardYear least = YardYear.of(yard);
        YardYear daily = YardYear.of(yard.under(ChargePolicy.DAY_BY_DAY));
        double cost = daily.parts().total();
        assertTrue(least.parts().total() <= cost + 1e-6 * cost, () -> least.parts().total() + " is above " + cost);
        assertTrue(least.totalMissingKwh() <= daily.totalMissingKwh() + 1);
    }

    /** Afternoons are dear, and a demand that one day would not pay for is worth it for the month. */
    @Test
    void foresightIsWorthSomething() {
        YardInput yard = yard(new Random(SEED));
        double least = YardYear.of(yard).parts().total();
        double daily = YardYear.of(yard.under(ChargePolicy.DAY_BY_DAY)).parts().total();
        assertTrue(daily > 1.01 * least, daily + " against " + least);
    }
}
