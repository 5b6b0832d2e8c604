package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.PriceBlock;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;
import org.amberyard.core.yard.Metering;
import org.junit.jupiter.api.Test;

class YardPricesTest {
    private static final BlockPrices BLOCKS = new BlockPrices(List.of(new PriceBlock(0, 0.50), new PriceBlock(100,
            0.05)));

    /** The first 100 kWh of a month at 0.50: the electric plan goes far beyond them, the diesel plan has no yard. */
    @Test
    void remediesPayTheBlockThatTheYardOfThePlanReaches() {
        Tariff tariff = new Tariff("Blocks", List.of(), MinimumBill.NONE,
                List.of(new EnergyCharge("Energy", List.of(new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL,
                        BLOCKS)))),
                List.of(), Riders.NONE, List.of(), 1);
        StudyInput study = TinyDistrict.study();
        DepotInput depot = study.depot();
        StudyInput priced = TinyDistrict.withDepot(study, new DepotInput(depot.ports(), depot.works(),
                depot.service(), depot.window(),
                Metering.own(tariff), List.of(), depot.charging()));
        StudyResult result = StudyEvaluation.of(priced, DutyTable.of(priced.duty()));
        assertEquals(0.05, result.yardPrices(1).perKwh(0, 120), 1e-12);
        assertEquals(0.50, result.yardPrices(0).perKwh(0, 120), 1e-12);
        assertEquals(0.50, result.figures().prices().perKwh(0, 120), 1e-12);
    }
}
