package org.amberyard.core.duty;

import org.amberyard.core.consumption.ConsumptionCurve;

/** Use of a run by a consumption curve, the second energy model; it does not say what braking gives back. */
final class CurveUse {
    private CurveUse() {
    }

    static EnergyUse of(ConsumptionCurve curve, double km, double hours, double airC, BusHeat.Stand before) {
        double drivingKwh = curve.drivingKwh(km, airC);
        double heatKwh = curve.heatKwh(hours, airC);
        double coolingKwh = curve.coolingKwh(hours, airC);
        EnergyCauses causes = new EnergyCauses(0, 0, 0, 0, 0, 0, 0, heatKwh, coolingKwh, 0, drivingKwh);
        return new EnergyUse(km, hours, causes.totalKwh(), 0, causes, before.gridKwh(), 0, before.fuelL(), 0);
    }
}
