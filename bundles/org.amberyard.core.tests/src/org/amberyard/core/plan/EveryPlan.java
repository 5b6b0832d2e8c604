package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.progress.Progress;

/**
 * Every plan of a {@link TinyDistrict} that replaces each of some buses by either type in a year no later than its rule would, or leaves
 * it to the rule, with money of every set of some programmes and a port for each electric bus; each is evaluated whole.
 */
final class EveryPlan {
    private static final int NEVER = TinyDistrict.YEARS;

    private final StudyInput study;
    private final DutyTable duty;
    private final PlanInput around;
    private final List<Integer> places;
    private final List<Integer> programmes;

    /**
     * @param around steps that stay, and how all is paid for
     * @param places places of the buses
     * @param programmes places of the programmes
     */
    EveryPlan(StudyInput study, PlanInput around, List<Integer> places, List<Integer> programmes) {
        this.study = study;
        this.duty = DutyTable.of(study.duty());
        this.around = around;
        this.places = places;
        this.programmes = programmes;
    }

    /** A plan without ports. */
    static PlanInput around(OptionalDouble cap, PlanInput.Replacement... staying) {
        return new PlanInput("P", List.of(staying), List.of(), List.of(), List.of()).paid(new PaymentPlan(List.of(), cap));
    }

    static PlanInput.Replacement step(int year, int place, int type, List<Integer> programmes) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(type), OptionalInt.empty(), programmes);
    }

    /** The best plan of the study that may decide on the same with one port for each bus. */
    BestPlan best(Optional<BestPlanAim.Goal> goal) {
        return best(goal, Progress.NONE);
    }

    BestPlan best(Optional<BestPlanAim.Goal> goal, Progress progress) {
        return BestPlan.of(evaluated(List.of(around)), 0, new BestPlanAim(0, TinyDistrict.YEARS - 1, Set.of(Role.ROUTE), true,
                new FillRule.PortRule(OptionalInt.of(0), 1), programmes, goal), progress);
    }

    StudyResult evaluated(List<PlanInput> plans) {
        return StudyEvaluation.of(TinyDistrict.withPlans(study, plans.toArray(PlanInput[]::new)), duty);
    }

    /** All of them, evaluated. */
    List<PlanResult> all() {
        List<List<PlanInput.Replacement>> every = List.of(List.of());
        for (int place : places) {
            every = every.stream().flatMap(steps -> options(place).map(one -> Stream.concat(steps.stream(), one.stream()).toList())).toList();
        }
        return evaluated(every.stream().map(this::plan).toList()).plans();
    }

    /** Present cost of the cheapest that keep the cap and have a number of electric buses in the last year. */
    double least(int electric) {
        return all().stream().filter(p -> BudgetProbe.Probed.of(p).excessCents() == 0 && electric(p) >= electric)
                .mapToDouble(PlanResult::presentCostAfterFinancing).min().orElseThrow();
    }

    /** Electric buses in the last year. */
    int electric(PlanResult plan) {
        return FleetYear.of(study, plan.fleet()).get(TinyDistrict.YEARS - 1).electric();
    }

    private PlanInput plan(List<PlanInput.Replacement> decided) {
        List<PlanInput.Replacement> steps = Stream.concat(around.replacements().stream(), decided.stream())
                .sorted(Comparator.comparingInt(PlanInput.Replacement::year)).toList();
        List<PlanInput.PortPurchase> ports = steps.stream().filter(s -> s.newType().equals(OptionalInt.of(TinyDistrict.ELECTRIC)))
                .map(s -> new PlanInput.PortPurchase(s.year(), 0, 1, programmes)).toList();
        return around.with(steps, ports);
    }

    private Stream<List<PlanInput.Replacement>> options(int place) {
        List<List<PlanInput.Replacement>> options = new ArrayList<>(List.of(List.of()));
        for (int year = 0; year <= byRule(place); year++) {
            options.add(List.of(step(year, place, TinyDistrict.DIESEL, List.of())));
            for (List<Integer> paying : sets(year)) {
                options.add(List.of(step(year, place, TinyDistrict.ELECTRIC, paying)));
            }
        }
        return options.stream();
    }

    private List<List<Integer>> sets(int year) {
        List<List<Integer>> sets = List.of(List.of());
        for (int programme : programmes.stream().filter(p -> study.funding().programmes().get(p).paysIn(year)).toList()) {
            sets = sets.stream().flatMap(set -> Stream.of(set, Stream.concat(set.stream(), Stream.of(programme)).toList())).toList();
        }
        return sets;
    }

    private int byRule(int place) {
        return FleetRollForward.of(study, around, duty, new PortFleet(study.depot(), List.of())).events().stream()
                .filter(e -> e instanceof FleetEvent.Bought && e.place() == place).mapToInt(FleetEvent::year).findFirst()
                .orElse(NEVER - 1);
    }
}
