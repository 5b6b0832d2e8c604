package org.amberyard.charts;

import java.util.Optional;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.units.MonthNames;

/** Says why a bus has no electric day to show. */
final class NoBusDay {
    private final StudyResult result;
    private final StudyInput study;
    private final int plan;
    private final BusDay.Asked asked;

    NoBusDay(StudyResult result, int plan, BusDay.Asked asked) {
        this.result = result;
        this.study = result.input();
        this.plan = plan;
        this.asked = asked;
    }

    String reason() {
        String bus = study.buses().get(asked.place()).name();
        Optional<VehicleTypeInput> type = type();
        if (type.isEmpty()) {
            return "Nothing stands in the place of " + bus + " in " + year() + ".";
        }
        if (type.get().electric().isEmpty()) {
            return bus + " is not electric in " + year() + "; its type is " + type.get().name() + ".";
        }
        return study.buses().get(asked.place()).route().isEmpty() ? bus + " has no route." : undriven(bus, type.get());
    }

    private String undriven(String bus, VehicleTypeInput type) {
        int route = study.buses().get(asked.place()).route().orElseThrow();
        String name = study.duty().routes().get(route).name();
        return result.duty().use(route, study.types().indexOf(type)).isEmpty()
                ? type.name() + ", the bus of " + bus + ", does not fit " + name + "."
                : name + ", the route of " + bus + ", is not driven on " + (asked.extendedYear() ? "extended-year" : "school")
                        + " days of " + MonthNames.full(asked.month()) + ".";
    }

    private int year() {
        return study.baseYear() + asked.year();
    }

    private Optional<VehicleTypeInput> type() {
        return result.plans().get(plan).fleet().inYear(asked.year()).stream().filter(v -> v.place() == asked.place())
                .findFirst().map(v -> study.types().get(v.vehicle().type()));
    }
}
