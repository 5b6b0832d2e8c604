package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.Repayment;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.funding.Budget;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.EnergyCredit;
import org.amberyard.core.funding.Exclusion;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Match;
import org.amberyard.core.funding.MoneyKind;
import org.amberyard.core.funding.Offer;
import org.amberyard.core.funding.OperatingAid;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.funding.PortAward;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.ShareAward;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.yard.Metering;
import org.junit.jupiter.api.Test;

/** The best plan beside steps that stay, late money, debts, minimum bills and many programmes, held against every plan that there is. */
class BestPlanSettingsTest {
    private static final OptionalDouble NO_CAP = OptionalDouble.empty();
    private static final int LAST = TinyDistrict.YEARS - 1;
    private static final Optional<BestPlanAim.Goal> NO_GOAL = Optional.empty();
    private static final Budget ENOUGH = Budget.ofBuses(9);

    private final StudyInput pair = TinyDistrict.withBuses(TinyDistrict.study(),
            List.of(BestPlanTest.bus("1", -13, 0), BestPlanTest.bus("2", -9, 1)));

    private static Optional<BestPlanAim.Goal> electric(int count) {
        return Optional.of(new BestPlanAim.Goal(count, LAST));
    }

    /** A programme that pays for a bus in years 1 and 2. */
    private static Programme fund(String name, int priority, double amount, int lagYears) {
        return fund(name, priority, amount, lagYears, ENOUGH);
    }

    private static Programme fund(String name, int priority, double amount, int lagYears, Budget budget) {
        return new Programme(name, MoneyKind.STATE, priority, 1, 2, 1,
                new Offer(Map.of("C", new BusAward(amount, 0, 0, 1e9)), PortAward.NONE, ShareAward.NONE, ShareAward.NONE, false),
                budget, Match.NONE, Conditions.NONE, new Payout(lagYears, Optional.empty()));
    }

    private StudyInput funded(List<Exclusion> exclusions, Programme... programmes) {
        return TinyDistrict.withFunding(pair, new FundingInput(List.of(programmes), exclusions, List.of(), List.of(),
                FundingInput.Declared.NOTHING));
    }

    private static EveryPlan every(StudyInput study, PlanInput around, Integer... programmes) {
        return new EveryPlan(study, around, List.of(0, 1), List.of(programmes));
    }

    private static double least(EveryPlan every, Optional<BestPlanAim.Goal> goal) {
        return every.least(goal.map(BestPlanAim.Goal::count).orElse(0));
    }

    /** A spare that the plan replaces by an engine bus is none of the aim's: it comes as planned, and the others are the cheapest beside it. */
    @Test
    void stepsOfOtherPlacesStay() {
        List<BusInput> buses = new ArrayList<>(pair.buses());
        buses.add(new BusInput("3", Role.SPARE, TinyDistrict.DIESEL, OptionalInt.empty(), -8, 0, 500, 0, OptionalDouble.empty(),
                OptionalInt.empty()));
        PlanInput.Replacement staying = EveryPlan.step(1, 2, TinyDistrict.DIESEL, List.of());
        EveryPlan every = every(TinyDistrict.withBuses(pair, buses), EveryPlan.around(NO_CAP, staying));
        BestPlan best = every.best(electric(1));
        assertEquals(List.of(0, 1), best.decided());
        assertTrue(best.evaluated().plan().replacements().contains(staying), best.evaluated().plan().replacements().toString());
        BestPlanTest.check(best, least(every, electric(1)), 0.2);
    }

    /** Where the plan takes a bus off a route, or moves one to another place, that is its own decision. */
    @Test
    void placesWithStepsOfAnotherKindAreNotDecidedOn() {
        PlanInput.Replacement retired = new PlanInput.Replacement(2, 1, OptionalInt.empty(), OptionalInt.empty(), List.of());
        EveryPlan one = new EveryPlan(pair, EveryPlan.around(NO_CAP, retired), List.of(0), List.of());
        BestPlan best = one.best(NO_GOAL);
        assertEquals(List.of(0), best.decided());
        assertTrue(best.evaluated().plan().replacements().contains(retired));
        BestPlanTest.check(best, one.least(0), 0.02);
    }

    /** A used electric bus, on which nothing is decided. */
    private static PlanInput.Replacement used(int year) {
        return new PlanInput.Replacement(year, 1, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(), List.of(),
                Optional.of(new SecondHand(2, 30_000, 150_000, 0.9)));
    }

    /** An electric bus that comes anyway shares ports and bill with those that are decided on: the bound leaves out what they may save by it. */
    @Test
    void besideAnElectricStepThatStaysTheBoundLeavesOutWhatCanBeShared() {
        PlanInput.Replacement staying = used(1);
        EveryPlan one = new EveryPlan(pair, EveryPlan.around(NO_CAP, staying), List.of(0), List.of());
        BestPlan best = one.best(NO_GOAL);
        assertEquals(List.of(0), best.decided());
        assertTrue(best.evaluated().plan().replacements().contains(staying));
        BestPlanTest.check(best, one.least(0), 0.2);
        BestPlan both = one.best(electric(2));
        assertTrue(both.bound().getAsDouble() <= one.least(2) + 0.01);
    }

    /** Ports bought earlier and shared make room in the year in which the staying bus would have bought its own, so no cap holds in the bound. */
    @Test
    void underACapBesideAnElectricStepThatStaysTheBoundLeavesTheCapOut() {
        PlanInput.Replacement staying = used(2);
        EveryPlan free = new EveryPlan(pair, EveryPlan.around(NO_CAP, staying), List.of(0), List.of());
        BestPlan without = free.best(electric(2));
        for (PlanResult any : free.all()) {
            double cap = any.finance().budget().stream().mapToDouble(BudgetYear::appropriation).max().orElseThrow();
            EveryPlan every = new EveryPlan(pair, EveryPlan.around(OptionalDouble.of(cap), staying), List.of(0), List.of());
            BestPlan best = every.best(NO_GOAL);
            assertTrue(best.boundWithoutCap());
            assertTrue(best.bound().getAsDouble() <= every.least(0) + 0.01, best.bound() + " under a cap of " + cap);
        }
        assertFalse(without.boundWithoutCap());
    }

    /** On the meter of the building, whose peak comes when the buses charge or not. */
    @Test
    void onTheMeterOfTheBuildingTheBoundStaysBelowEveryPlan() {
        DepotInput depot = pair.depot();
        Metering shared = new Metering(depot.metering().tariff(), true, List.of(), OptionalInt.empty());
        EveryPlan every = every(TinyDistrict.withDepot(pair, new DepotInput(depot.ports(), depot.works(), depot.service(), depot.window(), shared,
                depot.alternatives(), depot.charging())), EveryPlan.around(NO_CAP));
        BestPlanTest.check(every.best(NO_GOAL), every.least(0), 0.2);
        BestPlanTest.check(every.best(electric(2)), least(every, electric(2)), 0.2);
    }

    /** Money that comes a year or two after the bus is worth less, and decides no less. */
    @Test
    void awardsThatComeLateAreWeighedByWhenTheyCome() {
        double before = Double.NEGATIVE_INFINITY;
        for (int lag = 0; lag < 3; lag++) {
            EveryPlan every = every(funded(List.of(), fund("Late", 1, 190_000, lag)), EveryPlan.around(NO_CAP), 0);
            BestPlan best = every.best(NO_GOAL);
            BestPlanTest.check(best, every.least(0), 0.1);
            assertTrue(best.presentCost() > before, "the later the dearer");
            before = best.presentCost();
        }
    }

    /** A loan that costs less than the discount rate makes an early bus cheaper, one that costs more a late one. */
    @Test
    void debtsAreWeighedWithWhatTheyCost() {
        for (double rate : new double[] {0, 0.12}) {
            Financing loan = new Financing("Loan", Financing.Covers.BUSES, 0.8, 0, LAST, Amortisation.of(Repayment.LEVEL, rate, 3, 1));
            PlanInput around = EveryPlan.around(NO_CAP).paid(new PaymentPlan(List.of(loan), NO_CAP));
            EveryPlan every = every(pair, around);
            BestPlanTest.check(every.best(electric(2)), least(every, electric(2)), 0.1);
        }
    }

    /** With a minimum bill a kWh may cost nothing, so the least price bounds nothing. */
    @Test
    void aMinimumBillLeavesNoBoundAndIsPaid() {
        Tariff flat = pair.depot().metering().tariff();
        Tariff lifted = new Tariff(flat.name(), flat.customer(), MinimumBill.ofCharges(900), flat.energy(), flat.demand(), flat.riders(),
                flat.taxes(), flat.lossFactor());
        DepotInput depot = pair.depot();
        EveryPlan every = every(TinyDistrict.withDepot(pair, new DepotInput(depot.ports(), depot.works(), depot.service(), depot.window(),
                Metering.own(lifted), depot.alternatives(), depot.charging())), EveryPlan.around(NO_CAP));
        BestPlan best = every.best(electric(1));
        assertEquals(List.of(BestPlan.NoBound.TARIFF), best.noBound());
        assertTrue(best.bound().isEmpty());
        assertEquals(every.least(1), best.presentCost(), 1e-9 * Math.abs(best.presentCost()));
        assertTrue(best.presentCost() > every(pair, EveryPlan.around(NO_CAP)).least(1), "the minimum is paid");
    }

    /** Every plan with three programmes, of which the first keeps another from paying. */
    private EveryPlan ofThree(String excluded, Budget ofTheSecond, double first, double second, double third) {
        return every(funded(List.of(new Exclusion("A", excluded)), fund("A", 1, first, 0), fund("B", 2, second, 0, ofTheSecond),
                fund("C", 3, third, 0)), EveryPlan.around(NO_CAP), 0, 1, 2);
    }

    private static void checkAsked(EveryPlan every, List<Integer> programmes) {
        BestPlan best = every.best(NO_GOAL);
        BestPlanTest.check(best, every.least(0), 0.1);
        assertEquals(List.of(programmes, programmes), best.steps().stream().map(PlanInput.Replacement::programmes).toList());
    }

    /** The first keeps the third from paying: two of three pay, the step names these alone, and of all sets that is the cheapest. */
    @Test
    void ofThreeProgrammesThoseThatPayTogetherAreNamed() {
        checkAsked(ofThree("C", ENOUGH, 60_000, 90_000, 50_000), List.of(0, 1));
    }

    /** The first pays little and keeps the second from paying, so the best set is the two others: asking all would cost the difference. */
    @Test
    void ofThreeProgrammesThoseAreAskedThatPayMost() {
        checkAsked(ofThree("B", ENOUGH, 5000, 100_000, 80_000), List.of(1, 2));
    }

    /** Where money ends after the first bus, or within the second, which bus gets it is weighed too, and the bound stays below every plan. */
    @Test
    void budgetsOfThreeProgrammesMayRunOut() {
        for (Budget budget : List.of(Budget.ofBuses(1), new Budget(9, 130_000, Double.POSITIVE_INFINITY))) {
            EveryPlan every = ofThree("C", budget, 60_000, 90_000, 50_000);
            double least = every.least(0);
            BestPlanTest.check(every.best(NO_GOAL), least, 1);
            assertTrue(least > ofThree("C", ENOUGH, 60_000, 90_000, 50_000).least(0), "the budget runs out");
        }
    }

    /** Of four every set is tried: the first keeps the second from paying, the third the fourth, so the best set is neither each nor all. */
    @Test
    void ofFourProgrammesEverySetIsTried() {
        checkAsked(every(funded(List.of(new Exclusion("A", "B"), new Exclusion("C", "D")), fund("A", 1, 5000, 0), fund("B", 2, 90_000, 0),
                fund("C", 3, 5000, 0), fund("D", 4, 80_000, 0)), EveryPlan.around(NO_CAP), 0, 1, 2, 3), List.of(1, 3));
    }

    /** Of more every two are tried and all, so none is proven to be the best; what is found is no dearer than asking all of them. */
    @Test
    void ofFiveProgrammesEveryTwoAreTried() {
        StudyInput study = funded(List.of(new Exclusion("A", "B"), new Exclusion("C", "D"), new Exclusion("E", "D")), fund("A", 1, 5000, 0),
                fund("B", 2, 90_000, 0), fund("C", 3, 5000, 0), fund("D", 4, 80_000, 0), fund("E", 5, 5000, 0));
        List<Integer> all = List.of(0, 1, 2, 3, 4);
        BestPlan best = every(study, EveryPlan.around(NO_CAP), 0, 1, 2, 3, 4).best(NO_GOAL);
        assertEquals(List.of(BestPlan.NoBound.SHARED_PROGRAMMES), best.noBound());
        assertEquals(List.of(List.of(1, 3), List.of(1, 3)), best.steps().stream().map(PlanInput.Replacement::programmes).toList());
        PlanResult both = every(study, EveryPlan.around(NO_CAP)).evaluated(List.of(new PlanInput("All",
                List.of(EveryPlan.step(1, 0, TinyDistrict.ELECTRIC, all), EveryPlan.step(2, 1, TinyDistrict.ELECTRIC, all)),
                List.of(new PlanInput.PortPurchase(1, 0, 1, all), new PlanInput.PortPurchase(2, 0, 1, all)), List.of(), List.of()))).baseline();
        assertTrue(best.presentCost() <= both.presentCostAfterFinancing() + 1e-6);
    }

    private static List<BestPlan.NoBound> noBound(StudyInput study, PlanInput around, Integer... programmes) {
        return every(study, around, programmes).best(NO_GOAL).noBound();
    }

    private StudyInput funded(List<EnergyCredit> credits, List<OperatingAid> aids) {
        return TinyDistrict.withFunding(pair, new FundingInput(List.of(fund("A", 1, 5000, 0)), List.of(), credits, aids,
                FundingInput.Declared.NOTHING));
    }

    /** What makes the cost of a place depend on the others takes the bound away, each by its name. */
    @Test
    void whyThereIsNoBoundIsSaid() {
        PlanInput free = EveryPlan.around(NO_CAP);
        FleetRules rules = pair.rules();
        StudyInput taxed = TinyDistrict.withRules(pair, new FleetRules(rules.spareCoverShare(), rules.insuranceShare(), rules.reserveShare(),
                rules.upkeep(), new TaxRules(0.2, TaxRules.NONE.buses(), TaxRules.NONE.infrastructure())));
        assertEquals(List.of(BestPlan.NoBound.TAXED), noBound(taxed, free));
        assertEquals(List.of(BestPlan.NoBound.OPERATING_AID),
                noBound(funded(List.of(), List.of(new OperatingAid("Aid", 0, LAST, 0.5, 0, 1, 0))), free));
        assertEquals(List.of(BestPlan.NoBound.ENERGY_CREDITS),
                noBound(funded(List.of(new EnergyCredit("Credit", 0, LAST, 0.1, PricePath.FLAT)), List.of()), free));
        StudyInput one = funded(List.of(), List.of());
        assertEquals(List.of(), noBound(one, free, 0));
        assertEquals(List.of(BestPlan.NoBound.NOTHING_WITHIN), noBound(pair, EveryPlan.around(OptionalDouble.of(1))));
    }

    /** What keeps a cap is no cheaper than what need not, so the bound without it holds where awards come in other years than their buses. */
    @Test
    void whereAwardsMoveMoneyTheBoundLeavesTheCapOut() {
        StudyInput late = funded(List.of(), fund("Late", 1, 190_000, 1));
        EveryPlan free = every(late, EveryPlan.around(NO_CAP), 0);
        BestPlan without = free.best(electric(2));
        assertFalse(without.boundWithoutCap());
        double cap = free.all().stream().filter(p -> free.electric(p) == 2)
                .mapToDouble(p -> p.finance().budget().stream().mapToDouble(BudgetYear::appropriation).max().orElseThrow()).min().orElseThrow();
        EveryPlan every = every(late, EveryPlan.around(OptionalDouble.of(cap)), 0);
        BestPlan best = every.best(electric(2));
        assertTrue(best.boundWithoutCap());
        assertEquals(List.of(), best.noBound());
        assertEquals(without.bound().getAsDouble(), best.bound().getAsDouble(), 1e-6);
        assertTrue(best.bound().getAsDouble() <= every.least(2) + 0.01);
        assertFalse(every(pair, EveryPlan.around(OptionalDouble.of(1e9))).best(NO_GOAL).boundWithoutCap(), "a cap alone moves no money");
    }
}
