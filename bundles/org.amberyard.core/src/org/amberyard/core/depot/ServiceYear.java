package org.amberyard.core.depot;

/**
 * Load on the service in one year, by two measures that must not be mixed: all ports at full power, and the demand when
 * charging is spread over the night (which counts only under a listed load-management system).
 *
 * @param ports number of ports
 * @param connectedKw power of all ports, kW
 * @param spreadKw demand when charging is spread over the night of the coldest day, kW
 * @param connectedKva all ports at full power on top of the building's peak, kVA
 * @param spreadKva spread charging on top of the building's peak, kVA
 * @param transformerKva rating of the transformer, kVA
 * @param breakerContinuousKva what the main breaker carries continuously, kVA
 */
public record ServiceYear(int ports, double connectedKw, double spreadKw, double connectedKva, double spreadKva,
        double transformerKva, double breakerContinuousKva) {

    /** Smaller of the two limits, kVA. */
    public double limitKva() {
        return Math.min(transformerKva, breakerContinuousKva);
    }

    /** True when all ports at full power overload the service. */
    public boolean connectedExceeds() {
        return connectedKva > limitKva();
    }

    /** True when even spread charging overloads the service. */
    public boolean spreadExceeds() {
        return spreadKva > limitKva();
    }
}
