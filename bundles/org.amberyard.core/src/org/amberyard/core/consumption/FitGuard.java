package org.amberyard.core.consumption;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.consumption.FitRefusal.Cause;

/** Refuses logs that cannot tell the terms of a curve, whatever the arithmetic would make of them. */
final class FitGuard {
    /** Entries beyond the number of terms, so that the scatter can be judged; common practice, no source. */
    private static final int ENTRIES_BEYOND_TERMS = 2;
    /** Fewest entries that say anything; common practice, no source. */
    private static final int FEWEST_ENTRIES = 5;
    /** How far below mild the coldest entry must be, K; common practice, no source. */
    private static final double COLD_SPAN_K = 10;

    private FitGuard() {
    }

    static Optional<FitRefusal> refusal(CurveDesign design) {
        List<LogEntry> entries = design.entries();
        List<CurveTerm> terms = design.unknowns();
        int neededEntries = Math.max(FEWEST_ENTRIES, terms.size() + ENTRIES_BEYOND_TERMS);
        if (entries.size() < neededEntries) {
            return refusal(Cause.TOO_FEW_ENTRIES, entries.size(), neededEntries);
        }
        double coldestC = entries.stream().mapToDouble(LogEntry::outsideC).min().getAsDouble();
        double coldEnoughC = design.settings().mildC() - COLD_SPAN_K;
        if (coldestC > coldEnoughC) {
            return refusal(Cause.NOTHING_COLD, coldestC, coldEnoughC);
        }
        if (entries.stream().allMatch(e -> e.hours() == 0)) {
            return refusal(Cause.HOURS_UNKNOWN, 0, 1);
        }
        return alike(design, terms);
    }

    private static Optional<FitRefusal> alike(CurveDesign design, List<CurveTerm> terms) {
        double index = index(design, terms);
        if (index <= Collinearity.LARGEST_INDEX) {
            return Optional.empty();
        }
        Cause cause = onlySpeedsAreAlike(design, terms) ? Cause.SPEEDS_ALIKE : Cause.TEMPERATURES_ALIKE;
        return refusal(cause, index, Collinearity.LARGEST_INDEX);
    }

    /** True when the temperatures tell base and rise apart, and all would be well if the rise were known. */
    private static boolean onlySpeedsAreAlike(CurveDesign design, List<CurveTerm> terms) {
        List<CurveTerm> perDistance = List.of(CurveTerm.BASE, CurveTerm.COLD_RISE);
        List<CurveTerm> withoutRise = terms.stream().filter(t -> t != CurveTerm.COLD_RISE).toList();
        return index(design, perDistance) <= Collinearity.LARGEST_INDEX
                && index(design, withoutRise) <= Collinearity.LARGEST_INDEX;
    }

    private static double index(CurveDesign design, List<CurveTerm> terms) {
        return Collinearity.conditionIndex(design.columns(terms, CurveDesign.UNLIMITED_K));
    }

    private static Optional<FitRefusal> refusal(Cause cause, double found, double needed) {
        return Optional.of(new FitRefusal(cause, found, needed));
    }
}
