package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which terms a fitted surface has. What some inputs do by themselves may be known exactly beside the surface; such inputs then
 * stand in it by their products with others alone, if at all.
 *
 * @param known by input: true where what it does by itself is known
 * @param degree which products there are
 */
public record SurfaceShape(List<Boolean> known, Degree degree) {

    /** The products of a surface, from the fewest to the most. */
    public enum Degree {
        /** None: straight in each input. */
        STRAIGHT,
        /** Of inputs of which nothing is known, squares included. */
        OWN,
        /** These, and theirs with the inputs of which what they do by themselves is known. */
        ALL
    }

    public SurfaceShape {
        known = List.copyOf(known);
    }

    /** All products of inputs of which nothing is known. */
    public static SurfaceShape quadratic(int inputs) {
        return new SurfaceShape(IntStream.range(0, inputs).mapToObj(i -> false).toList(), Degree.ALL);
    }

    /** Places of the inputs whose product each term is; the first is 1. */
    List<int[]> factors() {
        List<int[]> factors = new ArrayList<>(List.of(new int[0]));
        for (int i = 0; i < known.size(); i++) {
            if (!known.get(i)) {
                factors.add(new int[] {i});
            }
        }
        for (int i = 0; i < known.size(); i++) {
            for (int j = i; j < known.size(); j++) {
                if (has(i, j)) {
                    factors.add(new int[] {i, j});
                }
            }
        }
        return factors;
    }

    private boolean has(int one, int other) {
        return switch (degree) {
            case STRAIGHT -> false;
            case OWN -> !known.get(one) && !known.get(other);
            case ALL -> !known.get(one) || !known.get(other);
        };
    }

    /** Number of terms, or more where some cannot be told apart. */
    public int terms() {
        return factors().size();
    }
}
