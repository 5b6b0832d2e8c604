package org.amberyard.report.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A table as it is printed.
 *
 * @param name short name for sheets and files
 * @param title caption, with its number
 * @param columns columns
 * @param rows rows; figures are rounded as printed
 * @param notes footnotes: how it is rounded, where it comes from
 * @param mark what the table must say, such as that it is not for submission; empty when there is nothing to say
 */
public record DataTable(String name, String title, List<Column> columns, List<Row> rows, List<String> notes, String mark)
        implements Block {

    /** Note on columns that the study has no data for. */
    public static final String TO_FILL = "† To be filled in; the study does not hold it.";

    /** Columns that an upright page has room for. */
    private static final int MOST_UPRIGHT_COLUMNS = 7;
    /** Rows that fit on any page with the heads around them. */
    private static final int SHORT_ROWS = 20;

    /**
     * A column.
     *
     * @param label heading
     * @param unit unit of the figures; may be empty
     * @param format how cells are rounded and printed
     * @param toFill true when the study has no data for it and the applicant fills it in
     * @param width share of the table's width, in any unit
     */
    public record Column(String label, String unit, CellFormat format, boolean toFill, double width) {
        private static final int LONGEST_WHOLE_UNIT = 10;

        /** Heading as printed; no line parts a short unit. */
        public String heading() {
            String whole = unit.length() > LONGEST_WHOLE_UNIT ? unit : unit.replace(' ', '\u00A0');
            return label + (unit.isEmpty() ? "" : " (" + whole + ")") + (toFill ? "\u00A0†" : "");
        }

        /** Unit of figures for programs: shares are told in per cent. */
        String plainUnit() {
            return format.kind() == CellFormat.Kind.PERCENT ? "%" : unit;
        }

        /** A cell for programs: a figure in the unit of the column, words, or null where there is nothing. */
        Object plain(Object cell) {
            if (cell instanceof BigDecimal figure) {
                return format.plain(figure);
            }
            return cell == null || cell.toString().isEmpty() ? null : cell.toString();
        }
    }

    /** Kinds of rows. */
    public enum Kind {
        /** A line. */
        LINE,
        /** A heading of lines. */
        GROUP,
        /** A sum of the lines above. */
        TOTAL,
        /** A total reckoned in another way, below the sum that it proves. */
        CHECK
    }

    /**
     * A row.
     *
     * @param kind kind
     * @param cells words, {@link java.math.BigDecimal} for figures, null where there is none
     */
    public record Row(Kind kind, List<Object> cells) {
        public Row {
            cells = Collections.unmodifiableList(new ArrayList<>(cells));
        }
    }

    public DataTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** True for a table that needs pages in landscape. */
    public boolean isWide() {
        return columns.size() > MOST_UPRIGHT_COLUMNS;
    }

    /** True for a table so short that no page may part it. */
    boolean isShort() {
        return rows.size() <= SHORT_ROWS;
    }

    /** A cell as printed. */
    public String printed(Row row, int column) {
        return columns.get(column).format().print(row.cells().get(column));
    }
}
