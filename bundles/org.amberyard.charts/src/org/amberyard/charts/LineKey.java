package org.amberyard.charts;

/**
 * Key of a line that stands in the legend under the name of its kind.
 *
 * @param place its place among the lines, by which lines of one name are told apart
 * @param legend its name in the legend
 */
record LineKey(int place, String legend) implements Comparable<LineKey>, LegendKey {
    @Override
    public int compareTo(LineKey other) {
        return Integer.compare(place, other.place);
    }

    @Override
    public String toString() {
        return legend;
    }
}
