package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;
import org.junit.jupiter.api.Test;

class LoadMemoryTest {
    private static final double DEMAND_PRICE = 9;

    private static YardInput yard(ChargePolicy policy, double energyPrice, int contractYear, double firstRunKwh) {
        Tariff tariff = new Tariff("T", List.of(), MinimumBill.NONE,
                List.of(EnergyCharge.of("Energy", TariffPeriod.ALWAYS, energyPrice)),
                List.of(new DemandCharge("Demand", List.of(new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL,
                        BlockPrices.flat(DEMAND_PRICE))), 0, Optional.empty())),
                Riders.NONE, List.of(), 1);
        List<YardBus> buses = List.of(SampleBuses.bus(0, SampleBuses.route(18, firstRunKwh, 10, 20), 1, EnergyUse.ZERO),
                SampleBuses.bus(1, SampleBuses.route(18, 35, 10, 20), 1, EnergyUse.ZERO));
        YardInput first = SampleBuses.yard(buses, PortUnit.of(AC, 1, 2), ChargeRule.of(policy), true, Metering.own(tariff),
                BuildingLoad.constant(10, SampleBuses.STEPS), 18);
        return new YardInput(first.buses(), first.ports(), first.rule(), first.midday(), first.reserveShare(), first.metering(),
                contractYear, first.demandIndex(), first.building(), first.calendar(), first.stepMin(), first.swaps(),
                first.siteLimitKw());
    }

    @Test
    void loadsFollowFromNeitherTariffNorContract() {
        LoadMemory memory = new LoadMemory();
        List<MonthLoad> loads = memory.year(yard(ChargePolicy.LEAST_COST, 0.1, 1, 30));
        assertSame(loads, memory.year(yard(ChargePolicy.LEAST_COST, 0.2, 2, 30)));
        assertNotSame(loads, memory.year(yard(ChargePolicy.LEAST_COST, 0.1, 1, 31)));
    }

    @Test
    void aYardOnAnotherTariffIsBilledAnewAndAsByItself() {
        for (ChargePolicy policy : ChargePolicy.ofYards()) {
            if (policy != ChargePolicy.SET_TIME) {
                YardMemory memory = new YardMemory();
                YardYear cheap = memory.year(yard(policy, 0.1, 1, 30));
                YardYear dear = memory.next().year(yard(policy, 0.2, 1, 30));
                YardYear alone = YardYear.of(yard(policy, 0.2, 1, 30));
                assertEquals(alone.parts(), dear.parts());
                assertEquals(alone.months(), dear.months());
                assertEquals(alone.busKwh(), dear.busKwh());
                assertEquals(alone.missingKwh(), dear.missingKwh());
                assertNotEquals(cheap.parts(), dear.parts());
            }
        }
    }
}
