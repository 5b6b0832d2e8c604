package org.amberyard.core.duty;

import java.util.List;

/**
 * All that decides what driving takes; two equal inputs give equal results, so the stage need not run again.
 *
 * @param climate climate
 * @param style driver style
 * @param riderMassKg mass of one rider, kg
 * @param routes routes
 * @param vehicles vehicle types
 * @param habit what the yard does with electric buses between runs
 * @param measured measured consumption, by which the model is calibrated
 */
public record DutyInput(Climate climate, DriverStyle style, double riderMassKg, List<RouteInput> routes,
        List<VehicleSpec> vehicles, YardHabit habit, List<MeasuredUse> measured) {

    public DutyInput {
        routes = List.copyOf(routes);
        vehicles = List.copyOf(vehicles);
        measured = List.copyOf(measured);
    }

    /** The same under another habit of the yard. */
    public DutyInput withHabit(YardHabit other) {
        return new DutyInput(climate, style, riderMassKg, routes, vehicles, other, measured);
    }
}
