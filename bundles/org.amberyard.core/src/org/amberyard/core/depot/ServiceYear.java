package org.amberyard.core.depot;

/**
 * Load on the service in one year, by two measures that must not be mixed: all ports at full power, and the demand of charging
 * as it is planned (which counts for sizing only under a listed load-management system).
 *
 * @param ports number of ports
 * @param connectedKw power of all ports, kW
 * @param demandKw highest demand of charging, heat and standby as planned, kW
 * @param connectedKva all ports at full power on top of the building's peak, kVA
 * @param demandKva highest demand of charging and building together, at least the building's peak, kVA
 * @param transformerKva rating of the transformer, kVA
 * @param breakerContinuousKva what the main breaker carries continuously, kVA
 */
public record ServiceYear(int ports, double connectedKw, double demandKw, double connectedKva, double demandKva,
        double transformerKva, double breakerContinuousKva) {

    /** Smaller of the two limits, kVA. */
    public double limitKva() {
        return Math.min(transformerKva, breakerContinuousKva);
    }

    /** True when all ports at full power overload the service. */
    public boolean connectedExceeds() {
        return connectedKva > limitKva();
    }

    /** True when even charging as planned overloads the service. */
    public boolean demandExceeds() {
        return demandKva > limitKva();
    }
}
