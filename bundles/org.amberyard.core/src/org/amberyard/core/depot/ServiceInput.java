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
     * Factor on charging, which is a continuous load: NFPA 70 (National Electrical Code), 625.42 with 210.20(A) and 215.3, from
     * memory. The local code and a licensed electrician decide.
     */
    public static final double CONTINUOUS_FACTOR = 1.25;
    /**
     * Factor on the measured highest demand of what is there already when load is added to a service: NFPA 70, 220.87, as in
     * electrical_panel_size_nec_220_87.py of ResStock, National Renewable Energy Laboratory. Demand that was calculated, not
     * measured, counts by other rules of the article, which are not applied here.
     */
    public static final double MEASURED_FACTOR = 1.25;

    /** Rating that charging on top of the building's measured peak asks of the main breaker, kVA. */
    public double sizingKva(double chargingKw) {
        return kva(CONTINUOUS_FACTOR * chargingKw + MEASURED_FACTOR * buildingPeakKw);
    }

    /**
     * Apparent power that the main breaker carries continuously, kVA: charging and measured demand count by the same factor, so
     * that both together may be 80 % of its rating.
     */
    public double breakerContinuousKva() {
        return ChargeTime.threePhaseKw(lineVolts, breakerA) / CONTINUOUS_FACTOR;
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
