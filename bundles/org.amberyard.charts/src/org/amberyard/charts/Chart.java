package org.amberyard.charts;

import org.jfree.chart.JFreeChart;

/**
 * A chart ready to paint, with what it shows in words and in figures.
 *
 * @param name short name for files and ids, for example {@code annual_cost}
 * @param title title
 * @param chart the chart to paint
 * @param textAlternative what the chart shows, as prose with the main figures
 * @param data the figures behind the chart, in the units shown
 * @param preferredHeight height in pixels at which nothing is cramped when the chart is 900 pixels wide
 * @param leastHeight height in pixels below which it cannot be read when it is 900 pixels wide
 * @param subjects the parts of the study behind what the chart draws
 */
public record Chart(String name, String title, JFreeChart chart, String textAlternative, ChartData data,
        int preferredHeight, int leastHeight, Subjects subjects) {
}
