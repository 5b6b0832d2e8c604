package org.amberyard.core.consumption;

import org.amberyard.core.math.Checks;

/**
 * Energy of an electric bus by distance, time and outside temperature: the second energy model beside the physics.
 *
 * <p>Driving counts per distance and rises in a straight line below the mild temperature (stiffer tyres, denser air, cold
 * pack). Heat and cooling are powers, so they count per hour: a slow route takes more per distance in the cold than a fast
 * one. The form is common practice of makers' range sheets; no source.
 *
 * @param baseKwhPerKm energy per distance at mild temperatures, kWh/km
 * @param mildC temperature below which driving takes more and the cabin is heated, °C
 * @param tractionRisePerK rise of the energy per distance, as a share of the base, per degree below {@code mildC}, 1/K
 * @param heatKwPerK electric power for heat per degree below {@code mildC}, kW/K
 * @param heatCapKw largest electric power for heat, kW
 * @param coolingFromC temperature above which the cabin is cooled, °C
 * @param coolKwPerK power of cooling per degree above {@code coolingFromC}, kW/K
 * @param coolCapKw largest power of cooling, kW
 */
public record ConsumptionCurve(double baseKwhPerKm, double mildC, double tractionRisePerK, double heatKwPerK,
        double heatCapKw, double coolingFromC, double coolKwPerK, double coolCapKw) {

    /** @throws IllegalArgumentException when a figure is out of its range; the message names it */
    public ConsumptionCurve {
        Checks.positive("Base use of the consumption curve, kWh/km,", baseKwhPerKm);
        Checks.notNegative("Rise in the cold, 1/K,", tractionRisePerK);
        Checks.notNegative("Heating, kW/K,", heatKwPerK);
        Checks.notNegative("Heating limit, kW,", heatCapKw);
        Checks.notNegative("Cooling, kW/K,", coolKwPerK);
        Checks.notNegative("Cooling limit, kW,", coolCapKw);
        if (!(coolingFromC >= mildC)) {
            throw new IllegalArgumentException("Cooling starts at " + coolingFromC
                    + " °C but must not start below the mild temperature of " + mildC + " °C");
        }
    }

    /** Energy to drive a distance, kWh. */
    public double drivingKwh(double km, double outsideC) {
        return km * baseKwhPerKm * (1 + tractionRisePerK * coldK(outsideC));
    }

    /** Electric energy for heat over a time, kWh. */
    public double heatKwh(double hours, double outsideC) {
        return hours * Math.min(heatCapKw, heatKwPerK * coldK(outsideC));
    }

    /** Energy for cooling over a time, kWh. */
    public double coolingKwh(double hours, double outsideC) {
        return hours * Math.min(coolCapKw, coolKwPerK * Math.max(0, outsideC - coolingFromC));
    }

    /** Energy of a drive, kWh. */
    public double totalKwh(double km, double hours, double outsideC) {
        return drivingKwh(km, outsideC) + heatKwh(hours, outsideC) + coolingKwh(hours, outsideC);
    }

    /**
     * Energy per distance at a steady mean speed, kWh/km.
     *
     * @param speedKmh mean speed with stops, km/h; above 0
     */
    public double kwhPerKm(double speedKmh, double outsideC) {
        return totalKwh(1, 1 / Checks.positive("Mean speed, km/h,", speedKmh), outsideC);
    }

    private double coldK(double outsideC) {
        return Math.max(0, mildC - outsideC);
    }
}
