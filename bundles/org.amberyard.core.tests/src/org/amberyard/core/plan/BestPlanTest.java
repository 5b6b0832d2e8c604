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
import org.amberyard.core.progress.Progress;
import org.junit.jupiter.api.Test;

/** Two diesels over four years, held against every plan that there is, each evaluated whole. */
class BestPlanTest {
    private static final Optional<BestPlanAim.Goal> BOTH = Optional.of(new BestPlanAim.Goal(2, TinyDistrict.YEARS - 1));

    private final StudyInput study = TinyDistrict.withBuses(TinyDistrict.study(), List.of(bus("1", -13, 0), bus("2", -9, 1)));

    static BusInput bus(String name, int inService, int route) {
        return new BusInput(name, Role.ROUTE, TinyDistrict.DIESEL, OptionalInt.of(route), inService, 0, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty());
    }

    private EveryPlan every(OptionalDouble cap, Integer... programmes) {
        return new EveryPlan(study, EveryPlan.around(cap), List.of(0, 1), List.of(programmes));
    }

    private EveryPlan free(Integer... programmes) {
        return every(OptionalDouble.empty(), programmes);
    }

    @Test
    void progressNeverGoesBack() {
        List<Double> shares = Collections.synchronizedList(new ArrayList<>());
        free(0).best(Optional.empty(), shares::add);
        assertEquals(shares.stream().sorted().toList(), shares);
        assertTrue(shares.get(shares.size() - 1) > 0.5 && shares.get(shares.size() - 1) <= 1, shares.toString());
    }

    /** The least that the dearest year of a plan that makes both electric asks for. */
    private double tightest() {
        EveryPlan every = free();
        return every.all().stream().filter(p -> every.electric(p) == 2)
                .mapToDouble(p -> p.finance().budget().stream().mapToDouble(BudgetYear::appropriation).max().orElseThrow())
                .min().orElseThrow();
    }

    static void check(BestPlan best, double least, double mostGap) {
        assertEquals(List.of(), best.noBound());
        assertTrue(best.bound().getAsDouble() <= least + 0.01, best.bound() + " above " + least);
        assertEquals(least, best.presentCost(), 1e-9 * Math.abs(least));
        assertTrue(best.gapShare().getAsDouble() < mostGap, best.gapShare().toString());
        assertTrue(best.unmet().isEmpty());
        assertEquals(0, best.electricShort());
    }

    @Test
    void freeToChooseItFindsTheCheapestOfAllPlans() {
        check(free().best(Optional.empty()), free().least(0), 0.02);
    }

    @Test
    void withMoneyOfAProgrammeItFindsTheCheapestOfAllPlans() {
        check(free(0).best(Optional.empty()), free(0).least(0), 0.1);
    }

    @Test
    void whereBothMustBeElectricItFindsTheCheapestWayAndSaysWhatThatCosts() {
        BestPlan best = free().best(BOTH);
        check(best, free().least(2), 0.1);
        assertTrue(best.scarce().stream().anyMatch(s -> s.kind() == BestPlan.Kind.GOAL && s.worth() > 0), best.scarce().toString());
    }

    @Test
    void underACapItFindsTheCheapestThatKeepsIt() {
        EveryPlan capped = every(OptionalDouble.of(1.01 * tightest()));
        double least = capped.least(2);
        // Ports count in the cap whole, in the bound not at all: with one port for each of two buses it lies far below.
        check(capped.best(BOTH), least, 0.3);
        assertTrue(least > free().least(2), "the cap must bind for this test to say something");
    }

    @Test
    void aGoalOutOfReachIsSaid() {
        assertEquals(1, free().best(Optional.of(new BestPlanAim.Goal(3, TinyDistrict.YEARS - 1))).electricShort());
    }

    @Test
    void theSameStudyGivesTheSamePlan() {
        assertEquals(free(0).best(Optional.empty()).steps(), free(0).best(Optional.empty()).steps());
    }

    @Test
    void itStopsWhenNobodyWaits() {
        EveryPlan every = free();
        assertThrows(CancellationException.class, () -> every.best(Optional.empty(), share -> {
            throw new CancellationException();
        }));
    }

    @Test
    void aimsThatCannotBeMeantAreRefused() {
        FillRule.PortRule one = new FillRule.PortRule(OptionalInt.of(0), 1);
        assertThrows(IllegalArgumentException.class,
                () -> new BestPlanAim(2, 1, Set.of(Role.ROUTE), true, one, List.of(), Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new BestPlanAim(0, 1, Set.of(Role.ROUTE), true, FillRule.PortRule.NONE,
                List.of(), Optional.empty()));
        StudyResult result = free().evaluated(List.of(EveryPlan.around(OptionalDouble.empty())));
        BestPlanAim nobody = new BestPlanAim(0, 1, Set.of(Role.ACTIVITY), true, one, List.of(), Optional.empty());
        assertThrows(IllegalArgumentException.class, () -> BestPlan.of(result, 0, nobody, Progress.NONE));
    }
}
