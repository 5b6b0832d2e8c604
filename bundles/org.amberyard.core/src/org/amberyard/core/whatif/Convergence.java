package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.math.Checks;

/**
 * How a mean settles as draws are added.
 *
 * @param draws draws so far
 * @param mean mean of the result over them
 * @param standardError standard error of the mean; not a number while it cannot be told
 */
public record Convergence(int draws, double mean, double standardError) {

    /**
     * The course of a mean.
     *
     * @param values the result in each draw
     * @param replicates independent samples that the draws were taken from in turn, see {@link ReplicatedPoints}; 1 for
     *            independent draws
     * @param step draws between two points
     */
    public static List<Convergence> of(double[] values, int replicates, int step) {
        Checks.atLeast("Draws between two points", step, 1);
        MeanError error = new MeanError(replicates);
        List<Convergence> course = new ArrayList<>();
        for (int from = 0; from < values.length; from += step) {
            int to = Math.min(values.length, from + step);
            error.add(values, from, from, to);
            course.add(new Convergence(to, error.mean(), error.standardError()));
        }
        return course;
    }
}
