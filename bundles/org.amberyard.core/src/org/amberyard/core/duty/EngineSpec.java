package org.amberyard.core.duty;

/**
 * Physics of a vehicle type with a combustion engine.
 *
 * <p>Fuel follows the affine fuel-rate model of engines (Willans line): a constant rate for friction and pumping plus
 * crankshaft work over the indicated efficiency. Cabin heat comes from the coolant at no extra fuel as far as it reaches, then
 * from a fuel-fired heater where there is one.
 *
 * @param name name of the type
 * @param body body, driveline and cabin
 * @param fuel fuel
 * @param indicatedEfficiency extra crankshaft work over extra fuel energy
 * @param idleFuelLPerH fuel rate without load, L/h
 * @param exhaustFluidShare exhaust fluid per volume of fuel
 * @param coolantHeatShare heat of the coolant that can reach the cabin over the fuel's energy
 * @param heater fuel-fired heater beside the coolant
 */
public record EngineSpec(String name, VehicleBody body, FuelKind fuel, double indicatedEfficiency, double idleFuelLPerH,
        double exhaustFluidShare, double coolantHeatShare, Heater heater) implements VehicleSpec {

    /** Fuel burnt for crankshaft work within hours of running, L. */
    public double fuelL(double shaftKwh, double hours) {
        return idleFuelLPerH * hours + shaftKwh / indicatedEfficiency / fuel.kwhPerL();
    }
}
