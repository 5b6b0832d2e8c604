package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.progress.Progress;
import org.junit.jupiter.api.Test;

/** Two diesels over four years, held against every plan that there is, each evaluated whole. */
class BestPlanTest {
    private static final int NEVER = TinyDistrict.YEARS;

    private final StudyInput study = TinyDistrict.withBuses(TinyDistrict.study(), List.of(bus("1", -13, 0), bus("2", -9, 1)));
    private final DutyTable duty = DutyTable.of(study.duty());

    private static BusInput bus(String name, int inService, int route) {
        return new BusInput(name, Role.ROUTE, TinyDistrict.DIESEL, OptionalInt.of(route), inService, 0, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty());
    }

    private static BestPlanAim aim(Optional<BestPlanAim.Goal> goal, Integer... programmes) {
        return new BestPlanAim(0, TinyDistrict.YEARS - 1, Set.of(Role.ROUTE), true, new FillRule.PortRule(OptionalInt.of(0), 1),
                List.of(programmes), goal);
    }

    private static PlanInput plan(double cap, List<PlanInput.Replacement> steps, List<PlanInput.PortPurchase> ports) {
        return new PlanInput("P", steps, ports, List.of(), List.of()).paid(new PaymentPlan(List.of(), cap(cap)));
    }

    private static OptionalDouble cap(double cap) {
        return cap > 0 ? OptionalDouble.of(cap) : OptionalDouble.empty();
    }

    private StudyResult evaluated(List<PlanInput> plans) {
        return StudyEvaluation.of(TinyDistrict.withPlans(study, plans.toArray(PlanInput[]::new)), duty);
    }

    @Test
    void progressNeverGoesBack() {
        List<Double> shares = Collections.synchronizedList(new ArrayList<>());
        BestPlan.of(evaluated(List.of(plan(0, List.of(), List.of()))), 0, aim(Optional.empty(), 0), shares::add);
        assertEquals(shares.stream().sorted().toList(), shares);
        assertTrue(shares.get(shares.size() - 1) > 0.5 && shares.get(shares.size() - 1) <= 1, shares.toString());
    }

    private BestPlan best(double cap, BestPlanAim aim) {
        return BestPlan.of(evaluated(List.of(plan(cap, List.of(), List.of()))), 0, aim, Progress.NONE);
    }

    /** All plans: each bus by a type in a year or never, with money of the fund where it is asked, and a port for each electric bus. */
    private List<PlanInput> all(double cap, boolean fund) {
        List<PlanInput> all = new ArrayList<>();
        for (PlanInput.Replacement one : steps(0, fund)) {
            for (PlanInput.Replacement other : steps(1, fund)) {
                List<PlanInput.Replacement> steps = Stream.of(one, other).filter(s -> s.year() < NEVER).toList();
                all.add(plan(cap, steps, steps.stream().filter(s -> s.newType().equals(OptionalInt.of(TinyDistrict.ELECTRIC)))
                        .map(s -> new PlanInput.PortPurchase(s.year(), 0, 1, fund ? List.of(0) : List.of())).toList()));
            }
        }
        return all;
    }

    private List<PlanInput.Replacement> steps(int place, boolean fund) {
        int rule = FleetRollForward.of(study, plan(0, List.of(), List.of()), duty, new PortFleet(study.depot(), List.of())).events()
                .stream().filter(e -> e instanceof FleetEvent.Bought && e.place() == place).mapToInt(FleetEvent::year).findFirst()
                .orElse(NEVER - 1);
        List<PlanInput.Replacement> steps = new ArrayList<>(List.of(step(NEVER, place, TinyDistrict.DIESEL, List.of())));
        for (int year = 0; year <= rule; year++) {
            steps.add(step(year, place, TinyDistrict.DIESEL, List.of()));
            steps.add(step(year, place, TinyDistrict.ELECTRIC, List.of()));
            if (fund && year >= 1 && year <= 2) {
                steps.add(step(year, place, TinyDistrict.ELECTRIC, List.of(0)));
            }
        }
        return steps;
    }

    private static PlanInput.Replacement step(int year, int place, int type, List<Integer> programmes) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(type), OptionalInt.empty(), programmes);
    }

    private double least(double cap, boolean fund, int electric) {
        StudyResult every = evaluated(all(cap, fund));
        return every.plans().stream().filter(p -> BudgetProbe.Probed.of(p).excessCents() == 0
                && FleetYear.of(study, p.fleet()).get(TinyDistrict.YEARS - 1).electric() >= electric)
                .mapToDouble(PlanResult::presentCostAfterFinancing).min().orElseThrow();
    }

    /** The least that the dearest year of a plan that makes both electric asks for. */
    private double tightest() {
        return evaluated(all(0, false)).plans().stream()
                .filter(p -> FleetYear.of(study, p.fleet()).get(TinyDistrict.YEARS - 1).electric() == 2)
                .mapToDouble(p -> p.finance().budget().stream().mapToDouble(BudgetYear::appropriation).max().orElseThrow())
                .min().orElseThrow();
    }

    private void check(BestPlan best, double least, double mostGap) {
        assertTrue(best.noBound().isEmpty());
        assertTrue(best.bound().getAsDouble() <= least + 0.01, best.bound() + " above " + least);
        assertEquals(least, best.presentCost(), 1e-9 * least);
        assertTrue(best.gapShare().getAsDouble() < mostGap, best.gapShare().toString());
        assertTrue(best.unmet().isEmpty());
        assertEquals(0, best.electricShort());
    }

    @Test
    void freeToChooseItFindsTheCheapestOfAllPlans() {
        check(best(0, aim(Optional.empty())), least(0, false, 0), 0.02);
    }

    @Test
    void withMoneyOfAProgrammeItFindsTheCheapestOfAllPlans() {
        check(best(0, aim(Optional.empty(), 0)), least(0, true, 0), 0.1);
    }

    @Test
    void whereBothMustBeElectricItFindsTheCheapestWayAndSaysWhatThatCosts() {
        BestPlan best = best(0, aim(Optional.of(new BestPlanAim.Goal(2, TinyDistrict.YEARS - 1))));
        check(best, least(0, false, 2), 0.1);
        assertTrue(best.scarce().stream().anyMatch(s -> s.kind() == BestPlan.Kind.GOAL && s.worth() > 0), best.scarce().toString());
    }

    @Test
    void underACapItFindsTheCheapestThatKeepsIt() {
        double cap = 1.01 * tightest();
        BestPlan best = best(cap, aim(Optional.of(new BestPlanAim.Goal(2, TinyDistrict.YEARS - 1))));
        // Ports count in the cap whole, in the bound not at all: with one port for each of two buses it lies far below.
        check(best, least(cap, false, 2), 0.3);
        assertTrue(least(cap, false, 2) > least(0, false, 2), "the cap must bind for this test to say something");
    }

    @Test
    void aGoalOutOfReachIsSaid() {
        assertEquals(1, best(0, aim(Optional.of(new BestPlanAim.Goal(3, TinyDistrict.YEARS - 1)))).electricShort());
    }

    @Test
    void theSameStudyGivesTheSamePlan() {
        BestPlanAim aim = aim(Optional.empty(), 0);
        assertEquals(best(0, aim).steps(), best(0, aim).steps());
    }

    @Test
    void itStopsWhenNobodyWaits() {
        assertThrows(CancellationException.class, () -> BestPlan.of(evaluated(List.of(plan(0, List.of(), List.of()))), 0,
                aim(Optional.empty()), share -> {
                    throw new CancellationException();
                }));
    }

    @Test
    void aimsThatCannotBeMeantAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new BestPlanAim(2, 1, Set.of(Role.ROUTE), true,
                new FillRule.PortRule(OptionalInt.of(0), 1), List.of(), Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new BestPlanAim(0, 1, Set.of(Role.ROUTE), true, FillRule.PortRule.NONE,
                List.of(), Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> best(0, new BestPlanAim(0, 1, Set.of(Role.ACTIVITY), true,
                new FillRule.PortRule(OptionalInt.of(0), 1), List.of(), Optional.empty())));
    }
}
