package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.PriceBlock;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;
import org.junit.jupiter.api.Test;

/** Yards by hand in which least cost once was dearer than another policy. */
class LeastCostYardTest {
    private static final double CENT = 0.01;
    private static final int DAY_MIN = 1440;
    private static final int SERVICE_DAYS = 18;
    private static final int MONTHS_OF_SERVICE = 11;

    private static TariffPeriod hours(int fromMin, int toMin) {
        return new TariffPeriod(TariffPeriod.ALWAYS.months(), EnumSet.allOf(DayClass.class),
                List.of(new TariffPeriod.Hours(fromMin, toMin)));
    }

    private static Tariff tariff(List<EnergyCharge> energy, DemandCharge... demand) {
        return new Tariff("T", List.of(), MinimumBill.NONE, energy, List.of(demand), Riders.NONE, List.of(), 1);
    }

    private static EnergyCharge flat(double price) {
        return EnergyCharge.of("Energy", TariffPeriod.ALWAYS, price);
    }

    /** Ten buses that stand from 18:00 to 6:00 and take 60 kWh each night. */
    private static List<YardBus> parked() {
        EnergyUse use = new EnergyUse(1, 1, SERVICE_DAYS * MONTHS_OF_SERVICE * 60, 0, EnergyCauses.ZERO, 0, 0, 0, 0);
        return IntStream.range(0, 10).mapToObj(i -> new YardBus(i, "Bus " + i, 19.2, 60, SampleBuses.PACK, 0.9, Optional.empty(),
                1, use)).toList();
    }

    /** Six buses that fill their packs in the night. */
    private static List<YardBus> driven(double morningKwh, double afternoonKwh) {
        return IntStream.range(0, 6).mapToObj(i -> SampleBuses.bus(i,
                SampleBuses.route(SERVICE_DAYS, morningKwh, 0, afternoonKwh), 1, EnergyUse.ZERO)).toList();
    }

    private static YardInput yard(List<YardBus> buses, int ports, Tariff tariff, int stepMin, double demandIndex, double limitKw) {
        YardInput yard = SampleBuses.yard(buses, PortUnit.of(AC, 1, ports),
                new ChargeRule(ChargePolicy.LEAST_COST, 1320, 300), false,
                Metering.own(tariff), BuildingLoad.constant(0, DAY_MIN / stepMin), SERVICE_DAYS);
        return new YardInput(buses, yard.ports(), yard.rule(), false, yard.reserveShare(), yard.metering(), 1, demandIndex,
                yard.building(), yard.calendar(), stepMin, yard.swaps(), limitKw);
    }

    private static YardInput yard(List<YardBus> buses, Tariff tariff, int stepMin) {
        return yard(buses, buses.size(), tariff, stepMin, 1, Double.POSITIVE_INFINITY);
    }

    private static double bill(YardInput yard, ChargePolicy policy) {
        return YardYear.of(yard.under(policy)).parts().total();
    }

    private static double gap(YardYear year) {
        return year.months().stream().mapToDouble(m -> m.costGap().orElseThrow()).sum();
    }

    /** Packs near full and buses that come and leave within a step hold nothing back: the programme knows both. */
    @Test
    void taperAndPartStepsCostNothing() {
        Tariff tariff = tariff(List.of(flat(0.1)), DemandCharge.of("Demand", TariffPeriod.ALWAYS, 8));
        for (int stepMin : new int[] {5, 15, 60}) {
            YardInput yard = yard(driven(45, 50), tariff, stepMin);
            YardYear least = YardYear.of(yard);
            assertTrue(least.parts().total() <= bill(yard, ChargePolicy.SPREAD) + CENT, stepMin + " min");
            assertEquals(0, gap(least), CENT);
            assertEquals(0, least.months().stream().mapToDouble(YardYear.Month::movedKwh).sum(), 1e-3);
        }
    }

    /** Energy is cheap from 3:00 to 5:30, when a full pack cannot take all: the gap is the price of what moves to dear hours. */
    @Test
    void theGapIsThatOfTheScheduleThatThePacksTake() {
        Tariff tariff = tariff(List.of(EnergyCharge.of("Night", hours(180, 330), 0.05),
                EnergyCharge.of("Day", hours(330, 180), 0.15)));
        YardYear least = YardYear.of(yard(driven(22, 22), tariff, 15));
        double movedKwh = least.months().stream().mapToDouble(YardYear.Month::movedKwh).sum();
        assertTrue(movedKwh > 100, "moved " + movedKwh);
        assertEquals((0.15 - 0.05) * movedKwh, gap(least), CENT);
    }

    /** Eight plugs for ten buses: charging at once would draw 154 kW and be cheap, but the site has 70. */
    @Test
    void noScheduleOfAnotherPolicyIsTakenThatTheSiteDoesNotBear() {
        Tariff tariff = tariff(List.of(EnergyCharge.of("Evening", hours(1080, DAY_MIN), 0.05),
                EnergyCharge.of("Rest", hours(0, 1080), 0.15)));
        YardYear limited = YardYear.of(yard(parked(), 8, tariff, 15, 1, 70));
        assertEquals(70, limited.yardPeakKw(), 1e-6);
        assertEquals(0, limited.totalMissingKwh(), 1e-6);
    }

    /** Where demand prices have tripled against energy, the cheap evening is no longer worth the peak of eight ports. */
    @Test
    void policiesAreComparedAtThePricesOfTheYear() {
        Tariff tariff = tariff(List.of(EnergyCharge.of("Evening", hours(1080, DAY_MIN), 0.05),
                EnergyCharge.of("Rest", hours(0, 1080), 0.15)),
                DemandCharge.of("Demand", TariffPeriod.ALWAYS, 3));
        YardInput yard = yard(parked(), 8, tariff, 15, 3, Double.POSITIVE_INFINITY);
        YardYear least = YardYear.of(yard);
        double cost = least.parts().energy() + 3 * least.parts().demand();
        assertTrue(cost < 18000, "cost " + cost);
        assertTrue(least.parts().total() > bill(yard, ChargePolicy.AT_ONCE), "at base prices at once would be cheaper");
    }

    /** Demand on-peak counts to 21:30 at 30 money/kW: a step that it counts in part is one that it counts. */
    @Test
    void stepsAcrossABoundaryOfTheTariffAreSeenAsTheyAreBilled() {
        Tariff tariff = tariff(List.of(flat(0.1)), DemandCharge.of("On-peak", hours(960, 1290), 30),
                DemandCharge.of("Any time", TariffPeriod.ALWAYS, 2));
        YardInput hourly = yard(parked(), tariff, 60);
        YardYear least = YardYear.of(hourly);
        assertTrue(least.parts().total() < bill(hourly, ChargePolicy.SET_TIME) - 100);
        assertEquals(0, gap(least), CENT);
        assertTrue(least.parts().total() >= YardYear.of(yard(parked(), tariff, 30)).parts().total() - CENT);
    }

    private static List<ChargeRate> rates(TariffPeriod period, PriceBlock... blocks) {
        return List.of(new ChargeRate(period, ContractYears.ALL, new BlockPrices(List.of(blocks))));
    }

    /** The first 150 kW at 20 money/kW, more at 5: full power ends in the cheap block, an even load costs half of it. */
    @Test
    void fallingBlocksOfDemandAreSoughtFromEachEnd() {
        Tariff tariff = tariff(List.of(EnergyCharge.of("Night", hours(120, 360), 0.08),
                EnergyCharge.of("Day", hours(360, 120), 0.10)),
                new DemandCharge("Demand", rates(TariffPeriod.ALWAYS, new PriceBlock(0, 20), new PriceBlock(150, 5)), 0,
                        Optional.empty()));
        YardInput yard = yard(parked(), tariff, 15);
        YardYear least = YardYear.of(yard);
        assertTrue(least.parts().total() < bill(yard, ChargePolicy.SPREAD) - 400, "least cost " + least.parts().total());
        assertTrue(least.months().stream().allMatch(m -> m.costGap().isEmpty()), "falling blocks have no bound");
    }

    /** The evening at 0.05 up to 5,000 kWh and then at 0.50: not all of the cheap block is worth the dear one. */
    @Test
    void risingBlocksOfEnergyAreNoTrap() {
        Tariff tariff = tariff(List.of(new EnergyCharge("Evening",
                rates(hours(1080, 1320), new PriceBlock(0, 0.05), new PriceBlock(5000, 0.5))),
                EnergyCharge.of("Rest", hours(1320, 1080), 0.1)));
        YardInput yard = yard(parked(), tariff, 15);
        YardYear least = YardYear.of(yard);
        assertTrue(least.parts().total() <= bill(yard, ChargePolicy.SPREAD) + CENT);
        double bound = least.parts().total() - gap(least);
        assertTrue(bound > 0 && bound <= 10908.24 + CENT, "5,000 kWh a month in the evening would cost 10,908.24; bound " + bound);
    }

    /** 100 h of use at 0.30, then 0.05, and no demand charge: the demand sets how much is dear. */
    @Test
    void blocksByHoursOfUseHaveADemandPriceWithoutADemandCharge() {
        Tariff tariff = new Tariff("T", List.of(), MinimumBill.NONE,
                List.of(new EnergyCharge("Energy",
                        rates(TariffPeriod.ALWAYS, new PriceBlock(0, 0, 0.3), new PriceBlock(0, 100, 0.05)))),
                List.of(), Riders.onEnergy(EnergyCharge.of("Adder", hours(360, 120), 0.02)), List.of(), 1);
        YardInput yard = yard(parked(), tariff, 15);
        assertTrue(bill(yard, ChargePolicy.LEAST_COST) < bill(yard, ChargePolicy.SPREAD) - 400);
    }

    /** A credit of 0.50 on each kW of a charge of 8 leaves 7.50 to schedule for. */
    @Test
    void aCreditOnDemandIsNetted() {
        Riders credit = new Riders(List.of(), List.of(DemandCharge.of("Credit", TariffPeriod.ALWAYS, -0.5)), List.of(), List.of());
        DemandCharge demand = DemandCharge.of("Demand", TariffPeriod.ALWAYS, 8);
        Tariff credited = new Tariff("T", List.of(), MinimumBill.NONE, List.of(flat(0.1)), List.of(demand), credit, List.of(), 1);
        YardYear least = YardYear.of(yard(driven(45, 50), credited, 15));
        double net = bill(yard(driven(45, 50), tariff(List.of(flat(0.1)), DemandCharge.of("Net", TariffPeriod.ALWAYS, 7.5)), 15),
                ChargePolicy.LEAST_COST);
        assertEquals(net, least.parts().total(), CENT);
        assertEquals(0, gap(least), CENT);
    }
}
