package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.tariff.TariffPeriod.Hours;
import org.junit.jupiter.api.Test;

/** What follows from the charges of invented tariffs. */
class TariffRulesTest {
    private static final TariffPeriod ALWAYS = TariffPeriod.ALWAYS;
    private static final TariffPeriod ON_PEAK = hours(ExampleTariffs.hours(14, 20));

    private static TariffPeriod hours(Hours... hours) {
        return new TariffPeriod(ExampleTariffs.YEAR, ExampleTariffs.WEEKDAYS, List.of(hours));
    }

    private static DemandCharge demand(String name, TariffPeriod period, double price) {
        return new DemandCharge(name, List.of(ChargeRate.of(period, price)), 0, Optional.empty());
    }

    private static Tariff of(MinimumBill minimum, List<EnergyCharge> energy, List<DemandCharge> demand, Riders riders) {
        return new Tariff("Tariff", List.of(), minimum, energy, demand, riders, List.of(), 1);
    }

    private static Tariff billing(DemandCharge... demand) {
        return of(MinimumBill.NONE, List.of(), List.of(demand), Riders.NONE);
    }

    private static MarginalPrices prices(DemandCharge... demand) {
        return new MarginalPrices(billing(demand).inForce(0, 1), Loads.month(0, Loads.flat(50), Loads.flat(20)), PeakHistory.NONE);
    }

    /** A credit of 2 for taking service at a higher voltage lowers the charge of the same hours, not that of others. */
    @Test
    void aCreditOnDemandLowersTheChargeOfItsHours() {
        DemandCharge any = demand("Facilities", ALWAYS, 7);
        DemandCharge peak = demand("On-peak", ON_PEAK, 11);
        DemandCharge credit = demand("Voltage credit", ON_PEAK, -2);
        assertArrayEquals(new double[] {7, 9}, prices(any, peak, credit).demandPrices(), 1e-12);
        assertTrue(prices(any, peak, credit).support());
        assertArrayEquals(new double[] {7, 9}, prices(credit, any, peak).demandPrices(), 1e-12, "in whichever order they stand");
        assertArrayEquals(new double[] {0}, prices(demand("On-peak", ON_PEAK, 2), credit).demandPrices(), 1e-12);
    }

    @Test
    void aCreditThatNoChargeOutweighsIsNotWorthADemand() {
        DemandCharge credit = demand("Voltage credit", ON_PEAK, -2);
        assertArrayEquals(new double[] {7}, prices(demand("Facilities", ALWAYS, 7), credit).demandPrices(), 1e-12, "other hours");
        assertFalse(prices(demand("Facilities", ALWAYS, 7), credit).support());
        assertArrayEquals(new double[] {1}, prices(demand("On-peak", ON_PEAK, 1), credit).demandPrices(), 1e-12, "a smaller charge");
        assertFalse(prices(demand("On-peak", ON_PEAK, 1), credit).support());
        assertArrayEquals(new double[] {5, 1}, prices(demand("Large", ON_PEAK, 7), demand("Small", ON_PEAK, 1), credit).demandPrices(), 1e-12);
        assertArrayEquals(new double[] {1, 5}, prices(demand("Small", ON_PEAK, 1), demand("Large", ON_PEAK, 7), credit).demandPrices(), 1e-12);
    }

    /** A minimum of 30 kW is billed by the charge and not by the credit, so that below it they do not ask what both together ask. */
    @Test
    void aChargeWithAMinimumIsNettedButBoundsNothing() {
        DemandCharge minimum = new DemandCharge("On-peak", List.of(ChargeRate.of(ON_PEAK, 11)), 30, Optional.empty());
        MarginalPrices netted = prices(minimum, demand("Voltage credit", ON_PEAK, -2));
        assertArrayEquals(new double[] {9}, netted.demandPrices(), 1e-12);
        assertFalse(netted.support());
        MarginalPrices credited = prices(demand("On-peak", ON_PEAK, 11),
                new DemandCharge("Voltage credit", List.of(ChargeRate.of(ON_PEAK, -2)), 30, Optional.empty()));
        assertFalse(credited.support());
    }

    private static double hoursADay(Hours... hours) {
        Tariff tariff = of(MinimumBill.NONE, List.of(EnergyCharge.of("Energy", hours(hours), 1)), List.of(), Riders.NONE);
        return Bill.of(tariff, 1, Loads.month(0, Loads.flat(1), Loads.flat(0)), PeakHistory.NONE).total() / 22;
    }

    @Test
    void hoursThatSeveralSpansCoverCountOnce() {
        assertEquals(6, hoursADay(ExampleTariffs.hours(6, 10), ExampleTariffs.hours(8, 12)), 1e-9);
        assertEquals(6, hoursADay(ExampleTariffs.hours(6, 12), ExampleTariffs.hours(8, 10)), 1e-9);
        assertEquals(6, hoursADay(ExampleTariffs.hours(9, 12), ExampleTariffs.hours(6, 9)), 1e-9);
        assertEquals(5, hoursADay(ExampleTariffs.hours(6, 8), ExampleTariffs.hours(9, 12)), 1e-9);
        assertEquals(8, hoursADay(ExampleTariffs.hours(22, 6), ExampleTariffs.hours(23, 2)), 1e-9, "over midnight");
        assertEquals(2, hoursADay(ExampleTariffs.hours(22, 0)), 1e-9);
    }

    @Test
    void aTariffIsSettledWhenNoYearOfTheContractChangesIt() {
        assertEquals(1, ExampleTariffs.generalService().settledYear());
        assertEquals(5, ExampleTariffs.fleetCharging().settledYear());
        FixedCharge connection = new FixedCharge("Connection", 40, BillUnit.MONTH, new ContractYears(2, 6));
        Tariff tariff = new Tariff("Tariff", List.of(connection), MinimumBill.NONE, List.of(), List.of(), Riders.NONE, List.of(), 1);
        assertEquals(7, tariff.settledYear());
        assertEquals(1, billing().settledYear());
    }

    @Test
    void aTariffAddsUpWhereMoreNeverCostsLess() {
        EnergyCharge energy = EnergyCharge.of("Energy", ALWAYS, 0.1);
        assertTrue(of(MinimumBill.NONE, List.of(energy), List.of(), Riders.NONE).addsUp());
        assertTrue(of(MinimumBill.NONE, List.of(EnergyCharge.of("Free", ALWAYS, 0)), List.of(), Riders.NONE).addsUp());
        assertFalse(of(MinimumBill.ofCharges(400), List.of(energy), List.of(), Riders.NONE).addsUp());
        assertFalse(of(MinimumBill.NONE, List.of(energy), List.of(demand("Credit", ALWAYS, -1)), Riders.NONE).addsUp());
        assertFalse(of(MinimumBill.NONE, List.of(energy), List.of(), Riders.onEnergy(EnergyCharge.of("Fuel rider", ALWAYS, -0.01))).addsUp());
        assertFalse(MarginalPricesTest.hoursOfUse().addsUp());
    }

    @Test
    void aTariffRemembersByARatchetOfAChargeOrARider() {
        Optional<Ratchet> ratchet = Optional.of(Ratchet.anyTime(0.6, 11));
        DemandCharge remembering = new DemandCharge("Demand", List.of(ChargeRate.of(ALWAYS, 5)), 0, ratchet);
        assertFalse(billing(demand("Demand", ALWAYS, 5)).remembers());
        assertTrue(billing(demand("Demand", ALWAYS, 5), remembering).remembers());
        assertTrue(of(MinimumBill.NONE, List.of(), List.of(), new Riders(List.of(), List.of(remembering), List.of(), List.of())).remembers());
    }

    @Test
    void theMostBlocksAreThoseOfAnyCharge() {
        assertEquals(2, MarginalPricesTest.hoursOfUse().mostBlocks());
        assertEquals(1, billing().mostBlocks());
    }

    /** What rounding to cents changes is taken by the greatest part, so that parts add up to the line as printed. */
    @Test
    void theGreatestPartTakesWhatRoundingChanges() {
        assertEquals(new BillParts(10.25, 3, 1), new BillParts(10.2, 3, 1).withTotal(14.25));
        assertEquals(new BillParts(3, 10.25, 1), new BillParts(3, 10.2, 1).withTotal(14.25));
        assertEquals(new BillParts(1, 3, -10.25), new BillParts(1, 3, -10.2).withTotal(-6.25));
    }

    @Test
    void aPeriodCoversMinutesFromItsStartToItsEnd() {
        TariffPeriod night = new TariffPeriod(ExampleTariffs.SUMMER, ExampleTariffs.WEEKDAYS, List.of(ExampleTariffs.NIGHT));
        assertTrue(night.covers(6, DayClass.WEEKDAY, 22 * 60) && night.covers(6, DayClass.WEEKDAY, 0) && night.covers(6, DayClass.WEEKDAY, 359));
        assertFalse(night.covers(6, DayClass.WEEKDAY, 360) || night.covers(6, DayClass.WEEKDAY, 22 * 60 - 1));
        assertFalse(night.covers(6, DayClass.SATURDAY, 0) || night.covers(0, DayClass.WEEKDAY, 0));
        TariffPeriod day = hours(ExampleTariffs.ON_PEAK);
        assertTrue(day.covers(0, DayClass.WEEKDAY, 840) && day.covers(0, DayClass.WEEKDAY, 1199));
        assertFalse(day.covers(0, DayClass.WEEKDAY, 839) || day.covers(0, DayClass.WEEKDAY, 1200));
    }

    /** 22 days of 24 h at 50 kW and 9 at 20 kW. */
    @Test
    void energyAndPeakOfAMonth() {
        MeterMonth month = Loads.month(0, Loads.flat(50), Loads.flat(20));
        assertEquals(22 * 1200 + 9 * 480, month.kwh(), 1e-9);
        assertEquals(50, month.peakKw(), 0);
        LoadDay never = new LoadDay("never", DayClass.SUNDAY, 0, Loads.flat(99));
        assertEquals(20, new MeterMonth(0, List.of(month.days().get(1), never)).peakKw(), 0, "a kind of day that no day is like");
    }

    /** Night energy and rider with 6 % of tax and 2 % of losses; the second block of the tariff by blocks. */
    @Test
    void noEnergyIsCheaperThanTheLeastPrice() {
        assertEquals(0.066 + 0.0062, LeastEnergyPrice.of(ExampleTariffs.generalService()), 1e-12);
        assertEquals(0.05, LeastEnergyPrice.of(MarginalPricesTest.hoursOfUse()), 1e-12);
        Tariff flat = Tariff.flat("Flat", 10, 0.1, 0.02, 8, 0.06);
        Tariff primary = new Tariff(flat.name(), flat.customer(), flat.minimum(), flat.energy(), flat.demand(), flat.riders(), flat.taxes(), 1.02);
        assertEquals(0.12 * 1.06 * 1.02, LeastEnergyPrice.of(primary), 1e-12);
        ChargeRate later = new ChargeRate(ALWAYS, ContractYears.from(3), BlockPrices.flat(0.07));
        ChargeRate first = new ChargeRate(ALWAYS, new ContractYears(1, 2), BlockPrices.flat(0.11));
        assertEquals(0.07, LeastEnergyPrice.of(of(MinimumBill.NONE, List.of(new EnergyCharge("Energy", List.of(first, later))), List.of(), Riders.NONE)),
                1e-12, "in a later year of the contract");
    }

    /** Six tenths of 400 kW, and losses of 5 % on them, are billed and hold the schedule at 240 kW at the meter. */
    @Test
    void aRatchetCountsLosses() {
        DemandCharge ratcheted = new DemandCharge("Demand", List.of(ChargeRate.of(ALWAYS, 5)), 0, Optional.of(Ratchet.anyTime(0.6, 11)));
        Tariff tariff = new Tariff("Primary", List.of(), MinimumBill.NONE, List.of(), List.of(ratcheted), Riders.NONE, List.of(), 1.05);
        PeakHistory history = PeakHistory.ofPeaks(5, 400);
        MeterMonth july = Loads.month(6, Loads.flat(50), Loads.flat(20));
        BillLine line = Bill.of(tariff, 1, july, history).lines().get(0);
        assertEquals(252, line.quantity(), 1e-9);
        assertEquals(5, line.peak().orElseThrow().month());
        assertArrayEquals(new double[] {240}, new MarginalPrices(tariff.inForce(6, 1), july, history).demandFloorsKw(history), 1e-9);
    }

    /** From 20 kW on a kW costs 5 instead of 9, so a schedule that counts on 5 must not fall below 20 kW. */
    @Test
    void aBlockThatIsCheaperHoldsTheDemandUp() {
        DemandCharge falling = new DemandCharge("Demand", List.of(new ChargeRate(ALWAYS, ContractYears.ALL,
                new BlockPrices(List.of(new PriceBlock(0, 9), new PriceBlock(20, 5))))), 0, Optional.empty());
        DemandCharge rising = new DemandCharge("Demand", List.of(new ChargeRate(ALWAYS, ContractYears.ALL,
                new BlockPrices(List.of(new PriceBlock(0, 5), new PriceBlock(20, 9))))), 0, Optional.empty());
        assertArrayEquals(new double[] {20}, prices(falling).demandFloorsKw(PeakHistory.NONE), 1e-9);
        assertArrayEquals(new double[] {0}, prices(rising).demandFloorsKw(PeakHistory.NONE), 1e-9);
        assertEquals(List.of("Demand, first 20 kW", "Demand, over 20 kW"), Bill.of(billing(rising), 1,
                Loads.month(0, Loads.flat(50), Loads.flat(20)), PeakHistory.NONE).lines().stream().map(BillLine::label).toList());
    }

    @Test
    void blocksAreNamedByTheirWidths() {
        BlockPrices three = new BlockPrices(List.of(new PriceBlock(0, 0.1), new PriceBlock(500, 0.09), new PriceBlock(750, 150, 0.08),
                new PriceBlock(750, 300, 0.07)));
        EnergyCharge charge = new EnergyCharge("Energy", List.of(new ChargeRate(ALWAYS, ContractYears.ALL, three)));
        Bill bill = Bill.of(of(MinimumBill.NONE, List.of(charge), List.of(), Riders.NONE), 1, Loads.month(0, Loads.flat(50), Loads.flat(50)), PeakHistory.NONE);
        assertEquals(List.of("Energy, first 500 kWh", "Energy, next 250 and 150 kWh per kW", "Energy, next 150 kWh per kW",
                "Energy, over 750 and 300 kWh per kW"), bill.lines().stream().map(BillLine::label).toList());
    }

    /** 0.3333 of a kW at 1 is 33 cents a month; twelve of them are 3.96 and not 4. */
    @Test
    void aPrintedYearIsTheSumOfItsPrintedMonths() {
        BillYear year = BillYear.printedSteady(billing(demand("Demand", ALWAYS, 1)), 1, Loads.year(0.3333));
        assertEquals(3.96, year.total(), 1e-9);
        assertEquals(3.96, year.parts().demand(), 1e-9);
    }

    @Test
    void aPeakIsTheFirstOfEqualOnes() {
        double[] load = Loads.flat(10);
        Arrays.fill(load, 60, 64, 90);
        BillLine line = Bill.of(billing(demand("Demand", ALWAYS, 1)), 1, Loads.month(0, load, Loads.flat(90)), PeakHistory.NONE).lines().get(0);
        assertEquals("90.0 kW at 15:00 on school day, January", line.demand().orElseThrow().explanation());
    }
}
