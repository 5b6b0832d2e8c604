package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.tariff.TariffPeriod.Hours;

class BillPropertyTest {

    private static double near(double money) {
        return 1e-9 * Math.max(1, Math.abs(money));
    }

    @Property(tries = 100)
    void componentsAndPartsAndLinesSumToTheTotal(@ForAll long seed) {
        RandomTariffs made = new RandomTariffs(seed);
        for (Bill bill : BillYear.steady(made.tariff(true), 1, made.year()).bills()) {
            double components = Stream.of(BillComponent.values()).mapToDouble(bill::amount).sum();
            double lines = bill.lines().stream().mapToDouble(BillLine::amount).sum();
            assertEquals(bill.total(), components, near(components));
            assertEquals(bill.total(), lines, near(lines));
        }
    }

    @Property(tries = 100)
    void aPrintedBillIsInCentsAndCloseToTheExactOne(@ForAll long seed) {
        RandomTariffs made = new RandomTariffs(seed);
        Tariff tariff = made.tariff(false);
        MeterMonth month = made.year().get(0);
        Bill printed = Bill.printed(tariff, 1, month, PeakHistory.NONE);
        long cents = printed.lines().stream().mapToLong(l -> Math.round(100 * l.amount())).sum();
        printed.lines().forEach(l -> assertEquals(Math.round(100 * l.amount()), 100 * l.amount(), 1e-6));
        assertEquals(cents, 100 * printed.total(), 1e-4);
        assertEquals(Bill.of(tariff, 1, month, PeakHistory.NONE).total(), printed.total(), 0.006 * printed.lines().size());
    }

    @Property(tries = 100)
    void moreLoadNeverLowersABill(@ForAll long seed) {
        RandomTariffs made = new RandomTariffs(seed);
        Tariff tariff = made.tariff(true);
        List<MeterMonth> months = made.year();
        List<Bill> less = BillYear.steady(tariff, 1, months).bills();
        List<Bill> more = BillYear.steady(tariff, 1, made.raised(months)).bills();
        for (int month = 0; month < less.size(); month++) {
            double before = less.get(month).total();
            double after = more.get(month).total();
            assertTrue(after >= before - near(before), before + " fell to " + after);
        }
    }

    @Property(tries = 100)
    void aRatchetNeverLowersABill(@ForAll long seed) {
        RandomTariffs with = new RandomTariffs(seed);
        Tariff ratcheted = with.tariff(true);
        Tariff free = new RandomTariffs(seed).tariff(false);
        List<MeterMonth> months = with.year();
        for (PeakHistory history : List.of(PeakHistory.NONE, new PeakHistory(months))) {
            List<Bill> freeBills = BillYear.after(free, 1, months, history).bills();
            List<Bill> ratchetedBills = BillYear.after(ratcheted, 1, months, history).bills();
            for (int month = 0; month < months.size(); month++) {
                double base = freeBills.get(month).total();
                assertTrue(ratchetedBills.get(month).total() >= base - near(base));
            }
        }
    }

    @Property(tries = 100)
    void scaledPricesScaleTheBill(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 100) double factor) {
        RandomTariffs made = new RandomTariffs(seed);
        Tariff tariff = made.tariff(true);
        List<MeterMonth> months = made.year();
        BillParts parts = BillYear.steady(tariff, 1, months).parts().times(factor);
        BillParts scaled = BillYear.steady(RandomTariffs.priced(tariff, p -> factor * p), 1, months).parts();
        assertEquals(parts.energy(), scaled.energy(), near(parts.energy()));
        assertEquals(parts.demand(), scaled.demand(), near(parts.demand()));
        assertEquals(parts.fixed(), scaled.fixed(), near(parts.fixed()));
    }

    @Property(tries = 100)
    void aFlatPriceBillsTheSameHoweverHoursAreSplit(@ForAll long seed, @ForAll @IntRange(min = 0, max = 1439) int from,
            @ForAll @IntRange(min = 1, max = 1438) int minutes, @ForAll @DoubleRange(min = 0, max = 1) double price) {
        MeterMonth month = new RandomTariffs(seed).year().get(0);
        Hours day = new Hours(from, (from + minutes) % 1440);
        Hours night = new Hours((from + minutes) % 1440, from);
        Tariff whole = energyOnly(EnergyCharge.of("Energy", TariffPeriod.ALWAYS, price));
        Tariff split = energyOnly(EnergyCharge.of("Day", hours(day), price), EnergyCharge.of("Night", hours(night), price));
        double base = Bill.of(whole, 1, month, PeakHistory.NONE).total();
        assertEquals(base, Bill.of(split, 1, month, PeakHistory.NONE).total(), near(base));
        assertEquals(List.of(), TariffCheck.hours(split));
    }

    private static TariffPeriod hours(Hours hours) {
        return new TariffPeriod(TariffPeriod.ALWAYS.months(), TariffPeriod.ALWAYS.days(), List.of(hours));
    }

    private static Tariff energyOnly(EnergyCharge... energy) {
        return new Tariff("Energy only", List.of(), MinimumBill.NONE, List.of(energy), List.of(), Riders.NONE, List.of(), 1);
    }

    /** Energy is moved within the eight hours of the night. */
    @Property(tries = 100)
    void loadMovedBetweenHoursOfOnePriceCostsTheSameEnergy(@ForAll long seed, @ForAll @IntRange(min = 0, max = 31) int from,
            @ForAll @IntRange(min = 0, max = 31) int to, @ForAll @DoubleRange(min = 0, max = 50) double kw) {
        double[] load = new Random(seed).doubles(96, 50, 80).toArray();
        double[] moved = load.clone();
        moved[nightStep(from)] -= kw;
        moved[nightStep(to)] += kw;
        assertEquals(energyCharge(load), energyCharge(moved), 1e-7);
    }

    private static int nightStep(int quarter) {
        return (88 + quarter) % 96;
    }

    private static double energyCharge(double[] load) {
        return Bill.of(ExampleTariffs.generalService(), 1, Loads.month(6, load, load), PeakHistory.NONE)
                .amount(BillComponent.ENERGY);
    }
}
