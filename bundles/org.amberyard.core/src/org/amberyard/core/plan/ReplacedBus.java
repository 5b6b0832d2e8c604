package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.air.Emissions;
import org.amberyard.core.air.Masses;

/**
 * An engine bus that a plan takes out of its place before or otherwise than the baseline does, and the bus that stands there
 * then. Both do the duty of the place in the year of the change; a bus without distance there emits nothing and so saves nothing.
 * Where the old bus would have left in that year anyway, the new one is compared with the bus that the baseline has there then.
 *
 * @param old the old bus in that place as it would have driven in the year
 * @param instead the bus of the baseline in that place and year, where the old bus would have left by then
 * @param now the new bus in its first year in the place
 * @param bought true when the new bus was bought, false when it moved from another place
 * @param retires year in which the old bus would have left the place without the plan
 * @param before emissions of the bus that it is compared with
 * @param after emissions of the new bus
 */
public record ReplacedBus(VehicleYear old, Optional<VehicleYear> instead, VehicleYear now, boolean bought, int retires,
        Emissions before, Emissions after) {

    /** The bus that the new one is compared with, as it drives in the place in the year of the change. */
    public VehicleYear compared() {
        return instead.orElse(old);
    }

    /** Year of the change. */
    public int year() {
        return now.year();
    }

    /** Place in the fleet. */
    public int place() {
        return now.place();
    }

    /** Years that the old bus would have driven on: the year it would have retired in less the year of the change. */
    public int remainingYears() {
        return Math.max(0, retires - year());
    }

    /** What exhaust pipes emit less in a year, heaters included. */
    public Masses reducedExhaust() {
        return before.exhaust().minus(after.exhaust());
    }

    /** Dust of brakes and tyres that is made less in a year. */
    public Masses reducedWear() {
        return before.wear().minus(after.wear());
    }

    /** What exhaust pipes emit less over the remaining life of the old bus. */
    public Masses lifetimeExhaust() {
        return reducedExhaust().times(remainingYears());
    }
}
