package org.amberyard.charts;

/**
 * A place on a chart, in the figures of its axes, so that it stays where it is when the chart is zoomed or its figures change.
 * Axes of bars count them from 0 on.
 *
 * @param units units of the axes; in other units the place means nothing
 * @param across place on the axis from left to right
 * @param upward place on the axis from bottom to top
 */
public record ChartPoint(String units, double across, double upward) {
}
