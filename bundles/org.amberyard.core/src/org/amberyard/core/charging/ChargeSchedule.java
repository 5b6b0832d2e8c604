package org.amberyard.core.charging;

import java.util.List;

/**
 * What is charged when. The arrays belong to the schedule and are not to be changed.
 *
 * @param grid steps
 * @param meterKw mean power at the meter by plug-in and step, kW; so power times the length of the step is the energy
 * @param endShares state of charge at departure by plug-in
 * @param shortfalls buses that leave without the charge that they need, in the order of the plug-ins
 * @param movedKwh energy at the meter that a schedule of least cost had planned for steps at which the packs could not take
 *            it, kWh; 0 for other policies
 */
public record ChargeSchedule(StepGrid grid, double[][] meterKw, double[] endShares, List<ChargeShortfall> shortfalls,
        double movedKwh) {
    /** Energy below which a bus counts as full, kWh: rounding. */
    static final double ROUNDING_KWH = 1e-9;

    public ChargeSchedule {
        shortfalls = List.copyOf(shortfalls);
    }

    /** Power at the meter by step, all buses together, kW. */
    public double[] totalKw() {
        double[] sum = new double[grid.steps()];
        for (double[] bus : meterKw) {
            for (int step = 0; step < sum.length; step++) {
                sum[step] += bus[step];
            }
        }
        return sum;
    }

    /** Energy at the meter of a plug-in, kWh. */
    public double meterKwh(int place) {
        double sum = 0;
        for (double kw : meterKw[place]) {
            sum += kw;
        }
        return sum * grid.stepHours();
    }

    /** Energy missing in the battery at the end of a stay, kWh. */
    double shortKwh(PlugIn stay) {
        for (ChargeShortfall one : shortfalls) {
            if (one.plugIn().equals(stay)) {
                return one.shortKwh();
            }
        }
        return 0;
    }

    /** Energy missing in all batteries, kWh. */
    public double shortKwh() {
        double sum = 0;
        for (ChargeShortfall one : shortfalls) {
            sum += one.shortKwh();
        }
        return sum;
    }
}
