package org.amberyard.model.validation;

import org.amberyard.model.fleet.Bus;
import org.amberyard.model.vehicles.VehicleType;

/** Which types may take a place in the fleet. */
public final class BodyFit {
    private BodyFit() {
    }

    /** True when the route of a place, if it has one, is for buses of the body type of a type. */
    public static boolean suits(VehicleType type, Bus place) {
        return place.getRoute() == null || type.getBodyType() == place.getRoute().getBodyType();
    }
}
