package org.amberyard.core.trace;

import java.util.Arrays;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Elevation over distance, freed from the noise of a receiver.
 *
 * <p>The logged elevations are averaged over every ten metres of road, so that a long stop counts no more than a short one;
 * stretches without any are filled by straight lines. A running median over five such values takes single leaps out. A cubic
 * fitted over a stretch to either side smooths, {@link DeadBand} removes the ups and downs that are left of the noise, and the
 * cubic once more rounds the stairs that it leaves. Stretch and band grow with the scatter of the elevations themselves. By
 * trial with made profiles, flat, hilly and gently sloping, and scatters up to 5 m; no source.
 */
final class ElevationProfile {
    private static final double SPACING_M = 10;
    private static final int MEDIAN_REACH = 2;
    private static final double SHORTEST_REACH_M = 50;
    private static final double LONGEST_REACH_M = 250;
    private static final double LEAST_BAND_M = 3;

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
        double scatterM = Scatter.even(Arrays.stream(means).filter(m -> !Double.isNaN(m)).toArray());
        double reachM = Math.min(LONGEST_REACH_M, Math.max(SHORTEST_REACH_M, 150 * Math.pow(scatterM, 0.3)));
        double[] smooth = fitted(medians(filled(means)), reachM);
        return new ElevationProfile(fitted(DeadBand.applied(smooth, Math.max(LEAST_BAND_M, 2 * scatterM)), reachM));
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
        return sums;
    }

    private static double[] filled(double[] means) {
        double[] values = means.clone();
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
        return values;
    }

    private static double[] medians(double[] values) {
        double[] medians = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int reach = Math.min(MEDIAN_REACH, Math.min(i, values.length - 1 - i));
            medians[i] = StatUtils.percentile(values, i - reach, 2 * reach + 1, 50);
        }
        return medians;
    }

    private static double[] fitted(double[] values, double reachM) {
        double[] placeM = new double[values.length];
        Arrays.setAll(placeM, i -> i * SPACING_M);
        LocalFit fit = new LocalFit(placeM, values, reachM);
        double[] fitted = new double[values.length];
        Arrays.setAll(fitted, i -> fit.fit(i).value());
        return fitted;
    }
}
