package org.amberyard.core.duty;

import java.util.List;

/**
 * The day's block of one bus.
 *
 * @param name route name
 * @param bodyType body type that the riders need, by its trade letter
 * @param runs runs in the order of the day
 * @param energyModel how the energy of electric buses on the route is found
 */
public record RouteInput(String name, String bodyType, List<RunInput> runs, EnergyModel energyModel) {

    public RouteInput {
        runs = List.copyOf(runs);
    }
}
