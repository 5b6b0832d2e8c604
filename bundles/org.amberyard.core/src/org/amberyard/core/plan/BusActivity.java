package org.amberyard.core.plan;

import org.amberyard.core.air.WearFactors;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.upkeep.WearYear;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** What a bus does in a year that causes emissions, with how it comes about. */
final class BusActivity {
    private static final String LITRE = "L";

    private final StudyInput study;
    private final BusAir air;

    BusActivity(StudyInput study, BusAir air) {
        this.study = study;
        this.air = air;
    }

    Derivation distance(VehicleYear record) {
        return Derivation.of("distance", record.use().km(), "km",
                "runs of its route on the days that no spare covers, and its other distance");
    }

    Derivation fuel(VehicleYear record) {
        return Derivation.of("fuel", record.use().fuelL(), LITRE, "burnt driving and idling, by the engine model as calibrated");
    }

    Derivation drivingFuel(VehicleYear record) {
        Derivation idle = idleFuel(record);
        return Derivation.of("fuel burnt driving", record.use().fuelL() - idle.value(), LITRE, "fuel less fuel burnt idling",
                fuel(record), idle);
    }

    Derivation idling(VehicleYear record) {
        BusInput bus = study.buses().get(record.place());
        return Derivation.input("yard idling", bus.idleHoursPerYear(), "h",
                new InputRef("Bus", bus.name(), "idleHoursPerYear"));
    }

    Derivation idleFuel(VehicleYear record) {
        EngineSpec engine = air.engine(record).orElseThrow();
        return Derivation.product("fuel burnt idling", LITRE, idling(record),
                Derivation.input("idle fuel rate", engine.idleFuelLPerH(), "L/h",
                        new InputRef("CombustionType", engine.name(), "idleFuelLPerH")),
                Derivation.of("calibration by the fuel log", record.vehicle().fuelFactor(), "1",
                        "measured over modelled fuel of the base year, 1 where nothing was measured"));
    }

    Derivation heaterFuel(VehicleYear record) {
        return Derivation.of("heater fuel", record.use().heaterFuelL(), LITRE,
                "heat that neither coolant nor electric heat brings, over efficiency and heating value");
    }

    Derivation meter(VehicleYear record) {
        return Derivation.of("energy at the meter", record.meterKwh(), "kWh", "what the bus's charging and heat take in the year");
    }

    Derivation brakes(WearFactors dust, WearYear year) {
        Derivation km = Derivation.of("distance", year.km(), "km", "driven in the year");
        if (dust.brakeKm(year) == year.km()) {
            return km;
        }
        return Derivation.of("distance of a bus without recovery", dust.brakeKm(year), "km",
                "heat in the friction brakes ÷ heat at which the factor holds",
                Derivation.of("heat in the friction brakes", year.brakeKwh(), "kWh", "braking that no motor takes back"),
                Derivation.input("heat at which the factor holds", dust.brakeKwhPerKm(), "kWh/km",
                        new InputRef("WearEmission", dust.name(), "brakeKwhPerKm")));
    }

    Derivation tyres(WearFactors dust, WearYear year) {
        return Derivation.of("distance of the reference bus", dust.tyreKm(year), "km",
                "distance by the mass on the tyres and the work that they pass on",
                Derivation.of("distance", year.km(), "km", "driven in the year"),
                Derivation.of("mass with riders", year.massKg(), "kg", "curb mass and the mean of the riders"));
    }
}
