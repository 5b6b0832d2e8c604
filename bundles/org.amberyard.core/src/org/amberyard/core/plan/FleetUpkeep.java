package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.TaskEvent;
import org.amberyard.core.upkeep.TaskPlan;
import org.amberyard.core.upkeep.TaskSchedule;
import org.amberyard.core.upkeep.UpkeepCalibration;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.core.upkeep.WearYear;

/** Upkeep of a fleet over the years: every bus keeps its tasks' clocks wherever it moves. */
final class FleetUpkeep {
    private final StudyInput study;
    private final UpkeepRules rules;
    private final DrivingMonths months;
    private final List<TypeUpkeep> types;
    private final List<TaskPlan> plans;
    private final Map<String, TaskSchedule> schedules = new HashMap<>();
    private final Map<String, Double> factors = new HashMap<>();

    private FleetUpkeep(StudyInput study, FleetHistory fleet) {
        this.study = study;
        this.rules = study.rules().upkeep();
        this.months = new DrivingMonths(study.duty().routes());
        this.types = study.types().stream().map(t -> new TypeUpkeep(t, rules)).toList();
        double longestKm = fleet.years().stream().mapToDouble(y -> y.vehicle().odometerKm() + y.use().km()).max().orElse(0);
        this.plans = types.stream().map(t -> t.plan(longestKm)).toList();
    }

    /** Upkeep of each bus-year of a fleet, in the order of its years. */
    static List<UpkeepYear> of(StudyInput study, FleetHistory fleet) {
        FleetUpkeep upkeep = new FleetUpkeep(study, fleet);
        return fleet.years().stream().map(upkeep::year).toList();
    }

    private UpkeepYear year(VehicleYear record) {
        Vehicle vehicle = record.vehicle();
        TypeUpkeep type = types.get(vehicle.type());
        BusInput place = study.buses().get(record.place());
        WearYear wear = type.wear(record.use(), place.idleHoursPerYear(), months.of(place.route()));
        double age = vehicle.ageYears(record.year());
        double factor = factors.computeIfAbsent(vehicle.unit(), u -> factor(record, type.meanPerYear(wear, age)));
        List<TaskEvent> events = new ArrayList<>();
        if (type.hasTasks()) {
            events.addAll(schedules.computeIfAbsent(vehicle.unit(),
                    u -> new TaskSchedule(plans.get(vehicle.type()), age, vehicle.odometerKm(), wear)).next(wear, age));
        }
        return new UpkeepYear(record, costs(record, events, age, factor), new ShopCalendar(events), factor);
    }

    /** Measured over modelled upkeep in the first year of a bus of today; 1 where nothing was measured. */
    private double factor(VehicleYear record, double modelledPerYear) {
        Double measured = rules.measuredPerKm().get(record.vehicle().unit());
        return measured == null || record.use().km() <= 0 ? 1
                : UpkeepCalibration.of(measured, modelledPerYear / record.use().km()).factor();
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
