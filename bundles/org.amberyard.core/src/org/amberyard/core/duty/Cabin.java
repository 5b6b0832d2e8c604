package org.amberyard.core.duty;

/**
 * Heat balance of the cabin in one run: heat needed to warm and hold it, less what the riders give off; and the power to
 * cool it.
 *
 * @param setpointC temperature held in the cabin, °C
 * @param lossKwPerK loss through shell and ventilation, kW/K
 * @param doorLossKwhPerK heat lost at each stop, kWh/K
 * @param soakKwhPerK heat to warm the cabin at the start of a run, kWh/K
 * @param coolingThresholdC outside temperature above which the cabin is cooled, °C
 * @param coolingKwPerK power drawn by cooling per degree above the threshold, kW/K
 * @param coolingCapKw largest power drawn by cooling, kW
 */
public record Cabin(double setpointC, double lossKwPerK, double doorLossKwhPerK, double soakKwhPerK,
        double coolingThresholdC, double coolingKwPerK, double coolingCapKw) {

    /** Sensible heat of one seated rider, kW; about 70 W in the handbooks of heating practice, from memory. */
    public static final double RIDER_KW = 0.07;

    /** Heat that the heater must bring in a run, kWh; never negative. */
    public double heatKwh(double outsideC, double hours, int stops, double meanRiders) {
        double coldK = Math.max(0, setpointC - outsideC);
        double lostKwh = coldK * (lossKwPerK * hours + doorLossKwhPerK * stops + soakKwhPerK);
        return Math.max(0, lostKwh - RIDER_KW * meanRiders * hours);
    }

    /** Energy drawn by cooling in a run, kWh. */
    public double coolingKwh(double outsideC, double hours) {
        return hours * Math.min(coolingCapKw, coolingKwPerK * Math.max(0, outsideC - coolingThresholdC));
    }
}
