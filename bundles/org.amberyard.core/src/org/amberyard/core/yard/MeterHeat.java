package org.amberyard.core.yard;

import org.amberyard.core.charging.StepGrid;

/**
 * Heat of a bus at the meter on a stretch. The array is by step and not to be changed.
 *
 * @param kw mean power of each step, so that the energy is exact, kW
 * @param kwh energy of the stretch, kWh
 */
public record MeterHeat(double[] kw, double kwh) {

    /** Heat of what a bus needs behind a port of an efficiency; a time over the end of the stretch goes on at its start. */
    static MeterHeat of(BusNeed need, StepGrid grid, double efficiency) {
        double[] kw = new double[grid.steps()];
        double stepMin = grid.stepMin();
        for (BusNeed.Heat heat : need.heat()) {
            int first = (int) Math.floor(heat.fromMin() / stepMin);
            int last = (int) Math.ceil(heat.toMin() / stepMin);
            double meterKw = heat.kw() / efficiency;
            for (int running = first, step = grid.wrapped(first); running < last; running++, step = grid.next(step)) {
                double minutes = Math.min(heat.toMin(), (running + 1) * stepMin) - Math.max(heat.fromMin(), running * stepMin);
                kw[step] += meterKw * minutes / stepMin;
            }
        }
        double sum = 0;
        for (double one : kw) {
            sum += one;
        }
        return new MeterHeat(kw, sum * grid.stepHours());
    }
}
