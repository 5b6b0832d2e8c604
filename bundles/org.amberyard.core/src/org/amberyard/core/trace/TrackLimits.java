package org.amberyard.core.trace;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What a track must have to be made a drive; the limits are common practice, no source. */
final class TrackLimits {
    private static final double LONGEST_H = 24;
    private static final double MOST_LEFT_OUT = 0.2;
    private static final double MOST_BRIDGED = 0.1;
    private static final double SHORTEST_M = 100;
    /** What a logger may tell of a bus, and more than any bus drives, m/s. */
    private static final double FASTEST_MPS = 100;

    private TrackLimits() {
    }

    static void checkPoints(Track track, KeptPoints kept) throws UnusableTrackException {
        int read = track.points().size();
        double hours = (track.points().get(read - 1).timeS() - track.points().get(0).timeS()) / 3600;
        if (hours > LONGEST_H) {
            throw refusal("The track lasts %.1f hours; a drive may last up to 24. Cut it into single drives.", hours);
        }
        if (kept.outliers() > MOST_LEFT_OUT * read) {
            throw refusal("%d of %d points cannot be right, because no bus moves like that; up to a fifth may be left out. "
                    + "Check the units and the columns.", kept.outliers(), read);
        }
        if (kept.points().size() < 2) {
            throw refusal("All points of the track bear the same time; a drive needs at least two moments.");
        }
    }

    static void checkDistance(List<PathStep> steps, Gaps gaps) throws UnusableTrackException {
        double lengthM = steps.stream().mapToDouble(PathStep::lengthM).sum();
        if (lengthM < SHORTEST_M) {
            throw refusal("The track is only %.0f m long; a drive needs at least 100 m.", lengthM);
        }
        if (gaps.bridgedM() > MOST_BRIDGED * lengthM) {
            throw refusal("%.0f %% of the distance lies in gaps of more than 10 s; up to 10 %% may be bridged. "
                    + "Points every second are best, every 5 s will do.", 100 * gaps.bridgedM() / lengthM);
        }
    }

    /** Where few points tell how far they scatter, one that is far off is not known for it. */
    static void checkSpeeds(double[] speedMps) throws UnusableTrackException {
        double fastestMps = Arrays.stream(speedMps).max().orElse(0);
        if (fastestMps > FASTEST_MPS) {
            throw refusal("Between its points the track moves at up to %,.0f km/h, as no bus does; they cannot be right. "
                    + "Check the units and the columns.", 3.6 * fastestMps);
        }
    }

    private static UnusableTrackException refusal(String text, Object... figures) {
        return new UnusableTrackException(String.format(Locale.ROOT, text, figures));
    }
}
