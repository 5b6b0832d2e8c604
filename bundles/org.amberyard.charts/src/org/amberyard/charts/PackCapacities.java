package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;

/** Capacity of every electric bus of a plan at the end of each year, and where packs come to their end. */
final class PackCapacities {
    private final StudyInput study;
    private final PlanResult plan;
    private final List<Bus> buses;
    private final List<End> ends;

    PackCapacities(StudyResult result, int plan) {
        this.study = result.input();
        this.plan = result.plans().get(plan);
        this.buses = buses();
        this.ends = this.plan.fleet().events().stream().filter(e -> cause(e) != null).map(this::end).toList();
    }

    /**
     * One bus in one place.
     *
     * @param place place in the fleet
     * @param unit its name
     * @param type its type
     * @param points capacity by time
     */
    record Bus(int place, String unit, int type, List<Point> points) {

        /** A point in words; points at the starts and ends of years take turns. */
        String words(int point) {
            Point at = points.get(point);
            boolean end = point % 2 == 1;
            return unit + ", " + (end ? "end" : "start") + " of " + Figures.pattern("0").format(end ? at.time() - 1 : at.time())
                    + ": " + Figures.wholePercent(at.health());
        }
    }

    /**
     * Capacity at a moment.
     *
     * @param time calendar year, with its part
     * @param health present over nominal capacity
     */
    record Point(double time, double health) {
    }

    /**
     * The end of a pack.
     *
     * @param place place in the fleet
     * @param unit the bus
     * @param at when and at what capacity
     * @param cause why
     * @param replaced true when the bus gets another pack, false when it retires
     */
    record End(int place, String unit, Point at, PackReplacement.Cause cause, boolean replaced) {

        /** The end in words. */
        String words() {
            return unit + " " + Figures.pattern("0").format(at.time() - 1) + " at " + Figures.wholePercent(at.health()) + ", "
                    + cause.label() + (replaced ? ", another pack" : ", the bus retires");
        }
    }

    List<Bus> list() {
        return buses;
    }

    List<End> ends() {
        return ends;
    }

    String plan() {
        return plan.name();
    }

    /** Number of a place in the fleet. */
    String place(int place) {
        return study.buses().get(place).name();
    }

    int lastYear() {
        return study.baseYear() + study.years() - 1;
    }

    String type(int type) {
        return study.types().get(type).name();
    }

    private List<Bus> buses() {
        TreeMap<String, List<VehicleYear>> byBus = new TreeMap<>();
        for (VehicleYear year : plan.fleet().years()) {
            if (study.types().get(year.vehicle().type()).electric().isPresent()) {
                String key = study.buses().get(year.place()).name() + "\n" + year.vehicle().unit();
                byBus.computeIfAbsent(key, k -> new ArrayList<>()).add(year);
            }
        }
        return byBus.values().stream().map(this::bus).toList();
    }

    /** Points at both ends of each year, so that a new pack shows as a step. */
    private Bus bus(List<VehicleYear> years) {
        List<Point> points = new ArrayList<>();
        for (VehicleYear year : years) {
            double start = (double) study.baseYear() + year.year();
            points.add(new Point(start, year.vehicle().health()));
            points.add(new Point(start + 1, year.healthEnd()));
        }
        VehicleYear first = years.get(0);
        return new Bus(first.place(), first.vehicle().unit(), first.vehicle().type(), List.copyOf(points));
    }

    private End end(FleetEvent event) {
        Point at = new Point(study.baseYear() + event.year() + 1.0, event.vehicle().health());
        return new End(event.place(), event.vehicle().unit(), at, cause(event), event instanceof FleetEvent.PackReplaced);
    }

    private static PackReplacement.Cause cause(FleetEvent event) {
        if (event instanceof FleetEvent.PackReplaced replaced) {
            return replaced.cause();
        }
        return event instanceof FleetEvent.RetiredForPack retired ? retired.cause() : null;
    }
}
