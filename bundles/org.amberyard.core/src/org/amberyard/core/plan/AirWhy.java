package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.EngineFactors;
import org.amberyard.core.air.FuelFactors;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.WearFactors;
import org.amberyard.core.air.WhyMass;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.upkeep.WearYear;
import org.amberyard.core.why.Derivation;

/** How emissions of a plan come about: by year, source and bus, down to activities and factors. */
public final class AirWhy {
    private final StudyInput study;
    private final AirFactors factors;
    private final BusAir air;
    private final BusActivity activity;

    /** Derivations of a result. */
    public AirWhy(StudyResult result) {
        this.study = result.input();
        this.factors = study.air().factors();
        this.air = new BusAir(study, result.duty());
        this.activity = new BusActivity(study, air);
    }

    /** All of a pollutant in a year of a plan, without what is upstream of the tank. */
    public Derivation total(PlanResult plan, int year, Pollutant pollutant) {
        List<Derivation> parts = new ArrayList<>();
        for (EmissionSource source : EmissionSource.values()) {
            if (source.inTotal()) {
                parts.add(source(plan, year, source, pollutant));
            }
        }
        return Derivation.sum(pollutant.label() + " of " + (study.baseYear() + year), WhyMass.KG, parts);
    }

    /** A pollutant from one source in a year of a plan. */
    public Derivation source(PlanResult plan, int year, EmissionSource source, Pollutant pollutant) {
        if (source == EmissionSource.GRID) {
            Derivation meter = Derivation.of("energy at the meter", plan.yards().get(year).neededKwh(), "kWh",
                    "what charging, heat from the grid and ports at rest take in the year");
            return WhyMass.ofGrid(factors.grid(), year, pollutant, factors.warming(), meter);
        }
        return Derivation.sum(source.label() + ": " + pollutant.label(), WhyMass.KG,
                plan.fleet().inYear(year).stream().map(r -> bus(r, source, pollutant)).toList());
    }

    /** A pollutant from one source of a bus in a year. */
    public Derivation bus(VehicleYear record, EmissionSource source, Pollutant pollutant) {
        boolean byGases = pollutant == Pollutant.CO2E && source.exhaust();
        String name = record.vehicle().unit() + ", " + source.label() + ": " + pollutant.label();
        return byGases ? WhyMass.co2e(name, factors.warming(), mass(record, source, Pollutant.CO2),
                mass(record, source, Pollutant.CH4), mass(record, source, Pollutant.N2O))
                : mass(record, source, pollutant);
    }

    private Derivation mass(VehicleYear record, EmissionSource source, Pollutant pollutant) {
        String name = record.vehicle().unit() + ", " + source.label() + ": " + pollutant.label();
        return switch (source) {
            case DRIVING -> ofEngine(name, record, (fuel, group) -> fuel.burnt().answersFor(pollutant)
                    ? WhyMass.of(name, fuel.burnt(), pollutant, activity.drivingFuel(record))
                    : WhyMass.of(name, group.perKm(), pollutant, activity.distance(record)));
            case IDLING -> ofEngine(name, record, (fuel, group) -> fuel.burnt().answersFor(pollutant)
                    ? WhyMass.of(name, fuel.burnt(), pollutant, activity.idleFuel(record))
                    : WhyMass.of(name, group.perIdleHour(), pollutant, activity.idling(record)));
            case HEATER -> WhyMass.of(name, factors.heaterPerL(), pollutant, activity.heaterFuel(record));
            case BRAKES -> ofWear(record, (dust, year) -> WhyMass.of(name, dust.brakes(), pollutant, activity.brakes(dust, year)));
            case TYRES -> ofWear(record, (dust, year) -> WhyMass.of(name, dust.tyres(), pollutant, activity.tyres(dust, year)));
            case GRID -> WhyMass.ofGrid(factors.grid(), record.year(), pollutant, factors.warming(), activity.meter(record));
            case UPSTREAM -> upstream(name, record, pollutant);
        };
    }

    /** A mass by the factors of an engine. */
    @FunctionalInterface
    private interface OfEngine {
        Derivation of(FuelFactors fuel, EngineFactors group);
    }

    /** A mass by the factors of dust. */
    @FunctionalInterface
    private interface OfWear {
        Derivation of(WearFactors dust, WearYear year);
    }

    private Derivation ofEngine(String name, VehicleYear record, OfEngine mass) {
        Optional<EngineSpec> engine = air.engine(record);
        return engine.map(e -> mass.of(factors.fuels().get(e.fuel()), air.group(record, e)))
                .orElseGet(() -> Derivation.of(name, 0, WhyMass.KG, "the bus has no engine"));
    }

    private Derivation ofWear(VehicleYear record, OfWear mass) {
        return mass.of(factors.wear(air.bodyType(record)), air.wear(record));
    }

    private Derivation upstream(String name, VehicleYear record, Pollutant pollutant) {
        if (!factors.upstream()) {
            return Derivation.of(name, 0, WhyMass.KG, "the study leaves out what is upstream of the tank");
        }
        Function<FuelKind, FuelFactors> fuels = factors.fuels()::get;
        List<Derivation> parts = new ArrayList<>();
        air.engine(record).ifPresent(e -> parts.add(WhyMass.of("of the engine's fuel", fuels.apply(e.fuel()).upstream(), pollutant,
                activity.fuel(record))));
        if (record.use().heaterFuelL() > 0) {
            parts.add(WhyMass.of("of the heater's fuel", fuels.apply(FuelKind.DIESEL).upstream(), pollutant,
                    activity.heaterFuel(record)));
        }
        return Derivation.sum(name, WhyMass.KG, parts);
    }
}
