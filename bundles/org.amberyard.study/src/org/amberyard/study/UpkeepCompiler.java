package org.amberyard.study;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.upkeep.BrakeWear;
import org.amberyard.core.upkeep.FailureLaw;
import org.amberyard.core.upkeep.Powertrain;
import org.amberyard.core.upkeep.Skill;
import org.amberyard.core.upkeep.TaskScope;
import org.amberyard.core.upkeep.TaskTrigger;
import org.amberyard.core.upkeep.TyreWear;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.model.fleet.MaintenanceTask;
import org.amberyard.model.study.Study;

/** Compiles the tasks of the shop; zero in the model means that an interval does not count. */
final class UpkeepCompiler {
    private UpkeepCompiler() {
    }

    static UpkeepRules rules(Study study) {
        Map<String, Double> measured = new HashMap<>();
        study.getBuses().stream().filter(b -> b.getMeasuredUpkeepPerKm() > 0)
                .forEach(b -> measured.put(b.getName(), b.getMeasuredUpkeepPerKm()));
        return new UpkeepRules(study.getMaintenanceTasks().stream().map(UpkeepCompiler::task).toList(),
                study.getSettings().getLabourRatePerHour(), study.getSettings().getHighVoltageHoursPerYear(),
                study.getSettings().getShopHoursPerYear(), measured, earlier(study));
    }

    private static Map<String, Double> earlier(Study study) {
        Map<String, Double> factors = new HashMap<>();
        study.getVehicleTypes().stream().filter(t -> t.getUpkeepFactor() > 0)
                .forEach(t -> factors.put(t.getName(), t.getUpkeepFactor()));
        return factors;
    }

    private static org.amberyard.core.upkeep.MaintenanceTask task(MaintenanceTask task) {
        TaskScope scope = new TaskScope(powertrain(task), task.getBodyTypes() == null ? "" : task.getBodyTypes());
        TaskTrigger trigger = new TaskTrigger(interval(task.getEveryKm()), interval(task.getEveryMonths()),
                interval(task.getEveryHours()), new BrakeWear(interval(task.getLiningKwh())));
        return new org.amberyard.core.upkeep.MaintenanceTask(task.getName(), cause(task), scope, trigger, failures(task),
                tyres(task), task.getPartsCost(), task.getLabourHours(), skill(task), task.getGrowthPerYear());
    }

    private static double interval(double entered) {
        return entered > 0 ? entered : Double.POSITIVE_INFINITY;
    }

    private static Optional<FailureLaw> failures(MaintenanceTask task) {
        return task.getFailureMeanKm() > 0 ? Optional.of(new FailureLaw(task.getFailureShape(), task.getFailureMeanKm()))
                : Optional.empty();
    }

    private static Optional<TyreWear> tyres(MaintenanceTask task) {
        return task.getTyreReferenceKg() > 0 ? Optional.of(new TyreWear(task.getTyreReferenceKg())) : Optional.empty();
    }

    private static UpkeepCause cause(MaintenanceTask task) {
        return switch (task.getCause()) {
            case INSPECTION -> UpkeepCause.INSPECTION;
            case ENGINE -> UpkeepCause.ENGINE;
            case EXHAUST -> UpkeepCause.EXHAUST;
            case TRANSMISSION -> UpkeepCause.TRANSMISSION;
            case HIGH_VOLTAGE -> UpkeepCause.HIGH_VOLTAGE;
            case COOLING -> UpkeepCause.COOLING;
            case BRAKES -> UpkeepCause.BRAKES;
            case TYRES -> UpkeepCause.TYRES;
            case HEATING -> UpkeepCause.HEATING;
            case ELECTRICAL -> UpkeepCause.ELECTRICAL;
            case BODY -> UpkeepCause.BODY;
            case OVERHAUL -> UpkeepCause.OVERHAUL;
        };
    }

    private static Skill skill(MaintenanceTask task) {
        return switch (task.getSkill()) {
            case DRIVER -> Skill.DRIVER;
            case TECHNICIAN -> Skill.TECHNICIAN;
            case SENIOR -> Skill.SENIOR;
            case HIGH_VOLTAGE -> Skill.HIGH_VOLTAGE;
        };
    }

    private static Powertrain powertrain(MaintenanceTask task) {
        return switch (task.getPowertrain()) {
            case ALL -> Powertrain.ALL;
            case ENGINE -> Powertrain.ENGINE;
            case DIESEL -> Powertrain.DIESEL;
            case GASOLINE -> Powertrain.GASOLINE;
            case PROPANE -> Powertrain.PROPANE;
            case ELECTRIC -> Powertrain.ELECTRIC;
        };
    }
}
