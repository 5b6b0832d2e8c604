package org.amberyard.model.validation;

import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.HeatSource;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesPackage.Literals;

/** The figures of a consumption curve agree with each other. */
final class ConsumptionCurveRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (VehicleType type : study.getVehicleTypes()) {
            if (type instanceof ElectricType electric && electric.getCurveBaseKwhPerKm() > 0) {
                checkTemperatures(electric, findings);
                checkCold(electric, findings);
            }
        }
    }

    private static void checkTemperatures(ElectricType type, Findings findings) {
        if (type.getCurveCoolFromC() < type.getCurveMildC()) {
            findings.error(type, Literals.ELECTRIC_TYPE__CURVE_COOL_FROM_C,
                    findings.fact(type, Literals.ELECTRIC_TYPE__CURVE_COOL_FROM_C) + ", below the "
                            + Findings.label(Literals.ELECTRIC_TYPE__CURVE_MILD_C) + " of "
                            + findings.value(type, Literals.ELECTRIC_TYPE__CURVE_MILD_C)
                            + ", so it would heat and cool at once; raise the one or lower the other.");
        }
    }

    private static void checkCold(ElectricType type, Findings findings) {
        boolean heatDrawsNothing = type.getHeatSource() == HeatSource.FUEL_FIRED;
        if (type.getCurveRisePerK() == 0 && type.getCurveHeatKwPerK() == 0 && !heatDrawsNothing) {
            findings.warning(type, Literals.ELECTRIC_TYPE__CURVE_HEAT_KW_PER_K,
                    "its consumption curve knows no cold, so winter looks like spring; enter heating and rise in the cold, "
                            + "or fit the curve to logs.");
        }
    }
}
