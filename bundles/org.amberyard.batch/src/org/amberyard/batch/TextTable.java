package org.amberyard.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.charts.Figures;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;

/** Tables for the console, aligned. */
final class TextTable {
    private static final MathContext DIGITS = new MathContext(3);
    private static final double WHOLE_FROM = 100;
    private static final String MISSING = "–";
    private static final String GAP = "   ";

    private TextTable() {
    }

    /** A table with a line for each row below its headers. */
    static String of(ResultTable table) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(table.columns().stream().map(ResultColumn::header).toList());
        for (List<Object> row : table.rows()) {
            List<String> line = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                line.add(cell(table.columns().get(i), row.get(i)));
            }
            lines.add(line);
        }
        return aligned(lines);
    }

    /** Text of a cell at a length for reading. */
    static String cell(ResultColumn column, Object value) {
        if (value == null) {
            return MISSING;
        }
        return value instanceof Number number ? number(column.type(), number.doubleValue()) : value.toString();
    }

    private static String number(ResultColumn.Type type, double value) {
        return type == ResultColumn.Type.MONEY || value == 0 || Math.abs(value) >= WHOLE_FROM ? Figures.whole(value)
                : BigDecimal.valueOf(value).round(DIGITS).toPlainString();
    }

    /** Lines whose cells stand below each other: names at the left, figures at the right of their columns. */
    static String aligned(List<List<String>> lines) {
        StringBuilder text = new StringBuilder();
        for (List<String> line : lines) {
            text.append(padded(line.get(0), width(lines, 0), false));
            for (int i = 1; i < line.size(); i++) {
                text.append(GAP).append(padded(line.get(i), width(lines, i), true));
            }
            text.append(System.lineSeparator());
        }
        return text.toString();
    }

    private static int width(List<List<String>> lines, int column) {
        return lines.stream().mapToInt(l -> l.get(column).length()).max().orElse(0);
    }

    private static String padded(String cell, int width, boolean right) {
        String blanks = " ".repeat(width - cell.length());
        return right ? blanks + cell : cell + blanks;
    }
}
