package org.amberyard.core.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Emissions;
import org.amberyard.core.air.EngineFactors;
import org.amberyard.core.air.FuelFactors;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.WearFactors;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.upkeep.WearYear;

/**
 * What a bus emits in a year: activity by activity, each with its own factors. Distance and fuel are those that the costs count
 * too, so a bus that stands still emits nothing. Idling on the route is in the factors by distance; idling in the yard counts by
 * the hour.
 */
public final class BusAir {
    private final StudyInput study;
    private final AirFactors factors;
    private final BusWear wear;
    private final List<TypeUpkeep> types;

    /** Emissions of the buses of a study. */
    public BusAir(StudyInput study, DutyTable duty) {
        this.study = study;
        this.factors = study.air().factors();
        this.wear = new BusWear(duty.input());
        this.types = study.types().stream().map(type -> new TypeUpkeep(type, study.rules().upkeep())).toList();
    }

    /** Emissions of a bus in a year, with the power plants behind its energy at the meter. */
    public Emissions of(VehicleYear record) {
        Map<EmissionSource, Masses> emitted = new EnumMap<>(EmissionSource.class);
        engine(record).ifPresent(e -> addEngine(record, e, emitted));
        emitted.put(EmissionSource.HEATER, factors.heaterPerL().of(record.use().heaterFuelL()).withCo2e(factors.warming()));
        addWear(record, emitted);
        emitted.put(EmissionSource.GRID, factors.grid().of(record.meterKwh(), record.year(), factors.warming()));
        if (factors.upstream()) {
            emitted.put(EmissionSource.UPSTREAM, upstream(record));
        }
        return new Emissions(emitted);
    }

    private void addEngine(VehicleYear record, EngineSpec engine, Map<EmissionSource, Masses> emitted) {
        FuelFactors fuel = factors.fuels().get(engine.fuel());
        EngineFactors group = group(record, engine);
        double idleL = idleL(record, engine);
        emitted.put(EmissionSource.DRIVING, fuel.burnt().of(record.use().fuelL() - idleL)
                .plus(group.perKm().of(record.use().km())).withCo2e(factors.warming()));
        emitted.put(EmissionSource.IDLING, fuel.burnt().of(idleL).plus(group.perIdleHour().of(idleHours(record)))
                .withCo2e(factors.warming()));
    }

    private void addWear(VehicleYear record, Map<EmissionSource, Masses> emitted) {
        WearFactors dust = factors.wear(bodyType(record));
        WearYear year = wear(record);
        emitted.put(EmissionSource.BRAKES, dust.brakes().of(dust.brakeKm(year)));
        emitted.put(EmissionSource.TYRES, dust.tyres().of(dust.tyreKm(year)));
    }

    private Masses upstream(VehicleYear record) {
        Masses ofEngine = engine(record).map(e -> factors.fuels().get(e.fuel()).upstream().of(record.use().fuelL()))
                .orElse(Masses.NONE);
        double heaterL = record.use().heaterFuelL();
        return heaterL > 0 ? ofEngine.plus(factors.fuels().get(FuelKind.DIESEL).upstream().of(heaterL)) : ofEngine;
    }

    /** The engine of a bus, if it has one. */
    Optional<EngineSpec> engine(VehicleYear record) {
        return study.types().get(record.vehicle().type()).engine();
    }

    /** Factors of the engine of a bus. */
    EngineFactors group(VehicleYear record, EngineSpec engine) {
        return factors.engine(engine.fuel(), bodyType(record), EngineModelYear.of(study, record.vehicle()));
    }

    /** Fuel burnt idling in the yard, L; measured fuel calibrates it with the rest. */
    double idleL(VehicleYear record, EngineSpec engine) {
        return record.vehicle().fuelFactor() * engine.fuelL(0, idleHours(record));
    }

    /** Hours of idling in the yard. */
    double idleHours(VehicleYear record) {
        return study.buses().get(record.place()).idleHoursPerYear();
    }

    /** What a year does to brakes and tyres. */
    WearYear wear(VehicleYear record) {
        return wear.of(types.get(record.vehicle().type()), record.use(), idleHours(record), study.buses().get(record.place()).route());
    }

    String bodyType(VehicleYear record) {
        return study.types().get(record.vehicle().type()).spec().body().bodyType();
    }
}
