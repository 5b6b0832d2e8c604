package org.amberyard.core.duty;

/**
 * What road load and cabin heat need to know of a vehicle, whatever drives it.
 *
 * @param bodyType trade letter of the body type
 * @param curbMassKg mass without riders, kg
 * @param rollingResistance coefficient of rolling resistance at 25 °C
 * @param dragAreaM2 drag coefficient times frontal area, m²
 * @param rotatingMassFactor apparent over real mass in acceleration
 * @param driveline losses between the wheels and the terminals or the crankshaft
 * @param auxiliaryKw steady auxiliary load in a run, kW
 * @param cabin the cabin's heat
 */
public record VehicleBody(String bodyType, double curbMassKg, double rollingResistance, double dragAreaM2,
        double rotatingMassFactor, DrivelineLoss driveline, double auxiliaryKw, Cabin cabin) {

    /**
     * Road load with a mass of riders.
     *
     * @param ridersKg mass of the riders, kg
     * @param airC air temperature, °C
     * @param elevationM elevation, m
     */
    public RoadLoad roadLoad(double ridersKg, double airC, double elevationM) {
        return new RoadLoad(curbMassKg + ridersKg, RollingResistance.at(rollingResistance, airC), dragAreaM2,
                rotatingMassFactor, StandardAtmosphere.densityKgPerM3(elevationM, airC));
    }
}
