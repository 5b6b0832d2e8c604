package org.amberyard.core.upkeep;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Renewals of failures that have been solved, for all plans of a study and for its variants: most of these drive as far. Safe for use
 * from several threads.
 */
public final class Renewals {
    /** A variant that drives farther solves its own; what has piled up is forgotten then. */
    private static final int MOST = 200;

    private final Map<Asked, WeibullRenewal> solved = new ConcurrentHashMap<>();

    private record Asked(FailureLaw law, double longestKm) {
    }

    /** The renewal of a law up to an odometer, km. */
    public WeibullRenewal of(FailureLaw law, double longestKm) {
        if (solved.size() > MOST) {
            solved.clear();
        }
        return solved.computeIfAbsent(new Asked(law, longestKm), asked -> law.renewal(longestKm));
    }
}
