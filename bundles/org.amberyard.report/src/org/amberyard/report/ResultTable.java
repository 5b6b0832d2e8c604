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
 */
public record ResultTable(String name, String title, List<ResultColumn> columns, List<List<Object>> rows) {

    public ResultTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(r -> Collections.unmodifiableList(new ArrayList<>(r))).toList();
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
