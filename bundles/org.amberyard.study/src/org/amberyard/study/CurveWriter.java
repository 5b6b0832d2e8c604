package org.amberyard.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.CurveTerm;
import org.amberyard.core.consumption.TermEstimate;
import org.amberyard.core.consumption.TermEstimate.Standing;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehiclesPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;

/** Writes a fitted curve into the fields of its type, with a note of where the figures come from. */
public final class CurveWriter {
    private CurveWriter() {
    }

    /**
     * Writes a fit into its type. Cooling that no log has seen stays as it is.
     *
     * @param fitting a fitting that has a fit
     */
    public static void write(CurveFitting fitting) {
        CurveFit fit = fitting.fit().orElseThrow();
        values(fit).forEach((field, value) -> fitting.type().eSet(field, value));
        for (TermEstimate term : fit.terms()) {
            if (term.standing() == Standing.FITTED || term.standing() == Standing.AT_ZERO) {
                note(fitting.type(), CurveFields.of(term.term()), citation(fitting, fit));
            }
        }
        if (fit.heatLimitSeen()) {
            note(fitting.type(), Literals.ELECTRIC_TYPE__CURVE_HEAT_CAP_KW, citation(fitting, fit));
        }
    }

    /**
     * A field of the type that a fit would change.
     *
     * @param field the field
     * @param before what it holds
     * @param after what the fit puts there
     */
    public record Change(EAttribute field, double before, double after) {
    }

    /** What writing a fit would change, in the order of the fields; none where there is no fit. */
    public static List<Change> changes(CurveFitting fitting) {
        return fitting.fit().map(CurveWriter::values).orElse(Map.of()).entrySet().stream()
                .map(e -> new Change(e.getKey(), (double) fitting.type().eGet(e.getKey()), e.getValue())).filter(c -> c.before() != c.after()).toList();
    }

    private static Map<EAttribute, Double> values(CurveFit fit) {
        ConsumptionCurve curve = fit.curve();
        Map<EAttribute, Double> values = new LinkedHashMap<>();
        values.put(Literals.ELECTRIC_TYPE__CURVE_BASE_KWH_PER_KM, curve.baseKwhPerKm());
        values.put(Literals.ELECTRIC_TYPE__CURVE_MILD_C, curve.mildC());
        values.put(Literals.ELECTRIC_TYPE__CURVE_RISE_PER_K, curve.tractionRisePerK());
        values.put(Literals.ELECTRIC_TYPE__CURVE_HEAT_KW_PER_K, curve.heatKwPerK());
        values.put(Literals.ELECTRIC_TYPE__CURVE_HEAT_CAP_KW, curve.heatCapKw());
        values.put(Literals.ELECTRIC_TYPE__CURVE_COOL_FROM_C, curve.coolingFromC());
        if (fit.term(CurveTerm.COOLING).standing() != Standing.NOT_SEEN) {
            values.put(Literals.ELECTRIC_TYPE__CURVE_COOL_KW_PER_K, curve.coolKwPerK());
            values.put(Literals.ELECTRIC_TYPE__CURVE_COOL_CAP_KW, curve.coolCapKw());
        }
        return values;
    }

    private static String citation(CurveFitting fitting, CurveFit fit) {
        return "Fitted to " + fitting.logs().used().size() + " consumption logs of the study, off by "
                + RoundedText.percent(fit.rmsShare());
    }

    private static void note(ElectricType type, EAttribute field, String citation) {
        SourceNotes.put(type, field.getName(), Quality.MEASURED, citation);
    }
}
