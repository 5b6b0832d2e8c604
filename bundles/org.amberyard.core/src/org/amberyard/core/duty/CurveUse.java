package org.amberyard.core.duty;

import org.amberyard.core.consumption.ConsumptionCurve;

/**
 * Use of a run by a consumption curve, the second energy model; it does not say what braking gives back. The heat of the curve
 * is electric resistance heat; a fuel-fired heater brings it from fuel.
 */
final class CurveUse {
    private CurveUse() {
    }

    static EnergyUse of(ConsumptionCurve curve, double km, double hours, double airC, BusHeat.Stand before, Heater heater) {
        double heatKwh = curve.heatKwh(hours, airC);
        boolean fired = heater.source() == Heater.Source.FUEL_FIRED;
        EnergyCauses causes = new EnergyCauses(0, 0, 0, 0, 0, 0, 0, fired ? 0 : heatKwh, curve.coolingKwh(hours, airC), 0,
                curve.drivingKwh(km, airC));
        return new EnergyUse(km, hours, causes.totalKwh(), 0, causes, before.gridKwh(), 0,
                before.fuelL() + heater.fuelL(heatKwh), 0);
    }
}
