package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;

/**
 * The evaluations that tell how much of the variance of a result each group of inputs explains: Saltelli, Annoni,
 * Azzini, Campolongo, Ratto and Tarantola, "Variance based sensitivity analysis of model output. Design and estimator
 * for the total sensitivity index", Computer Physics Communications 181 (2010), 259–270 (from memory). A row is a point
 * A, a point B, and for each group the point A with the inputs of the group taken from B. Rows come one after the
 * other, so that the first rows can be used by themselves.
 *
 * <p>Groups must be independent of each other; inputs that are correlated belong into one group.
 */
public final class IndexPlan implements UnitPoints {
    private final UnitPoints sample;
    private final int[] groupOf;
    private final int groups;

    /**
     * A plan.
     *
     * @param sample points with two coordinates for each input: those of A, then those of B
     * @param groupOf group of each input, numbered from 0 without a gap
     */
    public IndexPlan(UnitPoints sample, int... groupOf) {
        this.sample = sample;
        this.groupOf = groupOf.clone();
        this.groups = Arrays.stream(groupOf).max().orElse(-1) + 1;
        Checks.atLeast("Number of groups of inputs", groups, 1);
        for (int group = 0; group < groups; group++) {
            int wanted = group;
            if (Arrays.stream(groupOf).noneMatch(g -> g == wanted)) {
                throw new IllegalArgumentException("Group " + group
                        + " of inputs is empty but must have an input or more");
            }
        }
        if (sample.dimensions() != 2 * groupOf.length) {
            throw new IllegalArgumentException("Number of coordinates of the sample is " + sample.dimensions()
                    + " but must be two for each of the " + groupOf.length + " inputs");
        }
    }

    /** A plan in which each input is a group of its own. */
    public static IndexPlan ofEach(UnitPoints sample) {
        int[] groupOf = new int[sample.dimensions() / 2];
        Arrays.setAll(groupOf, input -> input);
        return new IndexPlan(sample, groupOf);
    }

    /** Number of groups. */
    public int groups() {
        return groups;
    }

    /** Evaluations of a row: A, B, and one for each group. */
    public int perRow() {
        return groups + 2;
    }

    @Override
    public int dimensions() {
        return groupOf.length;
    }

    /** A coordinate of an evaluation; evaluations of row r are numbered from r times {@link #perRow()}. */
    @Override
    public double at(int evaluation, int input) {
        int place = evaluation % perRow();
        boolean fromSecond = place == 1 || place >= 2 && groupOf[input] == place - 2;
        return sample.at(evaluation / perRow(), fromSecond ? groupOf.length + input : input);
    }
}
