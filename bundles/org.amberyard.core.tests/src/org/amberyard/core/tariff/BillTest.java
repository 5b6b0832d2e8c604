package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BillTest {
    private static final int JULY = 6;
    private static final MeterMonth JULY_LOAD = Loads.month(JULY, Loads.flatWithPeak(50, 17, 15, 200), Loads.flat(20));

    private static List<String> lines(Bill bill) {
        return bill.lines().stream()
                .map(l -> String.format("%s %.1f %s %.4f %.3f", l.label(), l.quantity(), l.unit().label(), l.price(), l.amount()))
                .toList();
    }

    /**
     * Weekdays: on-peak 6 h at 50 kW and 150 kW more for a quarter of an hour, 337.5 kWh; mid-peak 500 kWh; night 400 kWh; a
     * free day 480 kWh. The earlier 400 kW of March hold the facilities demand at 240 kW.
     */
    @Test
    void generalServiceByHand() {
        Bill bill = Bill.of(ExampleTariffs.generalService(), 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60));
        assertEquals(List.of("Customer charge 1.0 month 68.0000 68.000", "On-peak energy 7425.0 kWh 0.1480 1098.900",
                "Mid-peak energy 11000.0 kWh 0.1040 1144.000", "Off-peak energy 13120.0 kWh 0.0660 865.920",
                "Facilities demand 240.0 kW 7.8000 1872.000", "On-peak demand 200.0 kW 11.4000 2280.000",
                "Power supply rider 31545.0 kWh 0.0062 195.579"), lines(bill));
        assertEquals(7524.399, bill.total(), 1e-9);
        assertEquals(new BillParts(1098.9 + 1144 + 865.92 + 195.579, 4152, 68).energy(), bill.parts().energy(), 1e-9);
        assertEquals(4152, bill.parts().demand(), 1e-9);
    }

    @Test
    void linesTellWhatSetTheirDemand() {
        Bill bill = Bill.of(ExampleTariffs.generalService(), 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60));
        assertEquals("60 % of 400.0 kW on the bill, March", bill.lines().get(4).demand().orElseThrow().explanation());
        assertEquals("200.0 kW at 17:15 on school day, July", bill.lines().get(5).demand().orElseThrow().explanation());
    }

    @Test
    void printedLinesAreCentsAndSumToTheTotal() {
        Bill bill = Bill.printed(ExampleTariffs.generalService(), 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60));
        assertEquals(195.58, bill.lines().get(6).amount(), 1e-12);
        assertEquals(7524.40, bill.total(), 1e-9);
    }

    @Test
    void demandIsPhasedInByContractYear() {
        assertEquals(0, demandOfYear(3), 0);
        assertEquals(2.6 * 200, demandOfYear(4), 1e-9);
        assertEquals(5.2 * 200, demandOfYear(9), 1e-9);
    }

    private static double demandOfYear(int contractYear) {
        return Bill.of(ExampleTariffs.fleetCharging(), contractYear, JULY_LOAD, PeakHistory.NONE).amount(BillComponent.DEMAND);
    }

    @Test
    void historyMustEndJustBeforeTheMonth() {
        PeakHistory untilMay = PeakHistory.ofPeaks(3, 10, 10);
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> Bill.of(ExampleTariffs.generalService(), 1, JULY_LOAD, untilMay));
        assertEquals("July comes after May but months must follow one another", refused.getMessage());
    }

    /** First 150 kWh for each of 50 kW, 7,500 kWh at 0.09; the weekdays' 26,400 kWh less those at 0.05. */
    @Test
    void blocksByHoursOfUse() {
        Bill bill = Bill.of(MarginalPricesTest.hoursOfUse(), 1, Loads.month(0, Loads.flat(50), Loads.flat(0)), PeakHistory.NONE);
        assertEquals(List.of("Energy, first 150 kWh per kW 7500.0 kWh 0.0900 675.000",
                "Energy, over 150 kWh per kW 18900.0 kWh 0.0500 945.000", "Demand 50.0 kW 6.0000 300.000"), lines(bill));
    }

    /**
     * Charges of 10 for 31 days, rider of 5 % on them, minimum 400 that counts both, tax of 6 % on all but the minimum and of
     * 10 % on the tax.
     */
    @Test
    void sharesMinimumAndTaxesByHand() {
        Tariff tariff = new Tariff("Shares", List.of(FixedCharge.daily("Meter", 10)), MinimumBill.ofCharges(400), List.of(),
                List.of(), new Riders(List.of(), List.of(), List.of(),
                        List.of(new ShareCharge("Surcharge", 0.05, Set.of(BillComponent.CUSTOMER)))),
                List.of(new ShareCharge("State tax", 0.06, Set.of(BillComponent.CUSTOMER, BillComponent.RIDER)),
                        new ShareCharge("City tax", 0.1, Set.of(BillComponent.TAX))),
                1);
        Bill bill = Bill.of(tariff, 1, JULY_LOAD, PeakHistory.NONE);
        assertEquals(List.of("Meter 31.0 day 10.0000 310.000", "Surcharge 310.0 money 0.0500 15.500",
                "minimum bill 1.0 month 74.5000 74.500", "State tax 325.5 money 0.0600 19.530",
                "City tax 19.5 money 0.1000 1.953"), lines(bill));
        assertEquals(new BillParts(0, 0, bill.total()), bill.parts());
    }

    /** Half the bill is energy and half demand, so is the tax. */
    @Test
    void taxesStandWithWhatTheyFallOn() {
        MeterMonth month = Loads.month(0, Loads.flat(10), Loads.flat(0));
        BillParts parts = Bill.of(Tariff.flat("Flat", 0, 0.1, 0, 52.8, 0.06), 1, month, PeakHistory.NONE).parts();
        assertEquals(528 * 1.06, parts.energy(), 1e-9);
        assertEquals(528 * 1.06, parts.demand(), 1e-9);
    }

    @Test
    void aLossFactorRaisesEnergyAndDemand() {
        Tariff flat = Tariff.flat("Flat", 7, 0.1, 0.01, 5, 0);
        Tariff secondary = new Tariff(flat.name(), flat.customer(), flat.minimum(), flat.energy(), flat.demand(),
                flat.riders(), flat.taxes(), 1.02);
        BillParts metered = Bill.of(flat, 1, JULY_LOAD, PeakHistory.NONE).parts();
        BillParts billed = Bill.of(secondary, 1, JULY_LOAD, PeakHistory.NONE).parts();
        assertEquals(1.02 * metered.energy(), billed.energy(), 1e-9);
        assertEquals(1.02 * metered.demand(), billed.demand(), 1e-9);
        assertEquals(metered.fixed(), billed.fixed(), 0);
    }

    @Test
    void aMinimumDemandIsBilledAndExplained() {
        DemandCharge demand = new DemandCharge("Demand", List.of(ChargeRate.of(TariffPeriod.ALWAYS, 5)), 250, Optional.empty());
        Tariff tariff = new Tariff("Minimum", List.of(), MinimumBill.NONE, List.of(), List.of(demand), Riders.NONE, List.of(), 1);
        BillLine line = Bill.of(tariff, 1, JULY_LOAD, PeakHistory.NONE).lines().get(0);
        assertEquals(1250, line.amount(), 0);
        assertEquals("at least 250.0 kW are billed", line.demand().orElseThrow().explanation());
        assertEquals(Optional.empty(), line.peak());
    }

    @Test
    void aBoundaryWithinAStepSharesItsEnergy() {
        TariffPeriod untilSevenMinutesPast = new TariffPeriod(ExampleTariffs.YEAR, ExampleTariffs.WEEKDAYS,
                List.of(new TariffPeriod.Hours(0, 7)));
        EnergyCharge start = EnergyCharge.of("Start", untilSevenMinutesPast, 1);
        Tariff tariff = new Tariff("Start", List.of(), MinimumBill.NONE, List.of(start), List.of(), Riders.NONE, List.of(), 1);
        assertEquals(22 * 50 * 7 / 60.0, Bill.of(tariff, 1, JULY_LOAD, PeakHistory.NONE).total(), 1e-9);
    }

    /** From 0:08 to 0:22 seven minutes of the first quarter of an hour count, at 50 kW, and seven of the second, at 80 kW. */
    @Test
    void hoursThatBeginAndEndWithinStepsShareTheirEnergy() {
        TariffPeriod minutes = new TariffPeriod(ExampleTariffs.YEAR, ExampleTariffs.WEEKDAYS, List.of(new TariffPeriod.Hours(8, 22)));
        EnergyCharge charge = EnergyCharge.of("Minutes", minutes, 1);
        Tariff tariff = new Tariff("Minutes", List.of(), MinimumBill.NONE, List.of(charge), List.of(), Riders.NONE, List.of(), 1);
        MeterMonth month = Loads.month(JULY, Loads.flatWithPeak(50, 0, 15, 80), Loads.flat(20));
        assertEquals(22 * (50 + 80) * 7 / 60.0, Bill.of(tariff, 1, month, PeakHistory.NONE).total(), 1e-9);
    }

    /** A rider of 0.5 on 200 kW, one of 12 a month, and a charge of the second and third years of the contract. */
    @Test
    void ridersOnDemandAndByTheMonthStandOnTheBill() {
        DemandCharge perKw = new DemandCharge("Wildfire rider", List.of(ChargeRate.of(TariffPeriod.ALWAYS, 0.5)), 0, Optional.empty());
        FixedCharge connection = new FixedCharge("Connection", 40, BillUnit.MONTH, new ContractYears(2, 3));
        Tariff tariff = new Tariff("Riders", List.of(connection), MinimumBill.NONE, List.of(), List.of(),
                new Riders(List.of(), List.of(perKw), List.of(FixedCharge.monthly("Bond rider", 12)), List.of()), List.of(), 1);
        assertEquals(List.of("Wildfire rider 200.0 kW 0.5000 100.000", "Bond rider 1.0 month 12.0000 12.000"),
                lines(Bill.of(tariff, 1, JULY_LOAD, PeakHistory.NONE)));
        assertEquals(List.of(112.0, 152.0, 152.0, 112.0),
                IntStream.rangeClosed(1, 4).mapToObj(year -> Bill.of(tariff, year, JULY_LOAD, PeakHistory.NONE).total()).toList());
    }

    /** Without a demand charge blocks go by the highest demand with its losses: 1.02 x 200 kW x 150 kWh are 30,600 kWh. */
    @Test
    void blocksByHoursOfUseGoByTheMeteredDemandWhereNoneIsBilled() {
        ChargeRate rate = new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL,
                new BlockPrices(List.of(new PriceBlock(0, 0.09), new PriceBlock(0, 150, 0.05))));
        Tariff tariff = new Tariff("Hours of use", List.of(), MinimumBill.NONE, List.of(new EnergyCharge("Energy", List.of(rate))),
                List.of(), Riders.NONE, List.of(), 1.02);
        List<BillLine> bill = Bill.of(tariff, 1, JULY_LOAD, PeakHistory.NONE).lines();
        assertEquals(30_600, bill.get(0).quantity(), 1e-9);
        assertEquals(1.02 * (22 * (1200 + 37.5) + 9 * 480) - 30_600, bill.get(1).quantity(), 1e-9);
    }

    @Test
    void pricesOfOneChargeMustAgreeWithinAMonth() {
        List<ChargeRate> rates = List.of(ChargeRate.of(TariffPeriod.ALWAYS, 1), ChargeRate.of(TariffPeriod.ALWAYS, 2));
        Exception refused = assertThrows(IllegalArgumentException.class, () -> new EnergyCharge("Energy", rates));
        assertEquals("Energy has different prices in January: charges of different prices need different names",
                refused.getMessage());
    }

    @Test
    void blocksMustRise() {
        List<PriceBlock> falling = List.of(new PriceBlock(0, 1), new PriceBlock(500, 1), new PriceBlock(500, 2));
        Exception refused = assertThrows(IllegalArgumentException.class, () -> new BlockPrices(falling));
        assertEquals("block 3 starts at 500.0 but must start above 500.0", refused.getMessage());
    }

    /** 100 of energy lifted to 500; with energy at three times its price 300, still lifted to 500; at six times 600. */
    @Test
    void aMinimumIsAskedOfRisenCharges() {
        Tariff tariff = new Tariff("Minimum", List.of(), MinimumBill.ofCharges(500),
                List.of(EnergyCharge.of("Energy", TariffPeriod.ALWAYS, 0.1)), List.of(), Riders.NONE,
                List.of(ShareCharge.ofCharges("Tax", 0.1)), 1);
        Bill bill = Bill.of(tariff, 1, Loads.month(JULY, Loads.flat(1000 / 31.0 / 24), Loads.flat(1000 / 31.0 / 24)),
                PeakHistory.NONE);
        assertEquals(new BillParts(110, 0, 440).total(), bill.total(), 1e-9);
        assertParts(330, 220, bill.parts(tariff, new BillIndex(3, 1, 1)));
        assertParts(660, 0, bill.parts(tariff, new BillIndex(6, 1, 1)));
        assertParts(330, 330, bill.parts(tariff, new BillIndex(3, 1, 1.2)));
    }

    private static void assertParts(double energy, double fixed, BillParts parts) {
        assertEquals(energy, parts.energy(), 1e-9);
        assertEquals(fixed, parts.fixed(), 1e-9);
    }

    @Test
    void withoutAMinimumEachPartRisesByItsOwn() {
        Tariff tariff = ExampleTariffs.generalService();
        Bill bill = Bill.of(tariff, 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60));
        BillIndex index = new BillIndex(1.3, 0.8, 1.1);
        assertEquals(index.of(bill.parts()).total(), bill.parts(tariff, index).total(), 1e-9);
        assertEquals(index.of(bill.parts()).demand(), bill.parts(tariff, index).demand(), 1e-9);
    }
}
