package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;

/**
 * Tells whether emission factors that only stand in, or that nobody has said the source of, took part in figures. Such figures
 * are for trying out; every export of them says that they are not for submission.
 */
public final class PlaceholderUse {
    /** What every export of such figures says. */
    public static final String WORDS = "Not for submission: emission factors took part that are placeholders or have no source.";

    private PlaceholderUse() {
    }

    /** True when they took part in emissions of a study. */
    public static boolean inEmissions(StudyResult result) {
        return years(result).stream().anyMatch(a -> a.emissions().bySource().values().stream().anyMatch(Masses::anyPlaceholder)
                || a.otherGrid().filter(Masses::anyPlaceholder).isPresent());
    }

    /** True when they took part in one pollutant of a study, whatever its source but upstream of the tank. */
    public static boolean in(StudyResult result, Pollutant pollutant) {
        return years(result).stream().anyMatch(a -> a.emissions().total().placeholder(pollutant));
    }

    /** True when they took part in what replaced buses emit or emitted. */
    public static boolean inReplaced(List<ReplacedBus> buses) {
        return buses.stream().anyMatch(b -> b.before().bySource().values().stream().anyMatch(Masses::anyPlaceholder)
                || b.after().bySource().values().stream().anyMatch(Masses::anyPlaceholder));
    }

    /** True when they took part in the social cost of a study. */
    public static boolean inSocialCost(StudyResult result) {
        return in(result, Pollutant.CO2E) || result.input().air().social().points().stream()
                .anyMatch(p -> p.origin().quality().isPlaceholder());
    }

    private static List<AirYear> years(StudyResult result) {
        return result.plans().stream().flatMap(p -> p.air().stream()).toList();
    }
}
