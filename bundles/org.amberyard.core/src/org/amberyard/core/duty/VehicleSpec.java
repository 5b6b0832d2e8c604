package org.amberyard.core.duty;

/** Physics of a vehicle type; prices are kept apart so that a changed price drives no bus again. */
public sealed interface VehicleSpec permits ElectricSpec, EngineSpec {

    /** Name of the vehicle type. */
    String name();

    /** Body, driveline and cabin. */
    VehicleBody body();
}
