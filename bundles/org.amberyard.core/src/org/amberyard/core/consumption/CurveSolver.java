package org.amberyard.core.consumption;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.consumption.TermEstimate.Standing;

/** Solves a design for the curve and the precision of its terms. */
final class CurveSolver {
    private final CurveDesign design;
    private final List<CurveTerm> unknowns;
    private final OptionalDouble seenK;
    private final double saturationK;
    private final Map<CurveTerm, Double> coefficients = new EnumMap<>(CurveTerm.class);
    private final double residualSum;

    CurveSolver(CurveDesign design) {
        this.design = design;
        this.unknowns = design.unknowns();
        this.seenK = new HeaterSaturation(design, unknowns).findK();
        this.saturationK = seenK.orElse(CurveDesign.UNLIMITED_K);
        NonNegativeLeastSquares.Solution solution =
                NonNegativeLeastSquares.solve(design.columns(unknowns, saturationK), design.target());
        for (int i = 0; i < unknowns.size(); i++) {
            coefficients.put(unknowns.get(i), solution.coefficients()[i]);
        }
        this.residualSum = solution.residualSum();
    }

    /** Energy per distance at mild temperatures, kWh/km; 0 when the logs do not show any. */
    double base() {
        return coefficient(CurveTerm.BASE);
    }

    /** True when the limit of the heater was found in the logs. */
    boolean heatLimitSeen() {
        return seenK.isPresent();
    }

    /** The curve; its base must not be zero. */
    ConsumptionCurve curve() {
        FitSettings settings = design.settings();
        double heat = coefficient(CurveTerm.HEATING);
        double cool = coefficient(CurveTerm.COOLING);
        double heatCap = seenK.isPresent() ? heat * saturationK : Math.max(settings.heaterKw(), heat * design.coldestK());
        return new ConsumptionCurve(base(), settings.mildC(), rise(), heat, heatCap, settings.coolingFromC(), cool,
                Math.max(settings.coolCapKw(), cool * design.hottestK()));
    }

    /** What the logs say about each term, in order. */
    List<TermEstimate> estimates() {
        List<CurveTerm> active = unknowns.stream().filter(t -> coefficient(t) > 0).toList();
        TermPrecision precision = precision(active);
        return Arrays.stream(CurveTerm.values()).map(t -> estimate(t, active, precision)).toList();
    }

    private TermPrecision precision(List<CurveTerm> active) {
        List<double[]> columns = new ArrayList<>(List.of(design.columns(active, saturationK)));
        if (seenK.isPresent()) {
            columns.add(design.saturationSlope(saturationK));
        }
        return new TermPrecision(columns.toArray(double[][]::new), residualSum);
    }

    private TermEstimate estimate(CurveTerm term, List<CurveTerm> active, TermPrecision precision) {
        double value = term == CurveTerm.COLD_RISE ? rise() : coefficient(term);
        int column = active.indexOf(term);
        if (column < 0) {
            return new TermEstimate(term, value, standingOfNotFitted(term), Optional.empty());
        }
        Interval interval = term == CurveTerm.COLD_RISE
                ? precision.ofRatio(column, active.indexOf(CurveTerm.BASE), value, base()) : precision.of(column, value);
        return new TermEstimate(term, value, Standing.FITTED, Optional.of(interval));
    }

    private Standing standingOfNotFitted(CurveTerm term) {
        if (unknowns.contains(term)) {
            return Standing.AT_ZERO;
        }
        return term == CurveTerm.COLD_RISE ? Standing.GIVEN : Standing.NOT_SEEN;
    }

    private double rise() {
        return design.settings().knownRisePerK().orElseGet(() -> coefficient(CurveTerm.COLD_RISE) / base());
    }

    private double coefficient(CurveTerm term) {
        return coefficients.getOrDefault(term, 0.0);
    }
}
