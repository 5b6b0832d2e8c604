package org.amberyard.core.battery;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/** Voltage of a resting cell by its state of charge; typical of the chemistry, common practice, no source. */
final class CellVoltage {
    private static final UnivariateFunction NMC = new LinearInterpolator().interpolate(
            new double[] {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1},
            new double[] {3.10, 3.45, 3.55, 3.61, 3.65, 3.70, 3.79, 3.89, 3.99, 4.08, 4.18});

    private CellVoltage() {
    }

    /** Voltage of a nickel manganese cobalt cell with graphite anode, V. */
    static double nmcV(double chargeShare) {
        return NMC.value(Math.max(0, Math.min(1, chargeShare)));
    }
}
