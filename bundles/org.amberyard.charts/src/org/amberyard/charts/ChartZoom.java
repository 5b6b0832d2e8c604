package org.amberyard.charts;

/**
 * The part of a chart that is shown, in the figures of its axes, so that it stays the same when the chart changes. Axes of bars
 * count them from 0 on.
 *
 * @param axes what the axes say; on other axes the part means nothing
 * @param across stretch of the axis from left to right
 * @param upward stretch of the axis from bottom to top
 */
public record ChartZoom(String axes, Span across, Span upward) {
}
