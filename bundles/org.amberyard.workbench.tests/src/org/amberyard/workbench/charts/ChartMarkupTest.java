package org.amberyard.workbench.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.amberyard.charts.ChartData;
import org.junit.jupiter.api.Test;

/** Figures of a chart as a word processor shows them and a spreadsheet computes with them. */
class ChartMarkupTest {

    @Test
    void figuresAreShortToReadAndWholeToComputeWith() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.US);
        try {
            String html = ChartMarkup.of(new ChartData(List.of("Saving (USD): B down, A across", "0.69"), List.of(Arrays.asList(1.5, -12345.67891),
                    Arrays.asList("none", null), Arrays.asList("< 2", Double.NaN))));
            assertTrue(html.contains("<th>Saving (USD): B down, A across</th><th>0.69</th>"), html);
            assertTrue(html.contains("x:num=\"-12345.67891\"") && html.contains(">-12,345.679</td>"), html);
            assertTrue(html.contains("<td>none</td><td></td>") && html.contains("<td>&lt; 2</td><td></td>"), html);
            assertEquals(4, html.split("<tr>").length - 1);
        } finally {
            Locale.setDefault(before);
        }
    }
}
