package org.amberyard.core.depot;

import java.util.List;

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

    /** The same at no price. */
    public Port unpriced() {
        return new Port(name, direct, powerKw, efficiency, standbyW, 0, 0, lifeYears, installationLifeYears, 0, plugs);
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

    /**
     * Power into the battery that every bus of a kind can count on, kW: that of the best AC port among some, else, where there
     * is none or the bus does not take AC, of the best DC port. DC ports are too few to count on.
     *
     * @param acKw largest power that the bus takes from an AC port, kW
     * @param dcKw largest power that it takes from a DC port, kW
     */
    public static double countedKw(List<Port> ports, double acKw, double dcKw) {
        double alternating = bestKw(ports, false, acKw);
        return alternating > 0 ? alternating : bestKw(ports, true, dcKw);
    }

    private static double bestKw(List<Port> ports, boolean direct, double acceptanceKw) {
        return ports.stream().filter(p -> p.direct() == direct).mapToDouble(p -> p.batteryKw(acceptanceKw)).max().orElse(0);
    }
}
