package org.amberyard.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A table of results in the units of the user.
 *
 * @param name name for programs and files
 * @param title title for people
 * @param columns columns
 * @param rows cells by row: {@link Integer}, {@link Double} or {@link String}, and null where there is no figure
 * @param watermark what every export of the table must say; empty when there is nothing to say
 * @param heads number of leading columns that say what a row is about; 0 where the first does
 */
public record ResultTable(String name, String title, List<ResultColumn> columns, List<List<Object>> rows, String watermark,
        int heads) {

    /** Name of the column in which rows say the watermark. */
    public static final String STANDING = "standing";

    public ResultTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(r -> Collections.unmodifiableList(new ArrayList<>(r))).toList();
    }

    /** A table with nothing to say beside its figures. */
    public ResultTable(String name, String title, List<ResultColumn> columns, List<List<Object>> rows) {
        this(name, title, columns, rows, "", 0);
    }

    /** The table as it leaves the program: with a last column that says the watermark in every row, where there is one. */
    public ResultTable marked() {
        if (watermark.isEmpty()) {
            return this;
        }
        List<ResultColumn> all = new ArrayList<>(columns);
        all.add(new ResultColumn(STANDING, "Standing", "", ResultColumn.Type.TEXT, "Whether the figures may be submitted."));
        List<List<Object>> lines = rows.stream().map(this::marked).toList();
        return new ResultTable(name, title, all, lines, watermark, heads);
    }

    private List<Object> marked(List<Object> row) {
        List<Object> line = new ArrayList<>(row);
        line.add(watermark);
        return line;
    }

    /** Place of a column by its name. */
    public int column(String columnName) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name().equals(columnName)) {
                return i;
            }
        }
        throw new IllegalArgumentException("Table " + name + " has no column " + columnName);
    }

    /** A cell by row and name of the column. */
    public Object cell(int row, String columnName) {
        return rows.get(row).get(column(columnName));
    }
}
