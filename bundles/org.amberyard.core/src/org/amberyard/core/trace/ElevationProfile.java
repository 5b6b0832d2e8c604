package org.amberyard.core.trace;

import java.util.Arrays;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Elevation over distance, freed from the noise of a receiver.
 *
 * <p>The logged elevations are averaged over every ten metres of road, so that a long stop counts no more than a short one;
 * stretches without any are filled by straight lines. A running median over five such values takes single leaps out, a
 * running mean with falling weights over sixty metres to either side smooths, and {@link DeadBand} removes what is left of
 * the noise. The lengths are common practice, tried on made profiles; no source.
 */
final class ElevationProfile {
    private static final double SPACING_M = 10;
    private static final int MEDIAN_REACH = 2;
    private static final int SMOOTHING_REACH = 6;

    private final double[] profileM;

    private ElevationProfile(double[] profileM) {
        this.profileM = profileM;
    }

    /**
     * The profile of a drive.
     *
     * @param distanceM distance at each logged elevation, m, not falling
     * @param elevationM the logged elevations, m; at least one
     * @param lengthM length of the drive, m
     */
    static ElevationProfile of(double[] distanceM, double[] elevationM, double lengthM) {
        double[] means = means(distanceM, elevationM, 1 + (int) Math.ceil(lengthM / SPACING_M));
        return new ElevationProfile(DeadBand.applied(smoothed(medians(means))));
    }

    /** Elevation at a distance from the start, m. */
    double elevationM(double distanceM) {
        double place = Math.min(profileM.length - 1.0, distanceM / SPACING_M);
        int before = Math.min((int) place, profileM.length - 2);
        return before < 0 ? profileM[0] : profileM[before] + (place - before) * (profileM[before + 1] - profileM[before]);
    }

    private static double[] means(double[] distanceM, double[] elevationM, int places) {
        double[] sums = new double[places];
        int[] counts = new int[places];
        for (int i = 0; i < distanceM.length; i++) {
            int place = Math.min(places - 1, (int) Math.rint(distanceM[i] / SPACING_M));
            sums[place] += elevationM[i];
            counts[place]++;
        }
        for (int i = 0; i < places; i++) {
            sums[i] = counts[i] == 0 ? Double.NaN : sums[i] / counts[i];
        }
        fill(sums);
        return sums;
    }

    private static void fill(double[] values) {
        int before = -1;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                for (int k = before + 1; k < i; k++) {
                    values[k] = before < 0 ? values[i]
                            : values[before] + (values[i] - values[before]) * (k - before) / (i - before);
                }
                before = i;
            }
        }
        Arrays.fill(values, before + 1, values.length, values[before]);
    }

    private static double[] medians(double[] values) {
        double[] medians = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int reach = Math.min(MEDIAN_REACH, Math.min(i, values.length - 1 - i));
            medians[i] = StatUtils.percentile(values, i - reach, 2 * reach + 1, 50);
        }
        return medians;
    }

    /** Near the ends the window shrinks to what lies on both sides, so that a slope keeps its ends. */
    private static double[] smoothed(double[] values) {
        double[] smoothed = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int reach = Math.min(SMOOTHING_REACH, Math.min(i, values.length - 1 - i));
            double sum = 0;
            double weights = 0;
            for (int k = -reach; k <= reach; k++) {
                double weight = reach + 1 - Math.abs(k);
                sum += weight * values[i + k];
                weights += weight;
            }
            smoothed[i] = sum / weights;
        }
        return smoothed;
    }
}
