package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.amberyard.core.battery.FadeState;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.finance.Repayment;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.PricePath;
import org.junit.jupiter.api.Test;

/** What the years before the base year leave: ports, works, debts, buses with a past, prices of an earlier year. */
class YearsBeforeTest {
    private static final DutyTable DUTY = DutyTable.of(TinyDistrict.duty());
    private static final double EXACT = 1e-9;

    private static StudyInput with(List<PlanInput.PortPurchase> ports, List<PlanInput.WorkOrder> works) {
        return TinyDistrict.withPlans(TinyDistrict.study(), TinyDistrict.dieselPlan(),
                new PlanInput("Electric", TinyDistrict.electricPlan().replacements(), ports, works, List.of()));
    }

    @Test
    void standingPortsAreRenewedAtTheEndOfTheirLifeAndNotPaidForBefore() {
        PlanResult plan = TinyDistrict.evaluated(with(List.of(new PlanInput.PortPurchase(-1, 0, 2, List.of(0))),
                List.of(new PlanInput.WorkOrder(-3, 0, List.of(0)))), DUTY, 1);
        assertEquals(0, plan.ledger().amount(0, CostCategory.PORTS), EXACT);
        assertEquals(2 * 6000, plan.ledger().amount(1, CostCategory.PORTS), EXACT, "hardware lasts two years, from year -1");
        assertEquals(2 * 6000, plan.ledger().amount(3, CostCategory.PORTS), EXACT);
        assertEquals(0, plan.ledger().amount(CostCategory.SITE_WORKS), EXACT);
        double hardware = 2 * 6000 * (1 - 1.0 / 2);
        double installation = 2 * 9000 * (1 - 5.0 / 30);
        double trench = 80_000 * (1 - 7.0 / 30);
        assertEquals(-(hardware + installation + trench), plan.ledger().amount(CostCategory.INFRASTRUCTURE_LIFE_LEFT), EXACT);
        assertTrue(plan.funding().awards().lines().stream().noneMatch(l -> l.purchase().bus().isEmpty()), "no award is asked again");
        assertEquals(2, plan.service().get(0).ports());
    }

    @Test
    void aDebtThatWasDrawnBeforeIsPaidOnAndNotDrawnAgain() {
        Amortisation terms = new Amortisation(Repayment.EQUAL_PRINCIPAL, 0.05, 4, 1, false, 0, 0.01);
        Financing loan = new Financing("Loan", Financing.Covers.ALL, 1, 0, 3, terms, Optional.of(new Financing.Drawn(-2, 80_000)));
        PlanFinance finance = new TinyFinance(MoneyBasis.CONSTANT, false)
                .paid(new PaymentPlan(List.of(loan), OptionalDouble.empty()));
        assertEquals(1, finance.debts().size());
        assertEquals(0, finance.ledger().amount(0, FinanceLine.BORROWED), EXACT);
        assertEquals(0, finance.ledger().amount(0, FinanceLine.FEES), EXACT);
        assertEquals(20_000, finance.ledger().amount(0, FinanceLine.PRINCIPAL), EXACT);
        assertEquals(0.05 * 40_000, finance.ledger().amount(0, FinanceLine.INTEREST), EXACT);
        assertEquals(0.05 * 20_000, finance.ledger().amount(1, FinanceLine.INTEREST), EXACT);
        assertEquals(0, finance.ledger().amount(2, FinanceLine.PRINCIPAL), EXACT);
        assertEquals(20_000, finance.owedAtEndOf(0), 1e-6);
    }

    @Test
    void thePackOfABusIsThatOfItsRecord() {
        Vehicle.Pack pack = new Vehicle.Pack(new PackWear(2, 300, new FadeState(0.03, 0.05)), 40_000, 0.5);
        Vehicle.Used used = new Vehicle.Used(new SecondHand(3, 50_000, 90_000, 0.9), 0.6);
        BusInput bus = new BusInput("1", Role.ROUTE, TinyDistrict.ELECTRIC, OptionalInt.of(0), -5, 90_000, 0, 0, OptionalDouble.empty(),
                OptionalInt.empty(), Optional.empty(), new BusRecord(Optional.of(pack), Optional.of(used), Optional.empty()));
        List<BusInput> buses = new ArrayList<>(TinyDistrict.buses());
        buses.set(0, bus);
        Vehicle first = history(buses).inYear(0).get(0).vehicle();
        assertEquals(pack, first.pack());
        assertEquals(Optional.of(used), first.used());
        buses.set(0, new BusInput("1", Role.ROUTE, TinyDistrict.ELECTRIC, OptionalInt.of(0), -5, 90_000, 0, 0, OptionalDouble.empty(),
                OptionalInt.empty(), Optional.of(new MeasuredPack(0, 0.84)), bus.record()));
        FadeState measured = history(buses).inYear(0).get(0).vehicle().pack().wear().fade();
        assertEquals(0.06, measured.calendarLoss(), EXACT, "what was measured is shared as the record has it");
        assertEquals(0.10, measured.cycleLoss(), EXACT);
        FadeState earlier = fade(buses, bus, -1, 0.84);
        assertTrue(earlier.health() < 0.84, "what was measured a year ago has faded since");
        assertTrue(fade(buses, bus, -2, 0.84).health() < earlier.health(), "more so after two years");
        assertEquals(fade(buses, bus, -2, 0.84), fade(buses, bus, -4, 0.84), "no longer than the pack is old");
    }

    private static FadeState fade(List<BusInput> buses, BusInput bus, int year, double health) {
        List<BusInput> with = new ArrayList<>(buses);
        with.set(0, new BusInput("1", Role.ROUTE, TinyDistrict.ELECTRIC, OptionalInt.of(0), -5, 90_000, 0, 0, OptionalDouble.empty(),
                OptionalInt.empty(), Optional.of(new MeasuredPack(year, health)), bus.record()));
        return history(with).inYear(0).get(0).vehicle().pack().wear().fade();
    }

    private static FleetHistory history(List<BusInput> buses) {
        StudyInput study = TinyDistrict.withBuses(TinyDistrict.study(), buses);
        return FleetRollForward.of(study, TinyDistrict.dieselPlan(), DUTY, new PortFleet(study.depot(), List.of()));
    }

    @Test
    void pricesOfAnEarlierYearHaveRisenByTheBaseDate() {
        PricePath path = new PricePath(0.01, List.of()).stated(3, 1.1);
        assertEquals(1.1 * Math.pow(1.01, 5), path.factor(1, 2), EXACT);
        assertEquals(1.1 * Math.pow(1.01, 3), path.atBaseDate(), EXACT);
        PricePath points = new PricePath(0, List.of(new PricePath.Point(0, 1.2), new PricePath.Point(2, 1.4))).stated(3, 1.1);
        assertEquals(1.1 * 1.3, points.factor(1, 2), EXACT);
        StudyInput study = TinyDistrict.study();
        PriceDeck deck = study.prices();
        StudyInput earlier = study.at(new PriceDeck(deck.fuels(), deck.exhaustFluid(), deck.pack(), Map.of(),
                PricePath.FLAT.stated(3, 1.1)));
        PlanResult now = TinyDistrict.evaluated(study.at(new PriceDeck(deck.fuels(), deck.exhaustFluid(), deck.pack(), Map.of())), DUTY, 1);
        PlanResult then = TinyDistrict.evaluated(earlier, DUTY, 1);
        for (CostCategory category : List.of(CostCategory.UPKEEP, CostCategory.TRAINING_AND_TOOLS, CostCategory.SITE_WORKS)) {
            assertEquals(1.1 * now.ledger().amount(category), then.ledger().amount(category), 1e-6, category.label());
        }
        assertEquals(1.1 * 9000, then.costs().why(3, 1, CostCategory.TRAINING_AND_TOOLS).value(), EXACT);
    }

    @Test
    void theLevelOfAnIndexIsOneForPricesAsStated() {
        StudyInput study = TinyDistrict.study();
        PriceDeck deck = study.prices();
        PricePath rising = new PricePath(0.01, List.of());
        for (boolean earlier : List.of(false, true)) {
            StudyInput of = study.at(new PriceDeck(deck.fuels(), deck.exhaustFluid(), deck.pack(), Map.of(PriceDeck.Subject.UPKEEP,
                    earlier ? rising.stated(3, 1.1) : rising)));
            PriceCourse course = PriceCourse.of(of, List.of(new PriceField(PriceField.Kind.INDEX_RISE, PriceDeck.Subject.UPKEEP.ordinal()))).get(0);
            assertEquals(earlier ? "price as stated = 1" : "base date = 1", course.unit());
            assertEquals(earlier, course.years(of)[0] > 1.1, "what it is 1 for");
        }
    }

    @Test
    void theServiceOfTodayHasWhatWasOrderedBefore() {
        DepotInput depot = TinyDistrict.study().depot();
        DepotInput.SiteWork larger = new DepotInput.SiteWork("Larger", 1, 30, Optional.of(new DepotInput.Upgrade(750, 1200, 12)));
        DepotInput on = new DepotInput(depot.ports(), List.of(larger), depot.service(), depot.window(), depot.metering(), depot.alternatives(),
                depot.charging());
        for (int ordered : List.of(-1, 0)) {
            PlanInput plan = new PlanInput("P", List.of(), List.of(), List.of(new PlanInput.WorkOrder(ordered, 0, List.of())), List.of());
            assertEquals(ordered < 0 ? 750 : 300, ServiceYears.today(on, plan).transformerKva(), EXACT);
            assertEquals(ordered < 0 ? 1200 : 800, ServiceYears.today(on, plan).breakerA(), EXACT);
        }
    }

    /** Built in 12 and in 30 months: ordered before the base year and in service by then is nothing to come; the next in service is first. */
    @Test
    void servicesToComeStandInTheOrderInWhichTheyWillBeThere() {
        DepotInput depot = TinyDistrict.study().depot();
        DepotInput.Upgrade quick = new DepotInput.Upgrade(500, 1000, 12);
        DepotInput.Upgrade slow = new DepotInput.Upgrade(750, 1200, 30);
        DepotInput on = new DepotInput(depot.ports(), List.of(new DepotInput.SiteWork("Trench", 1, 30),
                new DepotInput.SiteWork("Quick", 1, 30, Optional.of(quick)), new DepotInput.SiteWork("Slow", 1, 30, Optional.of(slow))),
                depot.service(), depot.window(), depot.metering(), depot.alternatives(), depot.charging());
        List<PlanInput.WorkOrder> orders = List.of(new PlanInput.WorkOrder(0, 2, List.of()), new PlanInput.WorkOrder(0, 0, List.of()),
                new PlanInput.WorkOrder(1, 1, List.of()), new PlanInput.WorkOrder(-1, 1, List.of()), new PlanInput.WorkOrder(-1, 2, List.of()),
                new PlanInput.WorkOrder(-3, 2, List.of()));
        assertEquals(List.of(new ServiceYears.Ordered(1, 2, quick), new ServiceYears.Ordered(-1, 2, slow), new ServiceYears.Ordered(0, 3, slow)),
                ServiceYears.toCome(on, new PlanInput("P", List.of(), List.of(), orders, List.of())));
    }

    @Test
    void whatStandsAtTheStartOfAYearIsWhatTheYearFinds() {
        FleetHistory fleet = TinyDistrict.evaluated(TinyDistrict.study(), DUTY, 1).fleet();
        StandingFleet first = new StandingFleet(fleet, 1);
        assertEquals("1", first.buses().get(0).orElseThrow().unit(), "bus 1 leaves its place in this year");
        assertEquals("3", first.buses().get(2).orElseThrow().unit());
        assertTrue(first.changedPlaces().isEmpty());
        StandingFleet second = new StandingFleet(fleet, 2);
        assertEquals("1-2", second.buses().get(0).orElseThrow().unit());
        assertEquals("1", second.buses().get(2).orElseThrow().unit(), "it has moved");
        assertEquals(TinyDistrict.ELECTRIC, second.buses().get(0).orElseThrow().type());
        assertEquals(Set.of(0, 2), second.changedPlaces());
    }
}
