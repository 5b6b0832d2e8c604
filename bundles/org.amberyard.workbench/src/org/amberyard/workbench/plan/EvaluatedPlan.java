package org.amberyard.workbench.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.workbench.plan.Standing.Kind;

/** The years of all places as the results of a plan have them. */
final class EvaluatedPlan {

    private final StudyInput study;
    private final Map<String, VehicleType> types = new HashMap<>();
    private final Map<PlaceSteps, List<Standing>> courses = new HashMap<>();
    private final PlanResult result;

    private EvaluatedPlan(Study model, StudyResult result, PlanResult plan) {
        study = result.input();
        this.result = plan;
        model.getVehicleTypes().forEach(t -> types.put(ElementNames.of(t), t));
        List<Standing[]> years = IntStream.range(0, study.buses().size()).mapToObj(b -> new Standing[study.years()]).toList();
        for (VehicleYear year : plan.fleet().years()) {
            years.get(year.place())[year.year()] = new Standing(Kind.KEPT, type(year.vehicle().type()), "", true);
        }
        plan.fleet().events().forEach(event -> mark(event, years.get(event.place())));
        for (int place = 0; place < study.buses().size(); place++) {
            PlaceSteps steps = PlaceSteps.of(study, plan.plan(), place);
            courses.put(steps, course(steps, years.get(place)));
        }
    }

    /** The results of a plan; empty where there are none, or for other years than those that the study has now. */
    static Optional<EvaluatedPlan> of(Study model, Plan plan, Optional<StudyResult> result) {
        return result.filter(r -> r.input().baseYear() == model.getSettings().getBaseYear()
                && r.input().years() == model.getSettings().getHorizonYears())
                .flatMap(r -> find(model, plan, r).map(p -> new EvaluatedPlan(model, r, p)));
    }

    /** The plan by its name, else the one in its place, which has just got another name. */
    private static Optional<PlanResult> find(Study model, Plan plan, StudyResult result) {
        int place = model.getPlans().indexOf(plan);
        return result.plans().stream().filter(p -> p.name().equals(plan.getName())).findFirst()
                .or(() -> place < result.plans().size() ? Optional.of(result.plans().get(place)) : Optional.empty());
    }

    private VehicleType type(int place) {
        return types.get(study.types().get(place).name());
    }

    private void mark(FleetEvent event, Standing[] years) {
        if (event instanceof FleetEvent.Bought bought) {
            Kind kind = bought.step().isPresent() ? Kind.BY_PLAN : Kind.BY_RULE;
            years[event.year()] = new Standing(kind, type(bought.vehicle().type()), "", true);
        } else if (event instanceof FleetEvent.Moved moved) {
            years[event.year()] = new Standing(Kind.MOVED, type(moved.vehicle().type()), study.buses().get(moved.from()).name(),
                    true);
        }
    }

    /** Years without a record have no bus. */
    private List<Standing> course(PlaceSteps steps, Standing[] years) {
        List<Standing> course = new ArrayList<>(Collections.nCopies(years.length, new Standing(Kind.NONE, null, "", true)));
        for (int i = 0; i < years.length; i++) {
            int year = study.baseYear() + i;
            boolean retired = steps.taken().stream().anyMatch(t -> t.year() == year && t.type().isEmpty());
            if (years[i] != null) {
                course.set(i, years[i]);
            } else if (retired) {
                course.set(i, new Standing(Kind.RETIRED, null, "", true));
            }
        }
        return List.copyOf(course);
    }

    /** What a programme pays for the bus bought for a place in a fiscal year, money of that year; empty when it was not asked. */
    Optional<Double> paid(int place, int year, String programme) {
        return result.funding().awards().lines().stream().filter(l -> l.purchase().kind() == Purchase.Kind.BUS
                && l.purchase().row() == place && l.purchase().year() == year - study.baseYear())
                .flatMap(l -> l.awards().stream()).filter(a -> name(a).equals(programme)).map(Award::paid).findFirst();
    }

    private String name(Award award) {
        return study.funding().programmes().get(award.programme()).name();
    }

    /** Currency of what is paid. */
    String currency() {
        return study.currency();
    }

    /** The years of a place, when the results were computed with the same steps for it. */
    Optional<List<Standing>> course(PlaceSteps steps) {
        return Optional.ofNullable(courses.get(steps));
    }
}
