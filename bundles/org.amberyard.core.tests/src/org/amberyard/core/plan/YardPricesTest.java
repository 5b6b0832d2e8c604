package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.core.duty.Climate;
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

    /** Blocks of one price are planned, a price without blocks is not; what a kWh and a kW cost is the same. */
    @Test
    void aPriceWithoutBlocksIsThatOfAnyLoad() {
        YardPrices flat = resultAt(BlockPrices.flat(0.11)).yardPrices(1);
        YardPrices blocks = resultAt(new BlockPrices(List.of(new PriceBlock(0, 0.11), new PriceBlock(100, 0.11)))).yardPrices(1);
        for (int month = 0; month < Climate.MONTHS; month++) {
            for (int hour = 0; hour < 24; hour++) {
                assertEquals(blocks.perKwh(month, 60 * hour), flat.perKwh(month, 60 * hour));
                assertEquals(blocks.perKw(month, 60 * hour), flat.perKw(month, 60 * hour));
            }
        }
        assertEquals(0.11, flat.perKwh(0, 120), 1e-12);
    }

    /** The first 100 kWh of a month at 0.50: the electric plan goes far beyond them, the diesel plan has no yard. */
    @Test
    void remediesPayTheBlockThatTheYardOfThePlanReaches() {
        StudyResult result = resultAt(BLOCKS);
        assertEquals(0.05, result.yardPrices(1).perKwh(0, 120), 1e-12);
        assertEquals(0.50, result.yardPrices(0).perKwh(0, 120), 1e-12);
        assertEquals(0.50, result.figures().prices().perKwh(0, 120), 1e-12);
    }

    private static StudyResult resultAt(BlockPrices energy) {
        Tariff tariff = new Tariff("Blocks", List.of(), MinimumBill.NONE,
                List.of(new EnergyCharge("Energy", List.of(new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL, energy)))),
                List.of(), Riders.NONE, List.of(), 1);
        StudyInput study = TinyDistrict.study();
        DepotInput depot = study.depot();
        StudyInput priced = TinyDistrict.withDepot(study, new DepotInput(depot.ports(), depot.works(),
                depot.service(), depot.window(),
                Metering.own(tariff), List.of(), depot.charging()));
        return StudyEvaluation.of(priced, DutyTable.of(priced.duty()));
    }
}
