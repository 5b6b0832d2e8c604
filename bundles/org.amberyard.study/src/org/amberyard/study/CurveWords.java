package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.FitRefusal;
import org.amberyard.core.consumption.TermEstimate;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.routes.Route;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.vehicles.VehiclesPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;

/** Tells what came of fitting a curve, in sentences and in the study's units. */
public final class CurveWords {
    /** Mean error up to which a curve is called good, and usable; common practice, no source. */
    private static final double GOOD_SHARE = 0.05;
    private static final double USABLE_SHARE = 0.1;

    private final CurveFitting fitting;
    private final RoundedText text;

    private CurveWords(CurveFitting fitting) {
        this.fitting = fitting;
        this.text = new RoundedText(fitting.study());
    }

    /** Sentences on a fitting: how far to trust it and what it is good for, then the curve term by term; or why there is none. */
    public static List<String> of(CurveFitting fitting) {
        CurveWords words = new CurveWords(fitting);
        List<String> sentences = new ArrayList<>();
        if (fitting.outcome() instanceof CurveFit fit) {
            sentences.add(words.quality(fit));
            sentences.add(words.routes());
            sentences.addAll(words.cautions(fit));
            fit.terms().forEach(t -> sentences.add(words.term(t)));
            sentences.add(words.heatLimit(fit));
            sentences.addAll(ResidualWords.of(fitting, fit));
        } else if (fitting.outcome() instanceof FitRefusal refusal) {
            sentences.add(RefusalWords.of(fitting, refusal));
        }
        if (!fitting.logs().leftOut().isEmpty()) {
            sentences.add("Left out for want of distance, energy or temperature: "
                    + fitting.logs().leftOut().stream().map(ElementNames::of).collect(Collectors.joining(", ")) + ".");
        }
        if (!fitting.logs().notChosen().isEmpty()) {
            sentences.add("Logs of the type that were not chosen: " + fitting.logs().notChosen().size() + ".");
        }
        return List.copyOf(sentences);
    }

    private String quality(CurveFit fit) {
        String grade = fit.rmsShare() <= GOOD_SHARE ? "Good fit" : fit.rmsShare() <= USABLE_SHARE ? "Usable fit" : "Poor fit";
        OptionalDouble explained = fit.rSquared();
        return grade + ": the curve is off by " + RoundedText.percent(fit.rmsShare()) + " on " + fit.residuals().size()
                + " logs from " + degrees(fit.coldestC()) + " to " + degrees(fit.warmestC())
                + (explained.isEmpty() ? "."
                        : " and explains " + RoundedText.percent(explained.getAsDouble())
                                + " of the variation in energy per distance.");
    }

    private String term(TermEstimate term) {
        EAttribute field = CurveFields.of(term.term());
        return CurveFields.label(field) + ": " + switch (term.standing()) {
            case FITTED -> text.of(field, term.value()) + ", with 95 % confidence between "
                    + text.of(field, term.interval95().orElseThrow().low()) + " and "
                    + text.of(field, term.interval95().orElseThrow().high()) + ".";
            case AT_ZERO -> "none; the logs show no sign of it.";
            case GIVEN -> text.of(field, term.value()) + ", as given.";
            case NOT_SEEN -> "no log is warm enough to tell, so the type's own "
                    + text.of(field, fitting.type().getCurveCoolKwPerK()) + " stays.";
        };
    }

    private String heatLimit(CurveFit fit) {
        EAttribute field = Literals.ELECTRIC_TYPE__CURVE_HEAT_CAP_KW;
        double heaterKw = CurveFitting.heaterKw(fitting.type());
        String origin = fit.heatLimitSeen() ? ", found in the logs."
                : fit.curve().heatCapKw() > heaterKw ? ", the most that the logs have seen, although the heater has but "
                        + text.of(Literals.ELECTRIC_TYPE__HEATER_KW, heaterKw) + "; check the heater."
                : ", the heater's own; the logs show no limit.";
        return CurveFields.label(field) + ": " + text.of(field, fit.curve().heatCapKw()) + origin;
    }

    private List<String> cautions(CurveFit fit) {
        List<String> cautions = new ArrayList<>();
        if (fit.withoutHours() > 0) {
            cautions.add("Logs without time in service: " + fit.withoutHours()
                    + ". They are taken at the mean speed of the others.");
        }
        OptionalDouble coldestDayC = fitting.study().getSite() == null ? OptionalDouble.empty()
                : fitting.study().getSite().getClimate().stream().mapToDouble(MonthClimate::getColdestLowC).min();
        if (coldestDayC.isPresent() && coldestDayC.getAsDouble() < fit.coldestC()) {
            cautions.add("The site's coldest day, " + degrees(coldestDayC.getAsDouble())
                    + ", is colder than any log; there the curve only carries on what it has seen.");
        }
        return cautions;
    }

    /** A curve changes nothing where no route goes by it. */
    private String routes() {
        List<Route> routes = fitting.study().getRoutes();
        long by = routes.stream().filter(r -> r.getEnergyModel() == EnergyModel.CURVE).count();
        return by == 0 ? "No route goes by consumption curves yet, so this one decides nothing until some do; choose it as their energy model on "
                + "the page Routes." : "Routes that go by consumption curves: " + by + " of " + routes.size() + ".";
    }

    private String degrees(double celsius) {
        return text.of(FleetPackage.Literals.CONSUMPTION_LOG__OUTSIDE_C, celsius);
    }
}
