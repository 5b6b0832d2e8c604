package org.amberyard.study;

import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.FitOutcome;
import org.amberyard.core.consumption.FitSettings;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.HeatSource;

/**
 * The consumption curve of one electric type, fitted to the study's logs of it.
 *
 * @param logs the logs
 * @param outcome the fit, or why there is none
 */
public record CurveFitting(CurveLogs logs, FitOutcome outcome) {

    /**
     * What is settled before the fit, with the temperatures of the type's own curve.
     *
     * @param knownRisePerK rise in the cold when it is known from elsewhere, as a share of the base per K
     * @throws IllegalArgumentException when the curve would start to cool below its mild temperature
     */
    public static FitSettings settings(ElectricType type, OptionalDouble knownRisePerK) {
        return settings(type, type.getCurveMildC(), type.getCurveCoolFromC(), knownRisePerK);
    }

    /**
     * What is settled before the fit. The limits of heating and cooling are those of the type's cabin.
     *
     * @param mildC temperature below which driving takes more and the cabin is heated, °C
     * @param coolFromC temperature above which the cabin is cooled, °C
     * @param knownRisePerK rise in the cold when it is known from elsewhere, as a share of the base per K
     * @throws IllegalArgumentException when the curve would start to cool below its mild temperature
     */
    public static FitSettings settings(ElectricType type, double mildC, double coolFromC, OptionalDouble knownRisePerK) {
        return new FitSettings(mildC, coolFromC, heaterKw(type), type.getCoolingCapKw(), knownRisePerK);
    }

    /** Electric power of the heater; a fuel-fired one draws none. */
    static double heaterKw(ElectricType type) {
        return type.getHeatSource() == HeatSource.FUEL_FIRED ? 0 : type.getHeaterKw();
    }

    /** The fit, when there is one. */
    public Optional<CurveFit> fit() {
        return outcome instanceof CurveFit fit ? Optional.of(fit) : Optional.empty();
    }

    /** The curve that the type has so far. */
    public Optional<ConsumptionCurve> before() {
        return CurveCompiler.curve(type());
    }

    /** The electric type. */
    public ElectricType type() {
        return logs.type();
    }

    /** The study. */
    public Study study() {
        return logs.study();
    }
}
