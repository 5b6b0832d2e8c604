package org.amberyard.core.duty;

/**
 * A body of one temperature that loses heat to its surroundings, {@code C·dT/dt = q − G·(T − Tₛ)}, solved exactly for a
 * steady power q; the lumped-capacity model of the heat transfer handbooks.
 *
 * @param capacityKwhPerK heat capacity C, kWh/K, not negative
 * @param conductanceKwPerK heat lost per degree G, kW/K, not negative
 */
record HeatBalance(double capacityKwhPerK, double conductanceKwPerK) {

    /** Share of the first temperature difference that is gone after a time; exact for the shortest of times too. */
    double goneShare(double hours) {
        return capacityKwhPerK > 0 ? -Math.expm1(-conductanceKwPerK * hours / capacityKwhPerK) : 1;
    }

    /** Temperature after hours of a steady power, °C. */
    double endC(double startC, double surroundC, double powerKw, double hours) {
        return endC(startC, surroundC, powerKw, hours, goneShare(hours));
    }

    private double endC(double startC, double surroundC, double powerKw, double hours, double gone) {
        if (conductanceKwPerK > 0) {
            double steadyC = surroundC + powerKw / conductanceKwPerK;
            return startC + (steadyC - startC) * gone;
        }
        return capacityKwhPerK > 0 ? startC + powerKw * hours / capacityKwhPerK : startC;
    }

    /** Power that brings the body to a temperature at the end of the hours, kW; negative where it must be cooled. */
    private double powerToReachKw(double targetC, double startC, double surroundC, double hours, double gone) {
        if (conductanceKwPerK > 0) {
            return conductanceKwPerK * (startC + (targetC - startC) / gone - surroundC);
        }
        return capacityKwhPerK * (targetC - startC) / hours;
    }

    /** The body with more conductance. */
    HeatBalance with(double moreKwPerK) {
        return new HeatBalance(capacityKwhPerK, conductanceKwPerK + moreKwPerK);
    }

    /**
     * What a thermostat does in a time: heats only as far as a low limit asks, cools only as far as a high limit asks, each up
     * to its power.
     *
     * @param endC temperature at the end, °C
     * @param heatKw mean power of heating, kW
     * @param coldKw mean heat removed, kW
     */
    record Held(double endC, double heatKw, double coldKw) {
    }

    /** Keeps the body between two temperatures where the powers allow it; {@code gainsKw} come from elsewhere. */
    Held held(double startC, double surroundC, double gainsKw, double hours, Thermostat limits) {
        return held(startC, surroundC, gainsKw, hours, goneShare(hours), limits);
    }

    /** The same for a time of which the share that is gone after it is known; the exponential costs more than all the rest. */
    Held held(double startC, double surroundC, double gainsKw, double hours, double gone, Thermostat limits) {
        if (!(hours > 0)) {
            return new Held(startC, 0, 0);
        }
        double heat = clamp(powerToReachKw(limits.lowC(), startC, surroundC, hours, gone) - gainsKw, limits.heatKw());
        double cold = clamp(gainsKw - powerToReachKw(limits.highC(), startC, surroundC, hours, gone), limits.coldKw());
        return new Held(endC(startC, surroundC, gainsKw + heat - cold, hours, gone), heat, cold);
    }

    private static double clamp(double power, double limit) {
        return Math.max(0, Math.min(limit, power));
    }

    /** Limits of temperature and of the powers that hold them. */
    record Thermostat(double lowC, double highC, double heatKw, double coldKw) {

        /** The same with another power of heating. */
        Thermostat withHeat(double otherKw) {
            return new Thermostat(lowC, highC, otherKw, coldKw);
        }
    }
}
