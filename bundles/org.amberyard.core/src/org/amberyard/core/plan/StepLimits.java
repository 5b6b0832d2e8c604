package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DutyTable;

/**
 * The years to which the replacements of a plan may move. A bus leaves no later than the rule of its type or the year for which
 * its owner has marked it would have it, unless the plan itself keeps it longer; electric buses come no earlier than the plan's
 * first port, and none is moved to a year for which it would have had to be ordered before the base date; steps that meet in a place keep their order. Steps that retire a bus without another stay.
 */
final class StepLimits {
    private static final double MONTHS_A_YEAR = 12;

    private final StudyInput study;
    private final PlanInput plan;
    private final DutyTable duty;
    private final StudyFigures figures;
    private final PortFleet ports;
    private final int[] earliest;
    private final int[] latest;

    StepLimits(StudyResult result, PlanInput plan) {
        this.study = result.input();
        this.plan = plan;
        this.duty = result.duty();
        this.figures = result.figures();
        this.ports = new PortFleet(study.depot(), plan.ports());
        List<PlanInput.Replacement> steps = plan.replacements();
        this.earliest = steps.stream().mapToInt(this::earliest).toArray();
        this.latest = steps.stream().mapToInt(this::latest).toArray();
    }

    /** True when a step may be taken in a year, with the others in theirs. */
    boolean allow(int step, int year, int[] years) {
        return year >= earliest[step] && year <= latest[step] && keepsOrder(step, year, years);
    }

    private boolean keepsOrder(int step, int year, int[] years) {
        List<PlanInput.Replacement> steps = plan.replacements();
        return IntStream.range(0, steps.size()).filter(o -> o != step && steps.get(o).meets(steps.get(step))).allMatch(
                o -> Integer.compare(year, years[o]) == Integer.compare(steps.get(step).year(), steps.get(o).year()));
    }

    private int earliest(PlanInput.Replacement step) {
        if (step.newType().isEmpty()) {
            return step.year();
        }
        int there = Math.max(0, study.buses().get(step.place()).inServiceYear());
        boolean electric = study.types().get(step.newType().getAsInt()).electric().isPresent();
        int plugged = electric ? IntStream.range(0, study.years()).filter(y -> ports.count(y) > 0).findFirst().orElse(study.years())
                : 0;
        return Math.min(step.year(), Math.max(Math.max(there, plugged), delivered(step)));
    }

    /** First year at whose start a bus stands in the yard that is ordered no earlier than at the base date; a used one waits for no maker. */
    private int delivered(PlanInput.Replacement step) {
        return step.used().isPresent() ? 0
                : (int) Math.ceil(study.types().get(step.newType().getAsInt()).deliveryMonths() / MONTHS_A_YEAR);
    }

    private int latest(PlanInput.Replacement step) {
        return step.newType().isEmpty() ? step.year() : Math.max(step.year(), byRule(step));
    }

    /** Year in which the rule would replace the bus that stands in a step's place until then; the last year if never. */
    private int byRule(PlanInput.Replacement step) {
        PlanInput without = plan.with(plan.replacements().stream()
                .filter(s -> s.place() != step.place() || s.year() < step.year()).toList());
        int before = without.replacements().stream().filter(s -> s.place() == step.place())
                .mapToInt(PlanInput.Replacement::year).max().orElse(-1);
        return FleetRollForward.of(study, without, duty, ports, figures).events().stream()
                .filter(e -> e instanceof FleetEvent.Bought && e.place() == step.place() && e.year() > before)
                .mapToInt(FleetEvent::year).findFirst().orElse(study.years() - 1);
    }
}
