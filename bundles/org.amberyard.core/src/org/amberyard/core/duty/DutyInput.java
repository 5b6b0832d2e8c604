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
 * @param measured what buses were measured to use on routes
 */
public record DutyInput(Climate climate, DriverStyle style, double riderMassKg, List<RouteInput> routes,
        List<VehicleSpec> vehicles, List<MeasuredUse> measured) {

    public DutyInput {
        routes = List.copyOf(routes);
        vehicles = List.copyOf(vehicles);
        measured = List.copyOf(measured);
    }
}
