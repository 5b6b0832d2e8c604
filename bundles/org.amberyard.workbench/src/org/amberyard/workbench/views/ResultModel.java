package org.amberyard.workbench.views;

import java.text.Collator;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.grid.PlainFigure;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.language.Words;

/** A table of results, or some of its columns, in the user's locale; its rows can be sorted by a column and filtered by words. */
public final class ResultModel implements GridModel {

    /** Columns of names that the user has given. */
    private static final Set<String> NAMES = Set.of("plan", "place", "unit", "old_bus", "new_bus", "route", "type", "trip", "scenario", "tariff",
            "financing", "other_place", "other_route", "worst_run", "input");

    private final ResultTable table;
    private final List<Integer> columns;
    private final List<String> headers;
    private final List<ColumnFormat> formats;
    private final List<Subject> subjects;
    private List<Integer> order;
    private List<Integer> shown;
    private String words = "";

    /**
     * What a row is about, the same in the table of other results.
     *
     * @param head cells of its head
     * @param which of the rows with such a head, counted from 1
     */
    private record Subject(List<Object> head, int which) {
    }

    /** All columns of a table. */
    public ResultModel(ResultTable table) {
        this(table, IntStream.range(0, table.columns().size()).boxed().toList(),
                table.columns().stream().map(c -> Words.say(c.header())).toList());
    }

    private ResultModel(ResultTable table, List<Integer> columns, List<String> headers) {
        this.table = table;
        this.columns = columns;
        this.headers = headers;
        this.formats = ColumnFormat.of(table, columns);
        this.subjects = subjects(table);
        this.order = IntStream.range(0, table.rows().size()).boxed().toList();
        this.shown = order;
    }

    private static List<Subject> subjects(ResultTable table) {
        Map<List<Object>, Integer> alike = new HashMap<>();
        List<Subject> subjects = new ArrayList<>();
        for (List<Object> row : table.rows()) {
            List<Object> head = row.subList(0, Math.max(1, table.heads()));
            subjects.add(new Subject(head, alike.merge(head, 1, Integer::sum)));
        }
        return subjects;
    }

    /** Place in the table of a row that is shown. */
    int row(int shownRow) {
        return shown.get(shownRow);
    }

    /** Row in which a row of the table is shown; -1 where a filter leaves it out. */
    int shownRow(int row) {
        return shown.indexOf(row);
    }

    /** Place in the table of a column that is shown. */
    int source(int shownColumn) {
        return columns.get(shownColumn);
    }

    /** Shows the rows only in which all words stand, each in any of their cells; all rows for no words. */
    void filter(String search) {
        words = search;
        RowWords wanted = new RowWords(search);
        shown = order.stream().filter(row -> wanted.in(headers, () -> IntStream.range(0, columns.size()).mapToObj(c -> cell(row, c)))).toList();
    }

    @Override
    public boolean isSortable() {
        return true;
    }

    /** Figures by size, texts by the rules of the locale; cells without a value come last. */
    @Override
    public void sort(int column, boolean ascending) {
        Collator texts = Collator.getInstance();
        Comparator<Object> values = (a, b) -> a instanceof Number one && b instanceof Number other
                ? Double.compare(one.doubleValue(), other.doubleValue()) : texts.compare(a.toString(), b.toString());
        Comparator<Object> directed = ascending ? values : values.reversed();
        order = IntStream.range(0, table.rows().size()).boxed()
                .sorted(Comparator.comparing((Integer row) -> value(row, column), Comparator.nullsLast(directed))).toList();
        filter(words);
    }

    private Object value(int row, int column) {
        Object cell = table.rows().get(row).get(columns.get(column));
        return cell instanceof String text && text.isEmpty() ? null : cell;
    }

    /** Some columns under other labels, by the columns' names. */
    static ResultModel of(ResultTable table, Map<String, String> labels) {
        List<Integer> columns = labels.keySet().stream().map(table::column).sorted().toList();
        List<String> headers = columns.stream().map(table.columns()::get)
                .map(c -> labels.get(c.name()) + (c.unit().isEmpty() ? "" : " (" + c.unit() + ")")).toList();
        return new ResultModel(table, columns, headers);
    }

    /** Words of the program, which have another language, and not names that the user has given. */
    private static boolean isVocabulary(ResultColumn column) {
        return column.type() == ResultColumn.Type.TEXT && !NAMES.contains(column.name());
    }

    private ResultColumn column(int column) {
        return table.columns().get(columns.get(column));
    }

    @Override
    public int rows() {
        return shown.size();
    }

    @Override
    public int columns() {
        return columns.size();
    }

    @Override
    public String header(int column) {
        return headers.get(column);
    }

    @Override
    public String columnName(int column) {
        return column(column).name();
    }

    @Override
    public String headerTip(int column) {
        return Words.say(column(column).meaning());
    }

    @Override
    public String text(int row, int column) {
        return cell(row(row), column);
    }

    private String cell(int row, int column) {
        Object cell = table.rows().get(row).get(columns.get(column));
        if (cell instanceof Double number) {
            return formats.get(column).text(number).replace('-', '−');
        }
        return cell == null ? "" : isVocabulary(column(column)) ? Words.say(cell.toString())
                : column(column).type() == ResultColumn.Type.FIGURE ? Words.figure(cell.toString()) : cell.toString();
    }

    @Override
    public String fullText(int row, int column) {
        Object cell = table.rows().get(row(row)).get(columns.get(column));
        return cell instanceof Double number ? fullFormat().format(number)
                : column(column).type() == ResultColumn.Type.FIGURE ? text(row, column).replace('−', '-') : text(row, column);
    }

    /** As it is shown: forms want figures as they stand in the table, not all that the program knows of them. */
    @Override
    public String plainText(int row, int column) {
        return isFigure(row, column) ? PlainFigure.of(text(row, column)) : text(row, column);
    }

    private static NumberFormat fullFormat() {
        NumberFormat format = NumberFormat.getNumberInstance();
        format.setMaximumFractionDigits(9);
        return format;
    }

    @Override
    public Object subject(int row, int column) {
        return subjects.get(row(row));
    }

    @Override
    public boolean isFigure(int row, int column) {
        return column(column).type() != ResultColumn.Type.TEXT;
    }

    @Override
    public int frozenColumns() {
        return table.heads() > 0 ? table.heads() : columns.size() > 2 ? 1 : 0;
    }
}
