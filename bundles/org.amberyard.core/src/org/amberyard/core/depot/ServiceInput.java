package org.amberyard.core.depot;

/**
 * The yard's electric service.
 *
 * @param lineVolts three-phase line voltage, V
 * @param breakerA rating of the main breaker, A
 * @param transformerKva rating of the transformer, kVA
 * @param powerFactor power factor at the peak
 * @param buildingPeakKw highest demand of the other loads, kW
 */
public record ServiceInput(double lineVolts, double breakerA, double transformerKva, double powerFactor,
        double buildingPeakKw) {

    /**
     * Continuous loads count at 125 %, so a breaker carries 80 % of its rating: NFPA 70 (National Electrical Code)
     * articles 210.19, 210.20 and 625.42, from memory. The local code and a licensed electrician decide.
     */
    public static final double CONTINUOUS_SHARE = 0.8;

    /** Apparent power that the main breaker carries continuously, kVA. */
    public double breakerContinuousKva() {
        return ChargeTime.threePhaseKw(lineVolts, breakerA) * CONTINUOUS_SHARE;
    }

    /** Apparent power of charging on top of the building's peak, kVA. */
    public double loadKva(double chargingKw) {
        return kva(chargingKw + buildingPeakKw);
    }

    /** Apparent power of a demand, kVA. */
    public double kva(double kw) {
        return kw / powerFactor;
    }

    /** The same after an upgrade. */
    public ServiceInput upgraded(double otherTransformerKva, double otherBreakerA) {
        return new ServiceInput(lineVolts, otherBreakerA, otherTransformerKva, powerFactor, buildingPeakKw);
    }
}
