package org.amberyard.core.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.PackYears.PackYear;
import org.amberyard.core.duty.RouteUse;

/** Life left of the packs of a plan's buses from the start of a year, on any route that they can do then. */
final class PackLifeLeft {
    /** Lives are told up to this. */
    private static final double LONGEST_YEARS = 40;
    private static final int HALVINGS = 12;

    private final StudyInput study;
    private final DutyTable duty;
    private final PortFleet ports;
    private final int year;
    private final Map<Asked, OptionalDouble> known = new HashMap<>();

    private record Asked(int bus, int routeOf) {
    }

    PackLifeLeft(StudyResult result, int plan, int year) {
        this.study = result.input();
        this.duty = result.duty();
        this.ports = new PortFleet(study.depot(), result.plans().get(plan).plan().ports());
        this.year = year;
    }

    /** Years on the route of a place; none for an engine bus, without a route, or where the bus cannot do it as it is. */
    OptionalDouble years(VehicleYear bus, int routeOf) {
        return known.computeIfAbsent(new Asked(bus.place(), routeOf), a -> {
            OptionalInt route = study.buses().get(routeOf).route();
            Optional<ElectricSpec> electric = study.types().get(bus.vehicle().type()).electric();
            return route.isEmpty() || electric.isEmpty() ? OptionalDouble.empty()
                    : duty.use(route.getAsInt(), bus.vehicle().type()).filter(u -> u.year().km() > 0)
                            .map(u -> years(bus.vehicle(), electric.get().battery(), u)).orElse(OptionalDouble.empty());
        });
    }

    private OptionalDouble years(Vehicle bus, BatterySpec battery, RouteUse use) {
        BlockCheck check = RouteFitting.check(study, ports.batteryKw(study.types().get(bus.type()), year),
                study.middayCharging());
        if (!RouteFitting.worst(RouteFitting.days(use, check, battery, bus.health())).passes()) {
            return OptionalDouble.empty();
        }
        PackYear ahead = duty.packYears().of(use, battery, check);
        double leastHealth = duty.packYears().leastHealth(use, battery, check);
        double good = 0;
        double due = LONGEST_YEARS;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (good + due) / 2;
            PackWear wear = bus.pack().wear().after(ahead.rate(), ahead.fullCycles(), middle);
            if (PackReplacement.due(battery, wear, leastHealth).isPresent()) {
                due = middle;
            } else {
                good = middle;
            }
        }
        return OptionalDouble.of(due);
    }
}
