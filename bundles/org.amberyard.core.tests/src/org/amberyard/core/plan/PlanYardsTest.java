package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.YearMonth;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.FixedCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.PeakMoment;
import org.amberyard.core.tariff.Ratchet;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.MonthLoad;
import org.amberyard.core.yard.PeakLoad;
import org.amberyard.core.yard.PortChoice;
import org.amberyard.core.yard.PortCurve;
import org.amberyard.core.yard.PortOffer;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardInput;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardOutage;
import org.amberyard.core.yard.YardPlanner;
import org.amberyard.core.yard.YardYear;
import org.junit.jupiter.api.Test;

/** Yards of the tiny district's electric plan; invented. */
class PlanYardsTest {
    private static final int LAST = TinyDistrict.YEARS - 1;
    private final StudyInput study = TinyDistrict.study();
    private final DutyTable duty = DutyTable.of(study.duty());
    private final PlanResult plan = TinyDistrict.evaluated(study, duty, 1);

    /** Invented: dear from 14:00 to 20:00 on weekdays, two demand charges, one with a ratchet. */
    private static Tariff byHours() {
        TariffPeriod weekdays = new TariffPeriod(TariffPeriod.ALWAYS.months(), EnumSet.of(DayClass.WEEKDAY),
                List.of(new TariffPeriod.Hours(840, 1200)));
        TariffPeriod nights = new TariffPeriod(TariffPeriod.ALWAYS.months(), EnumSet.of(DayClass.WEEKDAY),
                List.of(new TariffPeriod.Hours(1200, 840)));
        TariffPeriod free = new TariffPeriod(TariffPeriod.ALWAYS.months(),
                EnumSet.complementOf(EnumSet.of(DayClass.WEEKDAY)), List.of(TariffPeriod.Hours.ALL_DAY));
        EnergyCharge offPeak = new EnergyCharge("Off-peak", List.of(rate(nights, 0.08), rate(free, 0.08)));
        DemandCharge anyTime = new DemandCharge("Demand", List.of(rate(TariffPeriod.ALWAYS, 7)), 0,
                Optional.of(Ratchet.anyTime(0.6, 11)));
        return new Tariff("By hours", List.of(FixedCharge.monthly("Customer charge", 50)), MinimumBill.NONE,
                List.of(EnergyCharge.of("On-peak", weekdays, 0.2), offPeak),
                List.of(anyTime, DemandCharge.of("On-peak demand", weekdays, 9)), Riders.NONE, List.of(), 1);
    }

    private static ChargeRate rate(TariffPeriod period, double price) {
        return new ChargeRate(period, ContractYears.ALL, BlockPrices.flat(price));
    }

    private YardInput byHours(boolean shared, ChargePolicy policy) {
        StudyInput other = TinyDistrict.withDepot(study, depot(shared));
        PortFleet ports = new PortFleet(other.depot(), other.plans().get(1).ports());
        FleetHistory fleet = FleetRollForward.of(other, other.plans().get(1), duty, ports);
        return new PlanYards(other, duty, ports).of(fleet, LAST).with(new ChargeRule(policy, 1320, 1320));
    }

    private DepotInput depot(boolean shared) {
        DepotInput depot = study.depot();
        return new DepotInput(depot.ports(), depot.works(), depot.service(), depot.window(),
                new Metering(byHours(), shared, List.of(), OptionalInt.empty()), List.of(), depot.charging());
    }

    /** What leaves the meter for a bus is what its driving of the year takes, over the efficiency of the port. */
    @Test
    void energyOfTheYardIsThatOfTheDriving() {
        for (ChargePolicy policy : ChargePolicy.values()) {
            for (int year = 1; year <= LAST; year++) {
                YardYear yard = YardYear.of(plan.yards().get(year).input().with(new ChargeRule(policy, 1320, 1320)));
                for (VehicleYear bus : plan.fleet().inYear(year)) {
                    double used = study.types().get(bus.vehicle().type()).electric().isPresent()
                            ? (bus.use().batteryKwh() + bus.use().gridKwh()) / 0.88 : 0;
                    assertEquals(used, yard.neededKwh(bus.place()), 1e-9 * Math.max(1, used), policy + " " + bus.place());
                }
            }
        }
    }

    @Test
    void whatTheMeterCountsIsBilled() {
        YardYear yard = plan.yards().get(LAST);
        double billed = yard.bills().bills().stream().mapToDouble(b -> b.parts().energy()).sum() / 0.105;
        assertEquals(yard.yardKwh(), billed, 1e-6);
        assertEquals(yard.neededKwh(), yard.yardKwh(), 1e-9);
    }

    private static YardComparison compared(YardInput yard) {
        return new YardComparison(List.of(yard), List.of(), new PortOffer(List.of(), 0), List.of(), new YardMemory());
    }

    /** Nor than charging for which only one day at a time is known. */
    @Test
    void leastCostIsNeverDearer() {
        for (boolean shared : new boolean[] {false, true}) {
            YardComparison compared = compared(byHours(shared, ChargePolicy.LEAST_COST));
            double least = compared.under(0, ChargePolicy.LEAST_COST).parts().total();
            for (ChargePolicy policy : ChargePolicy.values()) {
                double cost = compared.under(0, policy).parts().total();
                assertTrue(least <= cost + 1e-6, shared + " " + policy + ": " + least + " > " + cost);
            }
            assertTrue(least < 0.9 * compared.under(0, ChargePolicy.AT_ONCE).parts().total(), "charging on return is dear");
        }
    }

    /** The bill that the schedule is made for is the bill that the tariff prints, to a cent. */
    @Test
    void theScheduleHasTheBillThatItPromises() {
        YardYear yard = YardYear.of(byHours(true, ChargePolicy.LEAST_COST));
        double moved = yard.months().stream().mapToDouble(YardYear.Month::movedKwh).sum();
        double gap = yard.months().stream().mapToDouble(m -> m.costGap().orElseThrow()).sum();
        assertTrue(gap < 0.01, "gap " + gap);
        assertTrue(moved < 0.02 * yard.yardKwh(), "moved " + moved);
    }

    @Test
    void aSharedMeterIsChargedWithTheDifference() {
        YardYear yard = YardYear.of(byHours(true, ChargePolicy.SPREAD));
        assertEquals(yard.bills().total() - yard.withoutCharging().orElseThrow().total(), yard.parts().total(), 1e-9);
        assertEquals(0, yard.parts().fixed(), 1e-9, "the building pays the customer charge anyway");
    }

    @Test
    void whoDrawsWhenADemandIsSetAddsUpToIt() {
        for (boolean shared : new boolean[] {false, true}) {
            YardDetail detail = YardDetail.of(byHours(shared, ChargePolicy.LEAST_COST));
            int demands = 0;
            for (Bill bill : detail.printed().bills()) {
                for (PeakMoment moment : bill.lines().stream().flatMap(l -> l.peak().stream()).toList()) {
                    PeakLoad load = detail.at(moment);
                    double busKw = load.buses().stream().mapToDouble(PeakLoad.BusDraw::kw).sum();
                    assertEquals(moment.kw(), busKw + load.standbyKw() + load.buildingKw(), 1e-9, moment.label());
                    assertEquals(shared ? 80 : 0, load.buildingKw(), 1e-9);
                    load.buses().forEach(b -> assertTrue(load.words().contains(b.bus() + " "), load.words()));
                    demands++;
                }
            }
            assertTrue(demands > 12);
        }
    }

    @Test
    void aPrintedYearIsThatOfTheCalculationInWholeCents() {
        YardDetail detail = YardDetail.of(byHours(true, ChargePolicy.SPREAD));
        for (int month = 0; month < 12; month++) {
            Bill exact = detail.year().bills().bills().get(month);
            Bill printed = detail.printed().bills().get(month);
            assertEquals(exact.lines().size(), printed.lines().size());
            assertEquals(exact.total(), printed.total(), 0.005 * printed.lines().size());
            assertEquals(Math.rint(100 * printed.total()), 100 * printed.total(), 1e-6);
        }
        assertEquals(80 * 7 + 80 * 9, detail.printedWithoutCharging().orElseThrow().bills().get(0).parts().demand(), 1e-9,
                "a building of 80 kW at 7 and 9 per kW");
    }

    @Test
    void thePeakMonthHasTheHighestDemand() {
        YardDetail detail = YardDetail.of(plan.yards().get(LAST).input());
        assertEquals(detail.year().yardPeakKw(), detail.peakMonth().yardPeakKw(), 0);
        assertEquals(1, YardDetail.stretches(detail.peakMonth(), StretchKind.COLDEST_DAY).size());
    }

    @Test
    void daysOfTheMonthsMakeTheYear() {
        for (MonthLoad month : new YardPlanner(plan.yards().get(LAST).input()).year()) {
            double days = month.metered(true).days().stream().mapToDouble(d -> d.days()).sum();
            assertEquals(YearMonth.of(2026, month.month() + 1).lengthOfMonth(), days, 1e-9);
        }
    }

    @Test
    void aYardThatStaysTheSameIsNotPlannedAgain() {
        YardMemory memory = new YardMemory();
        YardInput input = plan.yards().get(LAST).input();
        YardYear first = memory.year(input);
        assertSame(first, memory.next().year(plan.yards().get(LAST).input()));
        assertEquals(first.parts(), YardYear.of(input).parts());
        assertNotSame(first, memory.next().next().year(input), "what was not asked for is forgotten");
    }

    /** The plan buys two ports for its two buses, of which one would do. */
    @Test
    void portsOfThePlanStandBesideTheCheapest() {
        List<PortCurve> curves = plan.yardComparison().ports(Progress.NONE);
        assertEquals(ChargePolicy.ofYards(), curves.stream().map(PortCurve::policy).toList());
        for (PortCurve curve : curves) {
            PortChoice bought = curve.bought().orElseThrow();
            PortChoice fewest = curve.fewest().orElseThrow();
            assertEquals(List.of(1, 2), List.of(fewest.mix().ports(), bought.mix().ports()));
            assertTrue(bought.served() && curve.buys(bought));
            assertEquals(plan.yardComparison().under(LAST, curve.policy()).parts(), bought.bill());
            assertEquals(2 * fewest.mix().portCost(), bought.mix().portCost(), 1e-9);
            assertEquals(19.2, curve.offer().connectedKw(fewest.mix()), 1e-9);
        }
        assertEquals(List.of(), TinyDistrict.evaluated(study, duty, 0).yardComparison().ports(Progress.NONE));
    }

    /** Capital recovery at 2 %: 0.111327 over ten years, 0.044650 over thirty. */
    @Test
    void portsCountByTheRecoveryOfTheirCapital() {
        Port port = new Port("P", false, 19.2, 0.9, 0, 10_000, 20_000, 10, 30, 100);
        DepotInput depot = study.depot();
        PortOffer offer = PortOffers.of(TinyDistrict.withDepot(study, new DepotInput(List.of(port), depot.works(), depot.service(),
                depot.window(), depot.metering(), List.of(), depot.charging())));
        assertEquals(10_000 * 0.111327 + 20_000 * 0.044650 + 100, offer.options().get(0).costPerYear(), 0.02);
        assertSame(offer, plan.yardComparison().with(offer).offer());
    }

    /** With one port for two buses the plugs must be shared, and the programme does not choose who gets them when. */
    @Test
    void leastCostIsNeverDearerWithFewerPlugsThanBuses() {
        YardInput yard = byHours(true, ChargePolicy.LEAST_COST);
        YardInput shared = yard.withPorts(yard.ports().subList(0, 1));
        YardComparison compared = compared(shared);
        YardYear least = compared.under(0, ChargePolicy.LEAST_COST);
        for (YardYear other : compared.policies(0)) {
            assertTrue(least.totalMissingKwh() <= other.totalMissingKwh() + 1, "missing " + least.totalMissingKwh());
            assertTrue(other.totalMissingKwh() > least.totalMissingKwh() + 1 || least.parts().total() <= other.parts().total() + 1e-6,
                    other.input().rule().policy() + ": " + least.parts().total() + " > " + other.parts().total());
        }
    }

    @Test
    void aPortDownIsAskedForEachType() {
        List<YardOutage> outages = YardOutage.of(plan.yards().get(LAST).input());
        assertEquals(1, outages.size());
        assertEquals(5, outages.get(0).outage().days().size());
    }

    @Test
    void aYardWithoutElectricBusesHasOnlyTheBuilding() {
        YardYear none = TinyDistrict.evaluated(study, duty, 0).yards().get(0);
        assertEquals(0, none.yardKwh(), 0);
        assertEquals(80, none.servicePeakKw(), 1e-9);
        assertEquals(Collections.nCopies(12, 0.0), none.months().stream().map(YardYear.Month::yardPeakKw).toList());
    }
}
