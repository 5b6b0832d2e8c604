package org.amberyard.study;

import java.util.Optional;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.model.vehicles.ElectricType;

/** Compiles the consumption curve of an electric type. */
final class CurveCompiler {
    private CurveCompiler() {
    }

    /** The type's curve; empty when its base use is zero. */
    static Optional<ConsumptionCurve> curve(ElectricType type) {
        if (type.getCurveBaseKwhPerKm() == 0) {
            return Optional.empty();
        }
        return Optional.of(new ConsumptionCurve(type.getCurveBaseKwhPerKm(), type.getCurveMildC(), type.getCurveRisePerK(),
                type.getCurveHeatKwPerK(), type.getCurveHeatCapKw(), type.getCurveCoolFromC(), type.getCurveCoolKwPerK(),
                type.getCurveCoolCapKw()));
    }
}
