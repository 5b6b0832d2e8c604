package org.amberyard.core.duty;

/**
 * What road load and cabin heat need to know of a vehicle, whatever drives it.
 *
 * @param bodyType trade letter of the body type
 * @param curbMassKg mass without riders, kg
 * @param rollingResistance coefficient of rolling resistance
 * @param dragAreaM2 drag coefficient times frontal area, m²
 * @param rotatingMassFactor apparent over real mass in acceleration
 * @param drivelineEfficiency wheel work over battery or crankshaft work
 * @param auxiliaryKw steady auxiliary load in a run, kW
 * @param cabin the cabin's heat balance
 */
public record VehicleBody(String bodyType, double curbMassKg, double rollingResistance, double dragAreaM2,
        double rotatingMassFactor, double drivelineEfficiency, double auxiliaryKw, Cabin cabin) {

    /** Road load with a mass of riders in air of a density. */
    public RoadLoad roadLoad(double ridersKg, double airDensityKgPerM3) {
        return new RoadLoad(curbMassKg + ridersKg, rollingResistance, dragAreaM2, rotatingMassFactor, airDensityKgPerM3);
    }
}
