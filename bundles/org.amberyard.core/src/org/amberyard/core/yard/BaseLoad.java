package org.amberyard.core.yard;

import java.util.List;

/**
 * Load of a yard on a stretch that cannot be moved: heat, standby and the building. Arrays are by step and not to be changed. Safe
 * for use from several threads.
 */
public final class BaseLoad {
    private final List<MeterHeat> heat;
    private final double standbyKw;
    private final double[] buildingKw;
    private final WorkedOnce<double[]> apart = new WorkedOnce<>();
    private final WorkedOnce<double[]> shared = new WorkedOnce<>();

    /**
     * @param heat heat of each bus at the meter, in the order of the yard's buses
     * @param standbyKw power that the ports draw at all hours, kW
     * @param buildingKw load of the building, kW
     */
    BaseLoad(List<MeterHeat> heat, double standbyKw, double[] buildingKw) {
        this.heat = List.copyOf(heat);
        this.standbyKw = standbyKw;
        this.buildingKw = buildingKw;
    }

    /** Heat of each bus at the meter, in the order of the yard's buses. */
    List<MeterHeat> heat() {
        return heat;
    }

    /** Power that the ports draw at all hours, kW. */
    double standbyKw() {
        return standbyKw;
    }

    /** Load of the building, kW. */
    double[] buildingKw() {
        return buildingKw;
    }

    /** Heat and standby, and the building where it shares the meter, kW. */
    double[] kw(boolean sharedMeter) {
        return (sharedMeter ? shared : apart).of(() -> sum(sharedMeter));
    }

    private double[] sum(boolean sharedMeter) {
        double[] sum = sharedMeter ? buildingKw.clone() : new double[buildingKw.length];
        for (int step = 0; step < sum.length; step++) {
            sum[step] += standbyKw;
        }
        for (MeterHeat bus : heat) {
            for (int step = 0; step < sum.length; step++) {
                sum[step] += bus.kw()[step];
            }
        }
        return sum;
    }
}
