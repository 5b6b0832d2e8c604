package org.amberyard.core.consumption;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A consumption curve fitted to logs by least squares without negative terms, and how well it fits. {@link CurveDesign} tells
 * how the entries are weighted, {@link HeaterSaturation} when a limit of the heater is believed; where the logs show none, it
 * is the heater's own, and never below what the logs have seen. The limit of cooling is treated likewise but never fitted.
 *
 * @param curve the curve
 * @param terms what the logs say about each term, in order
 * @param residuals what the curve makes of every entry, in the order of the logs
 * @param rmsShare root of the mean squared residual, as shares of the measured energies
 * @param rSquared share of the variation in energy per distance that the curve explains, entries weighted by distance; empty
 *     when the energy per distance does not vary
 * @param coldestC lowest temperature of the logs, °C
 * @param warmestC highest temperature of the logs, °C
 * @param heatLimitSeen true when the limit of heating was found in the logs
 * @param withoutHours entries without hours, which were given those of the usual mean speed
 */
public record CurveFit(ConsumptionCurve curve, List<TermEstimate> terms, List<Residual> residuals, double rmsShare,
        OptionalDouble rSquared, double coldestC, double warmestC, boolean heatLimitSeen, int withoutHours)
        implements FitOutcome {

    public CurveFit {
        terms = List.copyOf(terms);
        residuals = List.copyOf(residuals);
    }

    /** Fits a curve to logs, or says why it cannot. The order of the entries does not matter. */
    public static FitOutcome of(List<LogEntry> entries, FitSettings settings) {
        CurveDesign design = new CurveDesign(entries, settings);
        Optional<FitRefusal> refusal = FitGuard.refusal(design);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        CurveSolver solver = new CurveSolver(design);
        return solver.base() > 0 ? fit(design, solver) : new FitRefusal(FitRefusal.Cause.NO_BASE, 0, 0);
    }

    private static CurveFit fit(CurveDesign design, CurveSolver solver) {
        List<LogEntry> entries = design.entries();
        ConsumptionCurve curve = solver.curve();
        List<Residual> residuals = entries.stream()
                .map(e -> new Residual(e, curve.totalKwh(e.km(), design.hours(e), e.outsideC()))).toList();
        double squares = residuals.stream().mapToDouble(r -> r.share() * r.share()).sum();
        double coldestC = entries.stream().mapToDouble(LogEntry::outsideC).min().orElseThrow();
        double warmestC = entries.stream().mapToDouble(LogEntry::outsideC).max().orElseThrow();
        int withoutHours = (int) entries.stream().filter(e -> e.hours() == 0).count();
        return new CurveFit(curve, solver.estimates(), residuals, Math.sqrt(squares / residuals.size()),
                rSquared(residuals), coldestC, warmestC, solver.heatLimitSeen(), withoutHours);
    }

    private static OptionalDouble rSquared(List<Residual> residuals) {
        double km = residuals.stream().mapToDouble(r -> r.entry().km()).sum();
        double mean = residuals.stream().mapToDouble(r -> r.entry().energyKwh()).sum() / km;
        double left = 0;
        double all = 0;
        for (Residual residual : residuals) {
            LogEntry entry = residual.entry();
            left += residual.kwh() * residual.kwh() / entry.km();
            all += entry.km() * Math.pow(entry.kwhPerKm() - mean, 2);
        }
        return all > 0 ? OptionalDouble.of(1 - left / all) : OptionalDouble.empty();
    }

    /** What the logs say about a term. */
    public TermEstimate term(CurveTerm term) {
        return terms.get(term.ordinal());
    }

    /** Mean speed of the logs that tell their hours, km/h; empty where none does. */
    public OptionalDouble meanSpeedKmh() {
        List<LogEntry> timed = residuals.stream().map(Residual::entry).filter(e -> e.hours() > 0).toList();
        double hours = timed.stream().mapToDouble(LogEntry::hours).sum();
        return hours > 0 ? OptionalDouble.of(timed.stream().mapToDouble(LogEntry::km).sum() / hours) : OptionalDouble.empty();
    }
}
