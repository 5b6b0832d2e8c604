package org.amberyard.core.plan;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.EngineFactors;
import org.amberyard.core.air.WearFactors;
import org.amberyard.core.duty.FuelKind;

/**
 * Which emission factors took part in the emissions of a study's plans: those of engines, fuels and dust of the buses in them,
 * of heaters that burnt fuel, and of power plants where energy was charged. Factors of the other basis of the grid, which are
 * told for comparison alone, did not.
 */
public final class FactorUse {
    private final StudyInput study;
    private final AirFactors factors;
    private final Set<FuelKind> fuels = EnumSet.noneOf(FuelKind.class);
    private final Set<EngineFactors> engines = new HashSet<>();
    private final Set<WearFactors> wear = new HashSet<>();
    private boolean heaters;
    private boolean grid;

    private FactorUse(StudyInput study) {
        this.study = study;
        this.factors = study.air().factors();
    }

    /** Factors that took part in any plan. */
    public static FactorUse of(StudyResult result) {
        FactorUse use = new FactorUse(result.input());
        for (PlanResult plan : result.plans()) {
            plan.fleet().events().forEach(e -> use.add(e.vehicle()));
            plan.fleet().years().forEach(use::add);
        }
        return use;
    }

    private void add(VehicleYear year) {
        add(year.vehicle());
        heaters |= year.use().heaterFuelL() > 0;
        grid |= year.meterKwh() > 0;
    }

    private void add(Vehicle bus) {
        VehicleTypeInput type = study.types().get(bus.type());
        String body = type.spec().body().bodyType();
        wear.add(factors.wear(body));
        type.engine().ifPresent(e -> {
            fuels.add(e.fuel());
            engines.add(factors.engine(e.fuel(), body, EngineModelYear.of(study, bus)));
        });
    }

    /** True when a fuel was burnt by an engine, or by a heater, which burns diesel. */
    public boolean fuel(FuelKind fuel) {
        return fuels.contains(fuel) || heaters && fuel == FuelKind.DIESEL;
    }

    /** True when a bus had an engine of a group. */
    public boolean engine(EngineFactors group) {
        return engines.contains(group);
    }

    /** True when a bus of a group made dust. */
    public boolean wear(WearFactors group) {
        return wear.contains(group);
    }

    /** True when a heater burnt fuel. */
    public boolean heaters() {
        return heaters;
    }

    /** True when buses were charged from the grid. */
    public boolean grid() {
        return grid;
    }
}
