package org.amberyard.core.plan;

import java.util.List;
import java.util.function.Function;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.upkeep.FailureLaw;
import org.amberyard.core.upkeep.MaintenanceTask;
import org.amberyard.core.upkeep.Powertrain;
import org.amberyard.core.upkeep.TaskPlan;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.core.upkeep.WearYear;
import org.amberyard.core.upkeep.WeibullRenewal;

/** Upkeep of a vehicle type: the tasks that apply to it, and what driving does to one of its buses. */
final class TypeUpkeep {
    private final VehicleTypeInput type;
    private final UpkeepRules rules;
    private final List<MaintenanceTask> tasks;

    TypeUpkeep(VehicleTypeInput type, UpkeepRules rules) {
        this.type = type;
        this.rules = rules;
        this.tasks = rules.tasks(powertrain(type), type.spec().body().bodyType());
    }

    private static Powertrain powertrain(VehicleTypeInput type) {
        if (!(type.spec() instanceof EngineSpec engine)) {
            return Powertrain.ELECTRIC;
        }
        return switch (engine.fuel()) {
            case DIESEL -> Powertrain.DIESEL;
            case GASOLINE -> Powertrain.GASOLINE;
            case PROPANE -> Powertrain.PROPANE;
        };
    }

    String bodyType() {
        return type.spec().body().bodyType();
    }

    boolean hasTasks() {
        return !tasks.isEmpty();
    }

    /** The tasks with the renewals of their failures. */
    TaskPlan plan(Function<FailureLaw, WeibullRenewal> renewalOf) {
        return new TaskPlan(tasks, renewalOf);
    }

    /** Wear of a year of driving; where the energy model does not say where energy goes, brakes and tyres wear by distance. */
    WearYear wear(EnergyUse use, double idleHours, List<Double> monthShares, double ridersKg) {
        boolean told = use.causes().unsplitKwh() == 0;
        double brakeKwh = told ? use.causes().frictionBrakeKwh() : 0;
        double tyreKwh = told ? use.causes().rollingKwh() + use.causes().dragKwh() + brakeKwh
                + (type.electric().isPresent() ? use.recoveredKwh() : 0) : 0;
        double hours = use.hours() + (type.engine().isPresent() ? idleHours : 0);
        return new WearYear(use.km(), hours, brakeKwh, tyreKwh, type.spec().body().curbMassKg() + ridersKg, monthShares);
    }

    /** Long-run mean cost of a year on a bus of an age, base-date money. */
    double meanPerYear(WearYear year, double ageYears) {
        return hasTasks() ? TaskPlan.meanPerYear(tasks, year, ageYears, rules.labourRatePerHour())
                : type.prices().upkeep().cost(year.km(), ageYears);
    }
}
