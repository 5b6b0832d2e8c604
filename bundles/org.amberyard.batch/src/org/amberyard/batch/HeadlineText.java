package org.amberyard.batch;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.report.ResultTable;

/** A table for the console with a line for each column and a column for each row, aligned. */
final class HeadlineText {
    private HeadlineText() {
    }

    static String of(ResultTable table) {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            List<String> line = new ArrayList<>();
            line.add(table.columns().get(i).header());
            for (List<Object> row : table.rows()) {
                line.add(TextTable.cell(table.columns().get(i), row.get(i)));
            }
            lines.add(line);
        }
        return TextTable.aligned(lines);
    }
}
