package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.amberyard.core.tariff.TariffPeriod.Hours;
import org.junit.jupiter.api.Test;

class MarginalPricesTest {
    private static final double SMALL = 1e-4;

    private static double bill(Tariff tariff, MeterMonth month, PeakHistory history) {
        return Bill.of(tariff, 1, month, history).total();
    }

    private static MeterMonth changed(MeterMonth month, int day, int step, double moreKw) {
        List<LoadDay> days = new ArrayList<>(month.days());
        LoadDay before = days.get(day);
        double[] kw = before.kw().clone();
        kw[step] += moreKw;
        days.set(day, new LoadDay(before.label(), before.dayClass(), before.days(), kw));
        return new MeterMonth(month.month(), days);
    }

    /** A little more load in any step costs its energy at the price of the moment, unless it raises a demand. */
    @Property(tries = 100)
    void theNextKilowattHourCostsItsPrice(@ForAll long seed) {
        RandomTariffs made = new RandomTariffs(seed);
        Tariff tariff = withoutMinimum(made.tariff(false));
        MeterMonth month = made.year().get(0);
        MarginalPrices prices = new MarginalPrices(tariff.inForce(month.month(), 1), month, PeakHistory.NONE);
        for (int day = 0; day < month.days().size(); day++) {
            LoadDay load = month.days().get(day);
            int step = lowest(load.kw());
            MeterMonth more = changed(month, day, step, SMALL);
            if (!billedKw(tariff, more).equals(billedKw(tariff, month))) {
                continue;
            }
            double moreKwh = load.days() * SMALL * load.stepMin() / 60;
            double asked = bill(tariff, more, PeakHistory.NONE)
                    - bill(tariff, month, PeakHistory.NONE);
            double price = prices.pricePerKwh(load.dayClass(), step * load.stepMin(), (step + 1) * load.stepMin());
            assertEquals(price * moreKwh, asked, 1e-6 * Math.max(1, load.days()));
        }
    }

    private static List<Double> billedKw(Tariff tariff, MeterMonth month) {
        TariffMonth terms = tariff.inForce(month.month(), 1);
        return Stream.of(BillComponent.DEMAND, BillComponent.RIDER).flatMap(c -> terms.demandTerms(c).stream())
                .map(d -> d.billed(month, PeakHistory.NONE, tariff.lossFactor()).kw()).toList();
    }

    private static int lowest(double[] kw) {
        int lowest = 0;
        for (int step = 1; step < kw.length; step++) {
            lowest = kw[step] < kw[lowest] ? step : lowest;
        }
        return lowest;
    }

    private static Tariff withoutMinimum(Tariff tariff) {
        return new Tariff(tariff.name(), tariff.customer(), MinimumBill.NONE, tariff.energy(), tariff.demand(),
                tariff.riders(), tariff.taxes(), tariff.lossFactor());
    }

    @Test
    void pricesOfTheExample() {
        MeterMonth july = Loads.month(6, Loads.flat(50), Loads.flat(20));
        PeakHistory history = PeakHistory.ofPeaks(5, 400);
        MarginalPrices prices = new MarginalPrices(ExampleTariffs.generalService().inForce(6, 1), july, history);
        assertEquals(0.148 + 0.0062, prices.pricePerKwh(DayClass.WEEKDAY, 840, 855), 1e-12);
        assertEquals(0.066 + 0.0062, prices.pricePerKwh(DayClass.SATURDAY, 840, 855), 1e-12);
        assertEquals(List.of("Facilities demand", "On-peak demand"), prices.demandNames());
        assertArrayEquals(new double[] {7.8, 11.4}, prices.demandPrices(), 1e-12);
        assertArrayEquals(new double[] {240, 0}, prices.demandFloorsKw(history), 1e-12);
        assertEquals(3, prices.demandSet(DayClass.WEEKDAY, 840, 855));
        assertEquals(1, prices.demandSet(DayClass.WEEKDAY, 1200, 1215));
        assertEquals(1, prices.demandSet(DayClass.SUNDAY, 840, 855));
    }

    /** 6 % tax and 5 % losses raise the price of energy and demand alike. */
    @Test
    void taxesAndLossesAreIncluded() {
        Tariff flat = Tariff.flat("Flat", 10, 0.1, 0.02, 8, 0.06);
        Tariff primary = new Tariff(flat.name(), flat.customer(), flat.minimum(), flat.energy(), flat.demand(), flat.riders(),
                flat.taxes(), 1.05);
        MeterMonth month = Loads.month(0, Loads.flat(50), Loads.flat(20));
        MarginalPrices prices = new MarginalPrices(primary.inForce(0, 1), month, PeakHistory.NONE);
        assertEquals(0.12 * 1.06 * 1.05, prices.pricePerKwh(DayClass.SUNDAY, 0, 15), 1e-12);
        assertEquals(8 * 1.06 * 1.05, prices.demandPrices()[0], 1e-12);
    }

    /** With 150 kWh per kW at 0.09 and the rest at 0.05, a kW more moves 150 kWh up: 6 + 150 × 0.04 = 12 money/kW. */
    @Test
    void blocksByHoursOfUseArePartOfTheDemandPrice() {
        Tariff tariff = hoursOfUse();
        MeterMonth month = Loads.month(0, Loads.flat(50), Loads.flat(20));
        MarginalPrices prices = new MarginalPrices(tariff.inForce(0, 1), month, PeakHistory.NONE);
        assertEquals(12, prices.demandPrices()[0], 1e-12);
        assertEquals(0.05, prices.pricePerKwh(DayClass.WEEKDAY, 0, 15), 1e-12);
        double more = bill(tariff, changed(month, 0, 40, 1), PeakHistory.NONE) - bill(tariff, month, PeakHistory.NONE);
        assertEquals(12 + 22 * 0.25 * 0.05, more, 1e-9);
    }

    static Tariff hoursOfUse() {
        return blocks(0.09, 0.05, demand("Demand", TariffPeriod.ALWAYS, 6));
    }

    private static DemandCharge demand(String name, TariffPeriod period, double price) {
        return new DemandCharge(name, List.of(ChargeRate.of(period, price)), 0, Optional.empty());
    }

    /** The first 150 kWh for each kW at a price, the rest at another. */
    private static Tariff blocks(double first, double rest, DemandCharge... demand) {
        return energy(new BlockPrices(List.of(new PriceBlock(0, first), new PriceBlock(0, 150, rest))), demand);
    }

    private static Tariff energy(BlockPrices prices, DemandCharge... demand) {
        ChargeRate rate = new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL, prices);
        return new Tariff("Blocks", List.of(), MinimumBill.NONE, List.of(new EnergyCharge("Energy", List.of(rate))), List.of(demand),
                Riders.NONE, List.of(), 1);
    }

    private static MarginalPrices january(Tariff tariff, OptionalInt block) {
        return new MarginalPrices(tariff.inForce(0, 1), Loads.month(0, Loads.flat(50), Loads.flat(20)), PeakHistory.NONE, block);
    }

    private static double[] demandPrices(Tariff tariff) {
        return january(tariff, OptionalInt.empty()).demandPrices();
    }

    /** A kW more moves 150 kWh from 0.05 to 0.09, which is 6, whether or not a charge asks for demand besides. */
    @Test
    void blocksByHoursOfUseFallOnTheGreatestDemand() {
        TariffPeriod weekends = new TariffPeriod(ExampleTariffs.YEAR, ExampleTariffs.FREE_DAYS, List.of(Hours.ALL_DAY));
        MarginalPrices bare = january(blocks(0.09, 0.05), OptionalInt.empty());
        assertEquals(List.of("Greatest demand, by hours of use"), bare.demandNames());
        assertArrayEquals(new double[] {6}, bare.demandPrices(), 1e-12);
        assertEquals(1, bare.demandSet(DayClass.SUNDAY, 0, 15));
        assertArrayEquals(new double[] {4, 9}, demandPrices(blocks(0.09, 0.05, demand("Weekend", weekends, 4),
                demand("Any time", TariffPeriod.ALWAYS, 3))), 1e-12);
        assertArrayEquals(new double[] {9, 4}, demandPrices(blocks(0.09, 0.05, demand("Any time", TariffPeriod.ALWAYS, 3),
                demand("Weekend", weekends, 4))), 1e-12);
        assertArrayEquals(new double[] {2}, demandPrices(blocks(0.05, 0.09, demand("Demand", TariffPeriod.ALWAYS, 8))), 1e-12);
        assertArrayEquals(new double[] {0}, demandPrices(blocks(0.05, 0.09, demand("Demand", TariffPeriod.ALWAYS, 4))), 1e-12,
                "nobody is paid for drawing more");
        assertArrayEquals(new double[0], demandPrices(blocks(0.05, 0.09)), 1e-12);
    }

    @Test
    void pricesOfABlockAreAskedWhereverTheLoadEnds() {
        MarginalPrices first = january(hoursOfUse(), OptionalInt.of(0));
        assertEquals(0.09, first.pricePerKwh(DayClass.WEEKDAY, 0, 15), 1e-12);
        assertArrayEquals(new double[] {6}, first.demandPrices(), 1e-12);
        MarginalPrices last = january(hoursOfUse(), OptionalInt.of(5));
        assertEquals(0.05, last.pricePerKwh(DayClass.WEEKDAY, 0, 15), 1e-12);
        assertArrayEquals(new double[] {12}, last.demandPrices(), 1e-12);
        assertEquals(List.of(0.05, 12.0, 0.0), last.figures());
    }

    /** Where more is cheaper by the unit, a load far from the expected one can cost less than its price says. */
    @Test
    void pricesBoundAllBillsWhereAllBlocksRise() {
        BlockPrices rising = new BlockPrices(List.of(new PriceBlock(0, 0.05), new PriceBlock(1000, 0.09)));
        BlockPrices falling = new BlockPrices(List.of(new PriceBlock(0, 0.09), new PriceBlock(1000, 0.05)));
        DemandCharge flat = demand("Demand", TariffPeriod.ALWAYS, 6);
        DemandCharge fallingKw = new DemandCharge("Demand", List.of(new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL,
                new BlockPrices(List.of(new PriceBlock(0, 9), new PriceBlock(20, 5))))), 0, Optional.empty());
        assertTrue(january(energy(rising, flat), OptionalInt.empty()).support());
        assertFalse(january(energy(falling, flat), OptionalInt.empty()).support());
        assertFalse(january(energy(rising, fallingKw), OptionalInt.empty()).support());
        assertFalse(january(hoursOfUse(), OptionalInt.empty()).support(), "blocks by demand");
        assertFalse(january(energy(rising, flat), OptionalInt.of(0)).support(), "prices of a block alone");
        DemandCharge paid = demand("Credit", new TariffPeriod(ExampleTariffs.YEAR, ExampleTariffs.FREE_DAYS, List.of(Hours.ALL_DAY)), -1);
        assertFalse(january(energy(rising, flat, paid), OptionalInt.empty()).support(), "a credit that no charge of its hours outweighs");
    }

    @Test
    void ofMoreDemandChargesThanFitASetNoneAreTaken() {
        DemandCharge[] many = IntStream.range(0, 32).mapToObj(i -> demand("Demand " + i, TariffPeriod.ALWAYS, 1)).toArray(DemandCharge[]::new);
        assertEquals("Blocks has 32 demand charges in a month but must have no more than 31", assertThrows(IllegalArgumentException.class,
                () -> demandPrices(energy(BlockPrices.flat(0.1), many))).getMessage());
        assertEquals(31, demandPrices(energy(BlockPrices.flat(0.1), Arrays.copyOf(many, 31))).length);
    }
}
