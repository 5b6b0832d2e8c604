package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.duty.DutyTable;
import org.junit.jupiter.api.Test;

class PlanFillingTest {
    private static final StudyResult RESULT = result();

    /** Eight diesel buses on route 1, in service 9 to 2 years ago. */
    private static StudyResult result() {
        List<BusInput> buses = new ArrayList<>();
        IntStream.range(0, 8).forEach(i -> buses.add(new BusInput("B" + i, Role.ROUTE, TinyDistrict.DIESEL, OptionalInt.of(0),
                -2 - i, 10_000, 0, 0, OptionalDouble.empty(), OptionalInt.empty())));
        StudyInput study = TinyDistrict.withBuses(TinyDistrict.withPlans(TinyDistrict.study(), TinyDistrict.dieselPlan()), buses);
        return StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }

    private static PlanFilling fill(FillRule.Pace pace, int number, int first, int last, FillRule.PortRule ports) {
        return PlanFilling.of(RESULT, RESULT.input().plans().get(0), new FillRule(pace, number, first, last, true, Set.of(Role.ROUTE), ports));
    }

    @Test
    void twoAYearOldestFirst() {
        PlanFilling two = fill(FillRule.Pace.PER_YEAR, 2, 1, 3, new FillRule.PortRule(OptionalInt.of(0), 2));
        assertEquals(List.of(new PlanFilling.Step(1, 7, TinyDistrict.ELECTRIC), new PlanFilling.Step(1, 6, TinyDistrict.ELECTRIC),
                new PlanFilling.Step(2, 5, TinyDistrict.ELECTRIC), new PlanFilling.Step(2, 4, TinyDistrict.ELECTRIC),
                new PlanFilling.Step(3, 3, TinyDistrict.ELECTRIC), new PlanFilling.Step(3, 2, TinyDistrict.ELECTRIC)), two.steps());
        assertEquals(List.of(new PlanFilling.Left(1, PlanFilling.Reason.TOO_LATE),
                new PlanFilling.Left(0, PlanFilling.Reason.TOO_LATE)), two.left());
        assertEquals(List.of(new PlanFilling.Ports(1, 1), new PlanFilling.Ports(2, 1), new PlanFilling.Ports(3, 1)), two.ports());
    }

    @Test
    void atAnAge() {
        PlanFilling atTen = fill(FillRule.Pace.AT_AGE, 10, 0, 3, FillRule.PortRule.NONE);
        assertEquals(List.of(1, 2, 3), atTen.steps().stream().map(PlanFilling.Step::year).toList());
        assertEquals(List.of(7, 6, 5), atTen.steps().stream().map(PlanFilling.Step::place).toList());
        assertEquals(List.of(), atTen.ports());
    }

    @Property(tries = 100)
    void allByAYearIsEven(@ForAll @IntRange(min = 0, max = 3) int first, @ForAll @IntRange(min = 0, max = 3) int more) {
        int last = Math.min(3, first + more);
        PlanFilling all = fill(FillRule.Pace.ALL_BY, 0, first, last, FillRule.PortRule.NONE);
        assertEquals(8, all.steps().size());
        List<Long> perYear = IntStream.rangeClosed(first, last).mapToObj(y -> all.steps().stream().filter(s -> s.year() == y).count())
                .toList();
        long most = perYear.stream().mapToLong(n -> n).max().orElseThrow();
        long least = perYear.stream().mapToLong(n -> n).min().orElseThrow();
        assertTrue(most - least <= 1, perYear.toString());
    }

    @Test
    void anEngineIsFollowedByTheSuccessorOfItsType() {
        PlanFilling engines = PlanFilling.of(RESULT, RESULT.input().plans().get(0), new FillRule(FillRule.Pace.PER_YEAR, 8, 0, 0, false,
                EnumSet.allOf(Role.class), FillRule.PortRule.NONE));
        assertTrue(engines.steps().stream().allMatch(s -> s.type() == TinyDistrict.DIESEL));
    }

    @Test
    void aRuleThatMakesNoSenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> fill(FillRule.Pace.PER_YEAR, 0, 0, 3, FillRule.PortRule.NONE));
        assertThrows(IllegalArgumentException.class, () -> fill(FillRule.Pace.ALL_BY, 0, 3, 2, FillRule.PortRule.NONE));
    }

    /** Two buses that are electric today, one step of the plan that stays, and the port that the plan buys before the rule begins. */
    @Test
    void portsCountTheBusesThatTheRuleDoesNotReplace() {
        List<BusInput> buses = new ArrayList<>();
        IntStream.range(0, 6).forEach(i -> buses.add(new BusInput("B" + i, i == 5 ? Role.SPARE : Role.ROUTE,
                i < 2 ? TinyDistrict.ELECTRIC : TinyDistrict.DIESEL, i == 5 ? OptionalInt.empty() : OptionalInt.of(0), -2 - i, 10_000, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty())));
        PlanInput plan = new PlanInput("Plan", List.of(new PlanInput.Replacement(3, 5, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(),
                List.of())), List.of(new PlanInput.PortPurchase(0, 0, 2, List.of()), new PlanInput.PortPurchase(2, 0, 9, List.of())), List.of(), List.of());
        StudyInput study = TinyDistrict.withBuses(TinyDistrict.withPlans(TinyDistrict.study(), plan), buses);
        PlanFilling filling = PlanFilling.of(StudyEvaluation.of(study, DutyTable.of(study.duty())), plan, new FillRule(FillRule.Pace.PER_YEAR, 1, 1, 2, true,
                Set.of(Role.ROUTE), new FillRule.PortRule(OptionalInt.of(0), 1)));
        assertEquals(List.of(new PlanFilling.Ports(1, 1), new PlanFilling.Ports(2, 1), new PlanFilling.Ports(3, 1)), filling.ports());
    }
}
