package org.amberyard.core.whatif;

import java.util.List;

/**
 * Values of uncertain inputs, draw by draw, in the units of the inputs.
 *
 * @param points where in its distribution each draw stands, a coordinate for each input
 * @param distributions distributions of the inputs
 */
public record Draws(UnitPoints points, List<Distribution> distributions) {

    public Draws {
        distributions = List.copyOf(distributions);
        if (points.dimensions() != distributions.size()) {
            throw new IllegalArgumentException("Number of distributions is " + distributions.size()
                    + " but must be that of the coordinates of a point, " + points.dimensions());
        }
    }

    /** Value of an input in a draw. */
    public double at(int draw, int variable) {
        return distributions.get(variable).quantile(points.at(draw, variable));
    }

    /** Values of all inputs in a draw. */
    public double[] at(int draw) {
        double[] values = new double[distributions.size()];
        into(draw, values);
        return values;
    }

    /**
     * Writes the values of all inputs in a draw.
     *
     * @param values takes them, a place for each input
     */
    public void into(int draw, double[] values) {
        for (int variable = 0; variable < distributions.size(); variable++) {
            values[variable] = at(draw, variable);
        }
    }
}
