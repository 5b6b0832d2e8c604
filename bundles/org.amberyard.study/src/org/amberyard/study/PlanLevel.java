package org.amberyard.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.CapLevelling;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;

/** Moves of a plan's bus replacements that keep it within its yearly cap, ready to be written into it. */
public final class PlanLevel {
    private final Study study;
    private final Plan plan;
    private final CapLevelling levelling;

    /** @param levelling the moves of {@link #levelling} */
    public PlanLevel(Study study, Plan plan, CapLevelling levelling) {
        this.study = study;
        this.plan = plan;
        this.levelling = levelling;
    }

    /** True when a plan has a cap to be kept. */
    public static boolean hasCap(Plan plan) {
        return plan.getYearlyCap() > 0;
    }

    /**
     * Looks for the moves of a plan by its place. It reads results alone, so that it may run beside an open study.
     *
     * @param result results of the study as it stands
     * @throws IllegalArgumentException when the plan has no cap
     */
    public static CapLevelling levelling(StudyResult result, int plan, Progress progress) {
        return CapLevelling.of(result, plan, progress);
    }

    Study study() {
        return study;
    }

    Plan plan() {
        return plan;
    }

    CapLevelling levelling() {
        return levelling;
    }

    int year(int fromBase) {
        return study.getSettings().getBaseYear() + fromBase;
    }

    Bus bus(int place) {
        return study.getBuses().get(place);
    }

    /** The step of the plan that a move is about. */
    Optional<Replacement> step(CapLevelling.Shift shift) {
        return plan.getReplacements().stream()
                .filter(r -> r.getBus() == bus(shift.place()) && r.getYear() == year(shift.from())).findFirst();
    }

    /** True when there is nothing to write. */
    public boolean isEmpty() {
        return levelling.shifts().isEmpty();
    }

    /** Writes the moves; all steps are found before the first one moves, because one may move to where another stood. */
    public void write() {
        Map<Replacement, Integer> years = new LinkedHashMap<>();
        List<CapLevelling.Shift> shifts = levelling.shifts();
        shifts.forEach(s -> step(s).ifPresent(step -> years.put(step, year(s.to()))));
        years.forEach(Replacement::setYear);
    }
}
