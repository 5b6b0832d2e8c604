package org.amberyard.core.air;

import java.util.Map;
import java.util.Optional;
import org.amberyard.core.upkeep.TyreWear;
import org.amberyard.core.upkeep.WearYear;

/**
 * Dust of brakes and tyres.
 *
 * <p>Published factors hold for a distance of a bus without brake recovery. Dust of brakes is taken to follow the heat in the
 * friction brakes, as the wear of their linings does ({@link org.amberyard.core.upkeep.BrakeWear}): assumed, no source. So a
 * bus that recovers its braking makes less of it. Dust of tyres follows their wear ({@link TyreWear}). Where the energy model
 * does not say where energy goes, both go by distance.
 *
 * @param name name of the group
 * @param bodyTypes trade letters of the body types; empty for all
 * @param brakes by distance of the bus for which they hold
 * @param brakeKwhPerKm heat in the friction brakes of that bus, kWh/km
 * @param tyres by distance of a bus of the reference mass
 * @param tyreWear reference mass of the tyres' factor; empty where mass does not count
 */
public record WearFactors(String name, String bodyTypes, EmissionRates brakes, double brakeKwhPerKm, EmissionRates tyres,
        Optional<TyreWear> tyreWear) {

    /** A bus of which nobody has said anything. */
    public static final WearFactors UNKNOWN = new WearFactors("", "", EmissionRates.of(EmissionCause.WEAR, Map.of()), 0,
            EmissionRates.of(EmissionCause.WEAR, Map.of()), Optional.empty());

    /** True when a bus belongs to the group. */
    public boolean holdsFor(String bodyType) {
        return bodyTypes.isEmpty() || bodyTypes.contains(bodyType);
    }

    /** Distance of the bus without recovery whose brakes take as much heat, km. */
    public double brakeKm(WearYear year) {
        return year.brakeKwh() > 0 && brakeKwhPerKm > 0 ? year.brakeKwh() / brakeKwhPerKm : year.km();
    }

    /** Distance of the bus of the reference mass whose tyres wear as much, km. */
    public double tyreKm(WearYear year) {
        return tyreWear.map(w -> w.equivalentKm(year.km(), year.massKg(), year.tyreKwh())).orElse(year.km());
    }
}
