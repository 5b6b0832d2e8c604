package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.air.SampleAir;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.Warranty;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.SampleProgramme;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.money.Payback;
import org.junit.jupiter.api.Test;

/** Rules of money that a whole plan must keep. */
class PlanMoneyTest {
    private static final double CENT = 0.005;
    private final StudyInput study = TinyDistrict.study();

    private static PlanResult evaluate(StudyInput input, int plan) {
        return TinyDistrict.evaluated(input, DutyTable.of(input.duty()), plan);
    }

    private static PlanInput replacing(PlanInput.Replacement... steps) {
        return new PlanInput("Steps", List.of(steps), List.of(), List.of(), List.of());
    }

    private static PlanInput.Replacement step(int year, int place, int type, int cascadeTo, int programme) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(type),
                cascadeTo < 0 ? OptionalInt.empty() : OptionalInt.of(cascadeTo),
                programme < 0 ? List.of() : List.of(programme));
    }

    private StudyInput withProgramme(Programme programme, PlanInput plan) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), FundingInput.of(List.of(programme)), study.air(), study.rules(),
                List.of(study.plans().get(0), plan), 0, study.trips());
    }

    private static Programme programme(int maxBuses, boolean scraps) {
        return SampleProgramme.named("P").forBuses(new BusAward(50_000, 0, 0, 50_000))
                .budget(maxBuses, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                .conditions(scraps ? Conditions.SCRAP : Conditions.NONE).built();
    }

    @Test
    void programmesPayForElectricBusesOnly() {
        PlanInput plan = replacing(step(1, 0, TinyDistrict.DIESEL, -1, 0), step(2, 1, TinyDistrict.ELECTRIC, -1, 0));
        CostLedger ledger = evaluate(withProgramme(programme(9, false), plan), 1).ledger();
        assertEquals(0, ledger.amount(1, CostCategory.FUNDING), 0);
        assertTrue(ledger.amount(2, CostCategory.FUNDING) < 0);
    }

    @Test
    void aBusThatIsNotPaidForUsesUpNoPlaceInTheProgramme() {
        PlanInput plan = replacing(step(1, 0, TinyDistrict.DIESEL, -1, 0), step(2, 1, TinyDistrict.ELECTRIC, -1, 0),
                step(3, 2, TinyDistrict.ELECTRIC, -1, 0));
        CostLedger ledger = evaluate(withProgramme(programme(1, false), plan), 1).ledger();
        assertEquals(-50_000 / Math.pow(1.025, 2), ledger.amount(CostCategory.FUNDING), CENT);
    }

    /** Prices rise with inflation to the year of payment, the fixed amount does not: 10,000 then is worth less now. */
    @Test
    void awardIsInMoneyOfItsYear() {
        Programme half = SampleProgramme.named("P").forBuses(new BusAward(10_000, 0, 0.5, 1e9)).forYard(0.5, 1e9).built();
        PlanInput bus = replacing(step(2, 1, TinyDistrict.ELECTRIC, -1, 0));
        double difference = 330_000 * Math.pow(0.99, 2) - 150_000;
        assertEquals(-10_000 / Math.pow(1.025, 2) - difference / 2,
                evaluate(withProgramme(half, bus), 1).ledger().amount(1, 2, CostCategory.FUNDING), CENT);
        PlanInput ports = new PlanInput("Ports", List.of(), List.of(new PlanInput.PortPurchase(2, 0, 3, List.of(0))),
                List.of(), List.of());
        assertEquals(-0.5 * 3 * 15_000, evaluate(withProgramme(half, ports), 1).ledger().amount(CostCategory.FUNDING), CENT);
    }

    @Test
    void portsBeforeAndAfterTheirPurchase() {
        PortFleet ports = new PortFleet(study.depot(), List.of(new PlanInput.PortPurchase(2, 0, 3, List.of())));
        assertEquals(0, ports.count(1));
        assertEquals(3, ports.count(2));
        assertEquals(0, ports.connectedKw(1), 0);
        assertEquals(3 * 19.2, ports.connectedKw(2), 1e-12);
        assertEquals(0, ports.units(1).size());
        assertEquals(3, ports.units(2).size());
    }

    @Test
    void aScrappedBusBringsNoSale() {
        PlanInput plan = replacing(step(2, 1, TinyDistrict.ELECTRIC, -1, 0));
        double sold = evaluate(withProgramme(programme(9, false), plan), 1).ledger().amount(1, 2, CostCategory.BUS_SALE);
        double scrapped = evaluate(withProgramme(programme(9, true), plan), 1).ledger().amount(1, 2, CostCategory.BUS_SALE);
        assertEquals(-(3500 + (150_000 - 3500) * (1 - 7 / 15.0)), sold, CENT);
        assertEquals(0, scrapped, 0);
    }

    /** Where it costs 6,000 to get rid of a worn-out bus, sold or scrapped, nobody insures that. */
    @Test
    void whatIsLeftMayBeBelowNothing() {
        PlanInput plan = replacing(step(2, 2, TinyDistrict.ELECTRIC, -1, 0));
        PlanInput early = replacing(step(2, 1, TinyDistrict.ELECTRIC, -1, 0));
        StudyInput scrapped = TinyDistrict.withDieselAtRetirement(withProgramme(programme(9, true), early), -6000);
        assertEquals(6000, evaluate(scrapped, 1).ledger().amount(1, 2, CostCategory.BUS_SALE), CENT, "at seven years as at any age");
        for (boolean scraps : new boolean[] {false, true}) {
            StudyInput costly = TinyDistrict.withDieselAtRetirement(withProgramme(programme(9, scraps), plan), -6000);
            CostLedger ledger = evaluate(costly, 1).ledger();
            assertEquals(6000, ledger.amount(2, 2, CostCategory.BUS_SALE), CENT);
            assertEquals(0, ledger.amount(2, 1, CostCategory.INSURANCE), 0);
        }
    }

    /** A price of old packs below zero is paid for packs that are taken out, not for those that go with their bus. */
    @Test
    void aPackThatGoesWithItsBusCostsNothing() {
        Vehicle bus = evaluate(study, 1).fleet().inYear(2).get(0).vehicle();
        double sale = sale(TinyPacks.withPackPrices(study, PackPrices.NONE), bus);
        assertEquals(sale, sale(TinyPacks.withPackPrices(study, new PackPrices(0, -60, Warranty.NONE, Optional.empty())), bus), CENT);
    }

    private static double sale(StudyInput study, Vehicle bus) {
        return new BusValues(study).sold(bus, 1).at(new PriceBook(study), 3, CostCategory.BUS_SALE);
    }

    @Test
    void orderOfTheStepsOfAYearDoesNotMatter() {
        PlanInput.Replacement first = step(1, 0, TinyDistrict.ELECTRIC, 2, -1);
        PlanInput.Replacement second = step(1, 2, TinyDistrict.DIESEL, -1, -1);
        StudyInput one = TinyDistrict.withPlans(study, study.plans().get(0), replacing(first, second));
        StudyInput other = TinyDistrict.withPlans(study, study.plans().get(0), replacing(second, first));
        assertEquals(evaluate(one, 1).measures().presentCost(), evaluate(other, 1).measures().presentCost(), 1e-9);
    }

    @Test
    void spareIsNotReplacedForItsOdometer() {
        List<BusInput> buses = new ArrayList<>(study.buses());
        buses.set(2, new BusInput("3", Role.SPARE, 0, OptionalInt.empty(), -16, 500_000, 4000, 40,
                OptionalDouble.empty(), OptionalInt.empty()));
        FleetHistory fleet = evaluate(TinyDistrict.withBuses(study, buses), 0).fleet();
        assertEquals("3", fleet.fleetAtEnd().get(2).orElseThrow().unit());
    }

    @Test
    void replacementPackIsPaidInItsYearAndWhatIsLeftIsCreditedAtTheEnd() {
        double perYear = evaluate(study, 1).fleet().inYear(1).get(0).fullCycles();
        PlanResult plan = evaluate(TinyPacks.withCycleLimit(study, 1.5 * perYear), 1);
        CostLedger ledger = plan.ledger();
        assertEquals(150 * 250, ledger.amount(0, 2, CostCategory.BATTERY_REPLACEMENT), CENT);
        double lifeLeft = 1 - 1.5 / 1.5;
        double held = 1 - 3 / 15.0;
        Vehicle end = plan.fleet().fleetAtEnd().get(0).orElseThrow();
        assertEquals(1.5 * perYear, end.packCycles(), 1e-9);
        assertEquals(-150 * 250 * (lifeLeft - held), ledger.amount(0, 3, CostCategory.PACK_LIFE_LEFT), CENT);
    }

    /** The value of a bus of three years holds four fifths of a pack, which the replacement takes the place of. */
    @Test
    void aHalfWornReplacementPackTakesThePlaceOfTheFirst() {
        double perYear = evaluate(study, 1).fleet().inYear(1).get(0).fullCycles();
        CostLedger ledger = evaluate(TinyPacks.withCycleLimit(study, 2 * perYear), 1).ledger();
        assertEquals(-150 * 250 * (0.5 - 0.8), ledger.amount(0, 3, CostCategory.PACK_LIFE_LEFT), 0.01 * 150 * 250);
    }

    @Test
    void noPackIsBoughtForTheLastYearOfTheStudyNorForABusThatLeaves() {
        double perYear = evaluate(study, 1).fleet().inYear(1).get(0).fullCycles();
        StudyInput lastYear = TinyPacks.withCycleLimit(study, 2.5 * perYear);
        assertEquals(0, evaluate(lastYear, 1).ledger().amount(0, 3, CostCategory.BATTERY_REPLACEMENT), 0);
        StudyInput leaving = TinyDistrict.withPlans(TinyPacks.withCycleLimit(study, 0.9 * perYear), study.plans().get(0),
                replacing(step(1, 0, TinyDistrict.ELECTRIC, -1, -1), step(2, 0, TinyDistrict.DIESEL, -1, -1)));
        assertEquals(0, evaluate(leaving, 1).ledger().amount(CostCategory.BATTERY_REPLACEMENT), 0);
    }

    @Test
    void electricBusOfTodayHasTheCyclesOfItsLastPackOnly() {
        StudyInput packs = TinyPacks.withPack(study, SampleBus.battery(150, 0.004, 100, 0.1, new LinearFade(0.01, 0)));
        List<BusInput> buses = new ArrayList<>(packs.buses());
        buses.set(0, new BusInput("1", Role.ROUTE, TinyDistrict.ELECTRIC, OptionalInt.of(0), -5, 100_000, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        VehicleYear first = evaluate(TinyDistrict.withBuses(packs, buses), 0).fleet().inYear(0).get(0);
        assertTrue(first.vehicle().packCycles() >= 0 && first.vehicle().packCycles() < 100);
    }

    @Test
    void whereNothingIsDrivenThereIsNoCostPerDistance() {
        StudyInput study = TinyDistrict.study();
        StudyInput parked = TinyDistrict.withBuses(study, study.buses().stream().map(b -> new BusInput(b.name(), Role.SPARE, b.type(),
                OptionalInt.empty(), b.inServiceYear(), b.odometerKm(), 0, 0, OptionalDouble.empty(), OptionalInt.empty())).toList());
        PlanMeasures measures = evaluate(parked, 0).measures();
        assertEquals(0, measures.km(), 0);
        assertTrue(measures.costPerKm().isEmpty());
    }

    @Test
    void costPerDistanceOfACostPerDistanceIsThatCost() {
        for (boolean midYear : new boolean[] {false, true}) {
            StudyInput input = TinyDistrict.study(new MoneyRules(new MoneyRates(0.05, 0), MoneyBasis.CONSTANT, midYear));
            PlanResult plan = evaluate(input, 0);
            double upkeepPerKm = plan.ledger().presentValue(CostCategory.UPKEEP) / plan.measures().presentCost()
                    * plan.measures().costPerKm().orElseThrow();
            double undiscounted = plan.ledger().amount(CostCategory.UPKEEP) / plan.measures().km();
            assertEquals(undiscounted, upkeepPerKm, 0.01 * undiscounted);
        }
    }

    /** 30 and 20 riders on 180 days of a year: 9,000 rider-days, levelised over the years of the study by hand. */
    @Test
    void costPerRiderAndDay() {
        assertTrue(evaluate(study, 0).measures().costPerRiderDay().isEmpty(), "riders are not known");
        assertTrue(evaluate(TinyDistrict.withDuty(study, TinyDistrict.dutyWithRiders(30)), 0).measures().costPerRiderDay().isEmpty(),
                "those of the second route are not known");
        PlanResult plan = evaluate(TinyDistrict.withDuty(study, TinyDistrict.dutyWithRiders(30, 20)), 0);
        double rate = study.money().rates().real();
        double riderDays = 0;
        for (int year = 1; year <= study.years(); year++) {
            riderDays += 50 * 12 * 15 * Math.pow(1 + rate, -year);
        }
        assertEquals(plan.measures().presentCost() / riderDays, plan.measures().costPerRiderDay().orElseThrow(), 1e-9);
    }

    @Test
    void simplePaybackDoesNotDependOnTheTimingOfRunningCosts() {
        List<Payback> paybacks = new ArrayList<>();
        for (boolean midYear : new boolean[] {false, true}) {
            StudyInput input = TinyDistrict.study(new MoneyRules(new MoneyRates(0.02, 0), MoneyBasis.CONSTANT, midYear));
            StudyInput flat = TinyDistrict.withPlans(input, replacing(step(2, 1, TinyDistrict.ELECTRIC, -1, -1)),
                    replacing(step(1, 1, TinyDistrict.DIESEL, -1, -1)));
            paybacks.add(StudyEvaluation.of(flat, DutyTable.of(flat.duty())).comparisons().get(0).simple());
        }
        assertEquals(Payback.Outcome.AFTER, paybacks.get(0).outcome());
        assertEquals(paybacks.get(0).years(), paybacks.get(1).years(), 0.01);
    }

    @Test
    void aPlanLikeTheBaselineMakesNoDifference() {
        StudyInput twins = TinyDistrict.withPlans(study, study.plans().get(1), study.plans().get(1));
        Comparison comparison = StudyEvaluation.of(twins, DutyTable.of(twins.duty())).comparisons().get(0);
        assertEquals(Payback.Outcome.NO_DIFFERENCE, comparison.simple().outcome());
        assertEquals(0, comparison.presentSaving(), 0);
    }

    @Test
    void fuelOfAFuelFiredHeaterIsPaidAndCounted() {
        StudyInput fired = TinyPacks.withHeater(study, new Heater(Heater.Source.FUEL_FIRED, 20, 2.2, 0.05, 0.8));
        PlanResult plan = evaluate(fired, 1);
        double litres = plan.fleet().inYear(1).get(0).use().heaterFuelL();
        assertTrue(litres > 0);
        assertEquals(litres * 0.95 * Math.pow(1.01, 2), plan.ledger().amount(0, 1, CostCategory.HEATER_FUEL), CENT);
        double all = plan.fleet().inYear(1).stream().mapToDouble(v -> v.use().heaterFuelL()).sum();
        assertEquals(all * SampleAir.CO2_KG_PER_L, plan.air().get(1).heaterKg(), 1e-9);
    }

    @Test
    void meterOfTheHeadlineIsTheMeterOfTheBill() {
        PlanResult plan = evaluate(study, 1);
        double billed = plan.ledger().amount(CostCategory.ELECTRIC_ENERGY) / 0.105;
        assertEquals(billed, plan.measures().meterKwh(), 1e-6);
    }
}
