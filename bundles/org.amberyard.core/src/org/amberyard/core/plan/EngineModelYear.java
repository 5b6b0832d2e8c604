package org.amberyard.core.plan;

/**
 * The model year of a bus's engine, on which emission factors and conditions of programmes hang. That of a bus of the present
 * fleet is entered; a bus bought later has an engine of the calendar year in which it was delivered new, which for a used one is
 * the year of its purchase less its age then.
 */
public final class EngineModelYear {
    private EngineModelYear() {
    }

    /** Calendar year of the model of the engine of a bus. */
    public static int of(StudyInput study, Vehicle vehicle) {
        return study.air().engineModelYears().getOrDefault(vehicle.unit(), study.baseYear() + vehicle.inServiceYear());
    }
}
