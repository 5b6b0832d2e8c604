package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;

/**
 * Which routes the spares of a plan can stand in for in a year. A bus fits the routes of its body type; an electric one must
 * also hold through a week of the route's worst days with its pack as worn as at the start of the year and the ports of that
 * year.
 *
 * @param year year, counted from the base year
 * @param spares spare places with a bus, in the order of the fleet
 * @param uncovered routes that are driven and that no spare can do, longest first
 */
public record SpareCover(int year, List<Spare> spares, List<Integer> uncovered) {

    /**
     * One spare.
     *
     * @param place place in the list of buses
     * @param vehicle the bus that stands there
     * @param covered routes of its body type that it can do, longest first
     * @param notCovered routes of its body type that it cannot do, longest first
     */
    public record Spare(int place, Vehicle vehicle, List<Integer> covered, List<Integer> notCovered) {

        public Spare {
            covered = List.copyOf(covered);
            notCovered = List.copyOf(notCovered);
        }
    }

    public SpareCover {
        spares = List.copyOf(spares);
        uncovered = List.copyOf(uncovered);
    }

    /** Cover by a plan in a year. */
    public static SpareCover of(StudyInput study, DutyTable duty, PlanResult plan, int year) {
        PortFleet ports = new PortFleet(study.depot(), plan.plan().ports());
        List<Integer> routes = longestFirst(study.duty().routes());
        List<Spare> spares = new ArrayList<>();
        for (VehicleYear bus : plan.fleet().inYear(year)) {
            if (study.buses().get(bus.place()).role() == Role.SPARE) {
                double batteryKw = ports.batteryKw(study.types().get(bus.vehicle().type()), year);
                spares.add(spare(study, duty, bus, batteryKw, routes));
            }
        }
        return new SpareCover(year, spares,
                routes.stream().filter(r -> spares.stream().noneMatch(s -> s.covered().contains(r))).toList());
    }

    private static List<Integer> longestFirst(List<RouteInput> routes) {
        return IntStream.range(0, routes.size()).boxed().filter(r -> blockKm(routes.get(r)) > 0)
                .sorted(Comparator.comparing((Integer r) -> -blockKm(routes.get(r)))).toList();
    }

    /** Distance of a route's longest day, school days and days of the extended-year programme apart, km; 0 when never driven. */
    public static double blockKm(RouteInput route) {
        return IntStream.range(0, 2 * Climate.MONTHS).mapToDouble(i -> route.runs().stream()
                .filter(r -> r.daysByMonth().get(i / 2) > 0 && r.extendedYear() == (i % 2 == 1))
                .mapToDouble(RunInput::distanceKm).sum()).max().orElse(0);
    }

    private static Spare spare(StudyInput study, DutyTable duty, VehicleYear bus, double batteryKw, List<Integer> routes) {
        int type = bus.vehicle().type();
        List<Integer> covered = new ArrayList<>();
        List<Integer> notCovered = new ArrayList<>();
        for (int route : routes) {
            if (duty.use(route, type).isPresent()) {
                (passes(study, duty, bus.vehicle(), batteryKw, route) ? covered : notCovered).add(route);
            }
        }
        return new Spare(bus.place(), bus.vehicle(), covered, notCovered);
    }

    private static boolean passes(StudyInput study, DutyTable duty, Vehicle bus, double batteryKw, int route) {
        return study.types().get(bus.type()).electric().map(electric -> {
            BatterySpec battery = electric.battery();
            BlockCheck check = RouteFitting.check(study, batteryKw, study.middayCharging());
            double health = bus.health();
            return duty.use(route, bus.type()).orElseThrow().designDays().stream()
                    .allMatch(d -> check.of(d.block(check.midday()), battery, health).passes());
        }).orElse(true);
    }
}
