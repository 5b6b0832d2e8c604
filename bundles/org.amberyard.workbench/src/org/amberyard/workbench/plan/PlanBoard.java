package org.amberyard.workbench.plan;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.study.BusSteps;
import org.amberyard.workbench.plan.OwnCourse.Coming;
import org.amberyard.workbench.plan.PlaceSteps.Arrival;

/** What a plan makes of every place in every year: by its results where they fit its steps, else by the steps themselves. */
final class PlanBoard {

    private final Study study;
    private final Map<Bus, BusSteps> steps = new HashMap<>();
    private final Map<Bus, List<Standing>> courses = new HashMap<>();
    private Map<Bus, BusSteps> preview = Map.of();
    private Plan plan;
    private Optional<EvaluatedPlan> evaluated = Optional.empty();

    PlanBoard(Study study) {
        this.study = study;
    }

    /** Reads a plan again, and results if there are any; null for no plan. */
    void update(Plan newPlan, Optional<StudyResult> result) {
        plan = newPlan;
        evaluated = plan == null || study.getSettings() == null ? Optional.empty() : EvaluatedPlan.of(study, plan, result);
        layOut();
    }

    /** Shows steps of some buses as they would be; none to show what is there. */
    void preview(Map<Bus, BusSteps> changed) {
        preview = Map.copyOf(changed);
        layOut();
    }

    private void layOut() {
        steps.clear();
        courses.clear();
        if (plan == null || study.getSettings() == null) {
            return;
        }
        steps.putAll(BusSteps.of(plan, study.getBuses()));
        preview.forEach(steps::replace);
        Map<Bus, List<Coming>> coming = coming();
        study.getBuses().forEach(bus -> courses.put(bus, course(steps.get(bus), coming.getOrDefault(bus, List.of()))));
    }

    private Map<Bus, List<Coming>> coming() {
        Map<Bus, List<Coming>> coming = new HashMap<>();
        steps.values().forEach(of -> of.steps().stream().filter(s -> s.cascadeTo() != null)
                .forEach(s -> coming.computeIfAbsent(s.cascadeTo(), b -> new ArrayList<>()).add(new Coming(s.year(),
                        ElementNames.of(of.bus()), OwnCourse.typeBefore(of, firstYear(), s.year())))));
        return coming;
    }

    private List<Standing> course(BusSteps of, List<Coming> coming) {
        PlaceSteps deciding = PlaceSteps.of(of, coming.stream().map(c -> new Arrival(c.year(), c.from())).toList(), firstYear(),
                firstYear() + years() - 1);
        return evaluated.flatMap(e -> e.course(deciding)).orElseGet(() -> OwnCourse.of(of, coming, firstYear(), years()));
    }

    /** The plan on show, if there is one. */
    Optional<Plan> plan() {
        return Optional.ofNullable(plan);
    }

    int firstYear() {
        return study.getSettings().getBaseYear();
    }

    int years() {
        Settings settings = study.getSettings();
        return plan == null || settings == null ? 0 : settings.getHorizonYears();
    }

    /** What stands in the place of a bus in a year. */
    Standing at(Bus bus, int year) {
        return courses.get(bus).get(year - firstYear());
    }

    /** What a programme pays for the bus bought by a step, in words; empty as long as it is not known. */
    Optional<String> paid(Bus bus, int year, String programme) {
        return evaluated.filter(e -> at(bus, year).settled()).flatMap(e -> e.paid(study.getBuses().indexOf(bus), year, programme)
                .map(amount -> amount == 0 ? Messages.Words_nothing
                        : e.currency() + " " + NumberFormat.getIntegerInstance().format(amount)));
    }

    /** The steps for a bus as they are shown. */
    BusSteps steps(Bus bus) {
        return steps.get(bus);
    }
}
