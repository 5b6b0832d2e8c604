package org.amberyard.core.consumption;

import java.util.Arrays;
import java.util.List;

/**
 * Log entries as a linear least-squares problem: once mild temperature, start of cooling and saturation of the heater are
 * fixed, the terms enter the energy linearly.
 *
 * <p>Every row is divided by the root of its distance, because an entry is a sum over days and its variance grows with its
 * distance; so an entry counts by its distance, and a curve of the base alone is total energy over total distance. An entry
 * without hours gets those of the mean speed of the entries that have them.
 */
final class CurveDesign {
    /** Heater that never saturates, K. */
    static final double UNLIMITED_K = Double.POSITIVE_INFINITY;

    private final List<LogEntry> entries;
    private final FitSettings settings;
    private final double typicalHoursPerKm;

    CurveDesign(List<LogEntry> entries, FitSettings settings) {
        this.entries = List.copyOf(entries);
        this.settings = settings;
        double hours = 0;
        double km = 0;
        for (LogEntry entry : entries) {
            hours += entry.hours();
            km += entry.hours() > 0 ? entry.km() : 0;
        }
        this.typicalHoursPerKm = km > 0 ? hours / km : 0;
    }

    List<LogEntry> entries() {
        return entries;
    }

    FitSettings settings() {
        return settings;
    }

    /** Terms that the logs can tell, in order. */
    List<CurveTerm> unknowns() {
        return Arrays.stream(CurveTerm.values())
                .filter(t -> t != CurveTerm.COLD_RISE || settings.knownRisePerK().isEmpty())
                .filter(this::isSeen).toList();
    }

    /** True when some entry reaches the temperatures where a term shows. */
    boolean isSeen(CurveTerm term) {
        return entries.stream().anyMatch(e -> regressor(e, term, UNLIMITED_K) > 0);
    }

    /** Measured energy, weighted. */
    double[] target() {
        return entries.stream().mapToDouble(e -> e.energyKwh() / Math.sqrt(e.km())).toArray();
    }

    /** One column for each term, weighted. */
    double[][] columns(List<CurveTerm> terms, double saturationK) {
        return terms.stream().map(t -> entries.stream()
                .mapToDouble(e -> regressor(e, t, saturationK) / Math.sqrt(e.km())).toArray()).toArray(double[][]::new);
    }

    /** Change of the heating column with the saturation, weighted. */
    double[] saturationSlope(double saturationK) {
        return entries.stream().mapToDouble(e -> coldK(e) > saturationK ? hours(e) / Math.sqrt(e.km()) : 0).toArray();
    }

    /** Hours of an entry, or what its distance takes at the usual mean speed, h. */
    double hours(LogEntry entry) {
        return entry.hours() > 0 ? entry.hours() : entry.km() * typicalHoursPerKm;
    }

    /** Degrees below the mild temperature, K. */
    double coldK(LogEntry entry) {
        return Math.max(0, settings.mildC() - entry.outsideC());
    }

    /** Degrees above the start of cooling, K. */
    double hotK(LogEntry entry) {
        return Math.max(0, entry.outsideC() - settings.coolingFromC());
    }

    /** Most degrees below the mild temperature, K. */
    double coldestK() {
        return entries.stream().mapToDouble(this::coldK).max().orElse(0);
    }

    /** Most degrees above the start of cooling, K. */
    double hottestK() {
        return entries.stream().mapToDouble(this::hotK).max().orElse(0);
    }

    private double regressor(LogEntry entry, CurveTerm term, double saturationK) {
        return switch (term) {
            case BASE -> entry.km() * (1 + settings.knownRisePerK().orElse(0) * coldK(entry));
            case COLD_RISE -> entry.km() * coldK(entry);
            case HEATING -> hours(entry) * Math.min(saturationK, coldK(entry));
            case COOLING -> hours(entry) * hotK(entry);
        };
    }
}
