package org.amberyard.workbench.charts;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.charts.ChartData;
import org.amberyard.workbench.grid.TableMarkup;
import org.amberyard.workbench.grid.TableMarkup.Cell;

/** The figures of a chart as a table of a word processor, which spreadsheets take with all digits. */
final class ChartMarkup {
    private static final int DECIMALS = 3;

    private ChartMarkup() {
    }

    /** The table, its headings first. */
    static String of(ChartData data) {
        List<List<Cell>> block = new ArrayList<>(List.of(data.columns().stream().map(Cell::of).toList()));
        data.rows().forEach(row -> block.add(row.stream().map(ChartMarkup::cell).toList()));
        return TableMarkup.write(block, true);
    }

    private static Cell cell(Object value) {
        if (!(value instanceof Number number)) {
            return Cell.of(value == null ? "" : value.toString());
        }
        if (!Double.isFinite(number.doubleValue())) {
            return Cell.of("");
        }
        NumberFormat shown = NumberFormat.getInstance();
        shown.setMaximumFractionDigits(DECIMALS);
        return new Cell(shown.format(number), new BigDecimal(number.toString()).toPlainString());
    }
}
