package org.amberyard.report.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A long table as paper has it: what stands in every row, and long words that rows repeat, are said once below it, so that no
 * figure and no word is lost and a row takes a line. Columns in which nothing stands are named below it too.
 */
final class CondensedTable {
    /** Words that no column has room for on a line; a column without such words keeps all of its own. */
    private static final int LONGEST_WORDS = 45;
    /** Words as long as this fit into a cell beside others; longer ones take several lines. */
    private static final int LONG_WORDS = 28;
    /** Words that make a row of several lines in any column, so that a note is shorter even where nothing repeats them. */
    private static final int SENTENCE = 90;
    /** Rows that there must be for each note, so that fewer lines are taken than with words in cells. */
    private static final double ROWS_A_NOTE = 1.5;
    private static final double NUMBER_WIDTH = 0.5;
    private static final double LABEL_WIDTH = 3;

    private final DataTable table;
    private final boolean allColumns;
    private final List<DataTable.Column> columns = new ArrayList<>();
    private final List<List<Object>> cells = new ArrayList<>();
    private final List<String> shared = new ArrayList<>();
    private final List<String> empty = new ArrayList<>();
    private final List<String> numbered = new ArrayList<>();
    private int numbers;

    /** @param allColumns true where each column stays, whatever stands in it */
    private CondensedTable(DataTable table, boolean allColumns) {
        this.table = table;
        this.allColumns = allColumns;
    }

    /** A table that keeps all its columns and rows; only long words that rows repeat are said once below it. */
    static DataTable cited(DataTable table) {
        return new CondensedTable(table, true).made();
    }

    static DataTable of(DataTable table) {
        if (table.rows().stream().anyMatch(r -> r.kind() != DataTable.Kind.LINE)) {
            return table;
        }
        return table.rows().size() == 1 ? turned(table) : new CondensedTable(table, false).made();
    }

    /** The one row of a table as a list of its columns. */
    private static DataTable turned(DataTable table) {
        DataTable.Row row = table.rows().get(0);
        List<DataTable.Row> rows = IntStream.range(0, table.columns().size()).mapToObj(c -> new DataTable.Row(DataTable.Kind.LINE, List.of(
                table.columns().get(c).heading(), table.printed(row, c)))).toList();
        return new DataTable(table.name(), table.title(), List.of(new DataTable.Column("Figure", "", CellFormat.TEXT, false, LABEL_WIDTH),
                new DataTable.Column("Value", "", CellFormat.TEXT, false, 1)), rows, table.notes(), table.mark());
    }

    private DataTable made() {
        for (int column = 0; column < table.columns().size(); column++) {
            add(column);
        }
        if (columns.isEmpty()) {
            return table;
        }
        List<DataTable.Row> rows = IntStream.range(0, table.rows().size()).mapToObj(r -> new DataTable.Row(table.rows().get(r).kind(),
                cells.stream().map(c -> c.get(r)).collect(Collectors.toCollection(ArrayList::new)))).toList();
        return new DataTable(table.name(), table.title(), columns, rows, notes(), table.mark());
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!shared.isEmpty()) {
            notes.add("In every row: " + String.join("; ", shared) + ".");
        }
        if (!empty.isEmpty()) {
            notes.add("Nothing stands in: " + String.join("; ", empty) + ".");
        }
        notes.addAll(table.notes());
        notes.addAll(numbered);
        return notes;
    }

    private void add(int column) {
        DataTable.Column of = table.columns().get(column);
        List<Object> all = table.rows().stream().map(r -> r.cells().get(column)).collect(Collectors.toCollection(ArrayList::new));
        boolean mayGo = !allColumns && !of.toFill();
        OptionalInt notedFrom = notedFrom(all);
        if (mayGo && all.stream().allMatch(CondensedTable::isEmpty)) {
            empty.add(of.heading());
        } else if (mayGo && all.stream().distinct().count() == 1) {
            shared.add(of.heading() + " " + table.printed(table.rows().get(0), column));
        } else if (notedFrom.isPresent()) {
            boolean narrow = notedFrom.getAsInt() == LONG_WORDS;
            columns.add(narrow ? new DataTable.Column(of.label(), of.unit(), of.format(), false, NUMBER_WIDTH) : of);
            cells.add(numbered(of, all, notedFrom.getAsInt()));
        } else {
            columns.add(of);
            cells.add(all);
        }
    }

    private static boolean isEmpty(Object cell) {
        return cell == null || cell.toString().isEmpty();
    }

    /** Length above which words of a column become notes: of long ones that rows repeat, or else of sentences in few of many rows; empty for none. */
    private OptionalInt notedFrom(List<Object> all) {
        List<String> words = longerThan(LONG_WORDS, all);
        if (words.stream().anyMatch(w -> w.length() > LONGEST_WORDS) && words.size() >= ROWS_A_NOTE * words.stream().distinct().count()) {
            return OptionalInt.of(LONG_WORDS);
        }
        List<String> sentences = longerThan(SENTENCE, all);
        boolean few = all.size() >= ROWS_A_NOTE * sentences.stream().distinct().count();
        return !allColumns && few && !sentences.isEmpty() ? OptionalInt.of(SENTENCE) : OptionalInt.empty();
    }

    private static List<String> longerThan(int length, List<Object> all) {
        return all.stream().filter(c -> c instanceof String words && words.length() > length).map(Object::toString).toList();
    }

    /** Words above a length as the numbers of their notes; shorter ones stay. */
    private List<Object> numbered(DataTable.Column column, List<Object> all, int from) {
        Map<String, String> known = new LinkedHashMap<>();
        List<Object> found = new ArrayList<>();
        for (Object cell : all) {
            boolean isNoted = cell instanceof String words && words.length() > from;
            found.add(isNoted ? known.computeIfAbsent(cell.toString(), w -> note(column, w)) : cell);
        }
        return found;
    }

    private String note(DataTable.Column column, String words) {
        String number = "[" + ++numbers + "]";
        numbered.add(number + " " + column.label() + ": " + words);
        return number;
    }
}
