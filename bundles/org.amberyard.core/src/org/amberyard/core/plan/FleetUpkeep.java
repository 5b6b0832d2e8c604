package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.upkeep.FailureSpread;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.StaggeredUpkeep;
import org.amberyard.core.upkeep.TaskEvent;
import org.amberyard.core.upkeep.TaskPlan;
import org.amberyard.core.upkeep.TaskSchedule;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.core.upkeep.WearYear;

/** Upkeep of a fleet over the years: every bus keeps its tasks' clocks wherever it moves. */
final class FleetUpkeep {
    private final StudyInput study;
    private final UpkeepRules rules;
    private final BusWear wear;
    private final UpkeepCalibrations calibrations;
    private final List<TypeUpkeep> types;
    private final List<TaskPlan> plans;
    private final Map<String, TaskSchedule> schedules = new HashMap<>();

    private FleetUpkeep(StudyInput study, FleetHistory fleet, StudyFigures figures) {
        this.study = study;
        this.rules = study.rules().upkeep();
        this.wear = figures.wear();
        this.calibrations = figures.calibrations();
        this.types = study.types().stream().map(t -> new TypeUpkeep(t, rules)).toList();
        double longestKm = fleet.years().stream().mapToDouble(y -> y.vehicle().odometerKm() + y.use().km()).max().orElse(0);
        this.plans = types.stream().map(t -> t.plan(law -> figures.renewals().of(law, longestKm))).toList();
    }

    /** Upkeep of each bus-year of a fleet, in the order of its years. */
    static List<UpkeepYear> of(StudyInput study, FleetHistory fleet, StudyFigures figures) {
        FleetUpkeep upkeep = new FleetUpkeep(study, fleet, figures);
        return fleet.years().stream().map(upkeep::year).toList();
    }

    private UpkeepYear year(VehicleYear record) {
        Vehicle vehicle = record.vehicle();
        TypeUpkeep type = types.get(vehicle.type());
        BusInput place = study.buses().get(record.place());
        WearYear driven = wear.of(type, record.use(), place.idleHoursPerYear(), place.route());
        double age = vehicle.ageYears(record.year());
        double factor = calibrations.of(vehicle.type()).factor();
        List<TaskEvent> events = new ArrayList<>();
        FailureSpread failures = FailureSpread.NONE;
        if (type.hasTasks()) {
            TaskSchedule schedule = schedules.computeIfAbsent(vehicle.unit(), u -> schedule(record, driven));
            failures = schedule.failures(driven, age, rules.labourRatePerHour()).costing(factor);
            events.addAll(schedule.next(driven, age));
        }
        return new UpkeepYear(record, costs(record, events, age, factor), new ShopCalendar(events), factor, failures);
    }

    /** The tasks of a bus as it comes into the study: those of its record are counted on from there. */
    private TaskSchedule schedule(VehicleYear first, WearYear driven) {
        Vehicle vehicle = first.vehicle();
        BusInput place = study.buses().get(first.place());
        Optional<BusRecord.TasksSince> since = place.record().tasks()
                .filter(s -> first.year() == 0 && vehicle.unit().equals(place.name()));
        int from = since.map(BusRecord.TasksSince::year).orElse(first.year());
        TaskSchedule schedule = new TaskSchedule(plans.get(vehicle.type()), vehicle.ageYears(from),
                StaggeredUpkeep.headStartMonths(first.place()),
                since.map(BusRecord.TasksSince::odometerKm).orElse(vehicle.odometerKm()), driven);
        for (int year = from; year < first.year(); year++) {
            schedule.next(driven, vehicle.ageYears(year));
        }
        return schedule;
    }

    private Map<UpkeepCause, Double> costs(VehicleYear record, List<TaskEvent> events, double age, double factor) {
        Map<UpkeepCause, Double> costs = new EnumMap<>(UpkeepCause.class);
        if (!types.get(record.vehicle().type()).hasTasks()) {
            double byRate = study.types().get(record.vehicle().type()).prices().upkeep().cost(record.use().km(), age);
            costs.put(UpkeepCause.UNSPLIT, factor * byRate);
        }
        events.forEach(e -> costs.merge(e.task().cause(), factor * e.cost(rules.labourRatePerHour()), Double::sum));
        return costs;
    }
}
