package org.amberyard.core.depot;

/**
 * A type of charging port.
 *
 * @param name name
 * @param direct true for direct current
 * @param powerKw largest power that the port draws at the meter, kW
 * @param efficiency energy into the battery over energy at the meter while charging
 * @param standbyW power drawn at all hours, W
 * @param hardwarePrice price of the hardware, base-date money
 * @param installationPrice price to install it, base-date money
 * @param lifeYears years after which the hardware is bought again
 * @param installationLifeYears years over which the installation loses its value
 * @param feePerYear network fee, base-date money per year
 * @param plugs plugs that share its power
 */
public record Port(String name, boolean direct, double powerKw, double efficiency, double standbyW,
        double hardwarePrice, double installationPrice, double lifeYears, double installationLifeYears,
        double feePerYear, int plugs) {

    /** A port with one plug. */
    public Port(String name, boolean direct, double powerKw, double efficiency, double standbyW, double hardwarePrice,
            double installationPrice, double lifeYears, double installationLifeYears, double feePerYear) {
        this(name, direct, powerKw, efficiency, standbyW, hardwarePrice, installationPrice, lifeYears, installationLifeYears,
                feePerYear, 1);
    }

    /**
     * Power into the battery of a bus, kW. With alternating current the bus's own charger sits behind the acceptance limit
     * and loses the energy; with direct current the port does, before the limit.
     *
     * @param acceptanceKw largest power that the bus takes from this kind of port, kW
     */
    public double batteryKw(double acceptanceKw) {
        return direct ? Math.min(powerKw * efficiency, acceptanceKw) : Math.min(powerKw, acceptanceKw) * efficiency;
    }
}
