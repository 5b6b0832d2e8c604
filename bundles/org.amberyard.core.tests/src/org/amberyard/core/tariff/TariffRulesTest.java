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
    void aPeakIsTheFirstOfEqualOnes() {
        double[] load = Loads.flat(10);
        Arrays.fill(load, 60, 64, 90);
        BillLine line = Bill.of(billing(demand("Demand", ALWAYS, 1)), 1, Loads.month(0, load, Loads.flat(90)), PeakHistory.NONE).lines().get(0);
        assertEquals("90.0 kW at 15:00 on school day, January", line.demand().orElseThrow().explanation());
    }
}
