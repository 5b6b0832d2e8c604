package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes ups and downs smaller than a band out of an elevation profile, as hysteresis does: the road turns from climbing to
 * falling only where it then falls by the whole band, and the other way round. Between two turns it is made to climb, or
 * fall, without a break, midway between the highest that came before and the lowest that is to come; so a true hill keeps
 * its whole climb.
 */
final class DeadBand {
    private final double[] profileM;
    private final double bandM;

    private DeadBand(double[] profileM, double bandM) {
        this.profileM = profileM;
        this.bandM = bandM;
    }

    /**
     * A profile without its small ups and downs.
     *
     * @param bandM height of the band, m
     */
    static double[] applied(double[] profileM, double bandM) {
        DeadBand band = new DeadBand(profileM, bandM);
        double[] kept = profileM.clone();
        List<Integer> turns = band.turns();
        for (int i = 1; i < turns.size(); i++) {
            band.keepLeg(turns.get(i - 1), turns.get(i), kept);
        }
        return kept;
    }

    /** Places where the profile turns, with its first and last. */
    private List<Integer> turns() {
        List<Integer> turns = new ArrayList<>(List.of(0));
        int high = 0;
        int low = 0;
        int direction = 0;
        for (int i = 1; i < profileM.length; i++) {
            high = profileM[i] > profileM[high] ? i : high;
            low = profileM[i] < profileM[low] ? i : low;
            if (direction >= 0 && profileM[high] - profileM[i] >= bandM) {
                turns.add(high);
                direction = -1;
                low = i;
                high = i;
            } else if (direction <= 0 && profileM[i] - profileM[low] >= bandM) {
                turns.add(low);
                direction = 1;
                high = i;
                low = i;
            }
        }
        turns.add(profileM.length - 1);
        return turns;
    }

    private void keepLeg(int from, int to, double[] kept) {
        double sign = profileM[to] >= profileM[from] ? 1 : -1;
        double[] toCome = new double[to - from + 1];
        double least = Double.POSITIVE_INFINITY;
        for (int i = to; i >= from; i--) {
            least = Math.min(least, sign * profileM[i]);
            toCome[i - from] = least;
        }
        double most = Double.NEGATIVE_INFINITY;
        for (int i = from; i <= to; i++) {
            most = Math.max(most, sign * profileM[i]);
            kept[i] = sign * 0.5 * (most + toCome[i - from]);
        }
    }
}
