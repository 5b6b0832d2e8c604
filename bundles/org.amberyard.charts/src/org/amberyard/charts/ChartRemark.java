package org.amberyard.charts;

/**
 * What someone noted on a chart.
 *
 * @param text the note
 * @param at the place that it speaks of
 */
public record ChartRemark(String text, ChartPoint at) {
}
