package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.List;

/**
 * Times without points, and the runs of points between those that are too long to be interpolated.
 *
 * @param runs runs of points, each without a long gap
 * @param longGaps the gaps between them
 * @param interpolated short gaps within the runs
 */
record Gaps(List<List<TrackPoint>> runs, List<Gap> longGaps, GapTotal interpolated) {
    /** A step this many times the usual one is a gap. */
    private static final double UNUSUAL = 1.5;
    /** A step up to this is none, however close the others are, s. */
    private static final double SHORTEST_S = 2;

    static Gaps of(KeptPoints kept) {
        double usualS = Math.max(SHORTEST_S, UNUSUAL * kept.intervalS());
        List<List<TrackPoint>> runs = new ArrayList<>();
        List<Gap> longGaps = new ArrayList<>();
        GapTotal interpolated = GapTotal.NONE;
        int start = 0;
        for (int i = 1; i < kept.points().size(); i++) {
            Gap step = new Gap(kept.points().get(i - 1), kept.points().get(i));
            if (step.durationS() > Gap.LONGEST_INTERPOLATED_S) {
                runs.add(kept.points().subList(start, i));
                longGaps.add(step);
                start = i;
            } else if (step.durationS() > usualS) {
                interpolated = interpolated.and(step.durationS());
            }
        }
        runs.add(kept.points().subList(start, kept.points().size()));
        return new Gaps(runs, longGaps, interpolated);
    }

    /** Long gaps in which the bus stood. */
    GapTotal standing() {
        return total(true);
    }

    /** Long gaps in which the bus moved. */
    GapTotal bridged() {
        return total(false);
    }

    /** Distance bridged over gaps, m. */
    double bridgedM() {
        return longGaps.stream().filter(g -> !g.standing()).mapToDouble(g -> g.step().lengthM()).sum();
    }

    private GapTotal total(boolean standing) {
        GapTotal total = GapTotal.NONE;
        for (Gap gap : longGaps) {
            total = gap.standing() == standing ? total.and(gap.durationS()) : total;
        }
        return total;
    }
}
