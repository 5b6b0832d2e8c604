package org.amberyard.core.duty;

/** How the energy of electric buses on a route is found. */
public enum EnergyModel {
    /** By the work of driving and the heat balance of the cabin. */
    PHYSICS,
    /** By the consumption curve of the vehicle type; a type without one stays with the physics. */
    CURVE
}
