package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The figures behind a chart.
 *
 * @param columns column headers with units
 * @param rows cells by row: numbers, text or null where a figure is missing
 */
public record ChartData(List<String> columns, List<List<Object>> rows) {

    public ChartData {
        columns = List.copyOf(columns);
        rows = rows.stream().map(r -> Collections.unmodifiableList(new ArrayList<>(r))).toList();
    }

    /** The figures as lines of comma-separated values, for a file. */
    public String toCsv() {
        return DelimitedText.CSV.document(columns, rows);
    }

    /** The figures as lines of tab-separated values, for the clipboard. */
    public String toTsv() {
        return DelimitedText.TSV.document(columns, rows);
    }
}
