package org.amberyard.core.duty;

import java.util.List;
import java.util.OptionalInt;

/**
 * The day's block of one bus.
 *
 * @param name route name
 * @param bodyType body type that the riders need, by its trade letter
 * @param riders riders carried on a service day, each counted once; empty where they are not known
 * @param runs runs in the order of the day
 * @param energyModel how the energy of electric buses on the route is found
 */
public record RouteInput(String name, String bodyType, OptionalInt riders, List<RunInput> runs, EnergyModel energyModel) {

    public RouteInput {
        runs = List.copyOf(runs);
    }

    /** A route whose riders are not known. */
    public RouteInput(String name, String bodyType, List<RunInput> runs, EnergyModel energyModel) {
        this(name, bodyType, OptionalInt.empty(), runs, energyModel);
    }

    /** Days of a year on which a bus of the route goes out: those of the run that is driven most often in each programme. */
    public int serviceDays() {
        return daysOf(false) + daysOf(true);
    }

    private int daysOf(boolean extendedYear) {
        return runs.stream().filter(r -> r.extendedYear() == extendedYear)
                .mapToInt(r -> r.daysByMonth().stream().mapToInt(Integer::intValue).sum()).max().orElse(0);
    }
}
