package org.amberyard.workbench.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.BusSteps;
import org.amberyard.workbench.plan.Standing.Kind;

/** The years of a place as far as the steps of the plan tell; what the rule does is for the results to say. */
final class OwnCourse {

    /**
     * A bus that comes from another place.
     *
     * @param year at whose start
     * @param from its place so far
     * @param type its type; null where that place has no bus
     */
    record Coming(int year, String from, VehicleType type) {
    }

    private OwnCourse() {
    }

    static List<Standing> of(BusSteps steps, List<Coming> coming, int firstYear, int years) {
        Standing[] course = new Standing[years];
        VehicleType type = today(steps.bus(), firstYear);
        for (int i = 0; i < years; i++) {
            course[i] = in(firstYear + i, steps, coming, type);
            type = course[i].type();
        }
        return List.of(course);
    }

    /** The type that stands in a place in the first year; a place that the fleet grows by is empty. */
    private static VehicleType today(Bus bus, int firstYear) {
        return bus.getInServiceYear() > firstYear ? null : bus.getType();
    }

    /** The type in a place before the steps of a year; steps before the first year of the study have no effect. */
    static VehicleType typeBefore(BusSteps steps, int firstYear, int year) {
        List<BusSteps.Step> taken = steps.steps().stream().filter(s -> s.year() >= firstYear && s.year() < year).toList();
        return taken.isEmpty() ? today(steps.bus(), firstYear) : taken.get(taken.size() - 1).type();
    }

    private static Standing in(int year, BusSteps steps, List<Coming> coming, VehicleType before) {
        Optional<BusSteps.Step> step = steps.in(year);
        Optional<Coming> arrival = coming.stream().filter(c -> c.year() == year && c.type() != null).findFirst();
        if (step.isPresent() && step.get().type() != null) {
            return new Standing(Kind.BY_PLAN, step.get().type(), "", false);
        }
        if (arrival.isPresent()) {
            return new Standing(Kind.MOVED, arrival.get().type(), arrival.get().from(), false);
        }
        if (step.isPresent()) {
            return new Standing(Kind.RETIRED, null, "", false);
        }
        boolean grows = before == null && steps.steps().isEmpty() && steps.bus().getInServiceYear() == year;
        return grows ? new Standing(Kind.BY_RULE, steps.bus().getType(), "", false)
                : new Standing(before == null ? Kind.NONE : Kind.KEPT, before, "", false);
    }
}
