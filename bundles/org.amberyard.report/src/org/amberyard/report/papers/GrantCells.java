package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;

/** Cells of the grant set as they are printed, found by the headings of their column and row; tables are made when they are asked for. */
final class GrantCells {
    private static final String PERCENT = "%";

    private final PaperInput in;
    private final Optional<String> programme;
    private final Map<GrantTable, List<DataTable>> made = new EnumMap<>(GrantTable.class);

    GrantCells(PaperInput in) {
        this.in = in;
        this.programme = ProjectMoney.of(in).payingProgramme();
    }

    /** The programme that is applied to, where it pays something. */
    Optional<String> programme() {
        return programme;
    }

    private Optional<DataTable> table(String name) {
        GrantTable of = GrantTable.of(name.replaceAll("[a-z]$", "")).orElseThrow();
        return made.computeIfAbsent(of, t -> t.of(in)).stream().filter(t -> t.name().equals(name)).findFirst();
    }

    private static Stream<DataTable.Row> lines(DataTable table) {
        return table.rows().stream().filter(r -> r.kind() == DataTable.Kind.LINE);
    }

    /** The column of a label, else the first whose label begins so. */
    private static int column(DataTable table, String label) {
        return column(table, label::equals).or(() -> column(table, l -> l.startsWith(label)))
                .orElseThrow(() -> new IllegalStateException(table.name() + " has no column " + label));
    }

    private static Optional<Integer> column(DataTable table, Predicate<String> label) {
        return IntStream.range(0, table.columns().size()).filter(c -> label.test(table.columns().get(c).label())).boxed().findFirst();
    }

    /** Number of lines of a table in which a column has some words. */
    Optional<PrintedFigure> count(String table, String column, Predicate<String> words) {
        return table(table).map(t -> plain(CellFormat.WHOLE.print(BigDecimal.valueOf(lines(t).filter(r -> words.test(t.printed(r, column(t,
                column)))).count())), t));
    }

    private static PrintedFigure plain(String number, DataTable table) {
        return new PrintedFigure(number, "", false, table.name(), table.mark());
    }

    /** What the row of totals has in a column. */
    Optional<PrintedFigure> total(String table, String column) {
        return table(table).flatMap(t -> t.rows().stream().filter(r -> r.kind() == DataTable.Kind.TOTAL).findFirst()
                .flatMap(r -> figure(t, r, column(t, column))));
    }

    /** What a column has in the line of which a column of words has some words, else in the first of which it begins so. */
    Optional<PrintedFigure> cell(String table, String words, String begins, String column) {
        return table(table).flatMap(t -> line(t, words, begins::equals).or(() -> line(t, words, w -> w.startsWith(begins)))
                .flatMap(r -> figure(t, r, column(t, column))));
    }

    private static Optional<DataTable.Row> line(DataTable table, String column, Predicate<String> words) {
        return lines(table).filter(r -> words.test(table.printed(r, column(table, column)))).findFirst();
    }

    /** The same where a second column of words has other words. */
    Optional<PrintedFigure> cell(String table, String begins, String secondWords, String second, String column) {
        return table(table).flatMap(t -> lines(t).filter(r -> t.printed(r, 0).startsWith(begins))
                .filter(r -> t.printed(r, column(t, secondWords)).equals(second)).findFirst().flatMap(r -> figure(t, r, column(t, column))));
    }

    /** A figure of a table that has a column of figures and one of their units. */
    Optional<PrintedFigure> valued(String table, String begins) {
        return table(table).flatMap(t -> lines(t).filter(r -> t.printed(r, 0).startsWith(begins)).findFirst()
                .filter(r -> r.cells().get(column(t, "Value")) instanceof BigDecimal)
                .map(r -> new PrintedFigure(t.printed(r, column(t, "Value")), t.printed(r, column(t, "Unit")), false, t.name(),
                        t.mark())));
    }

    /** What the last line has in a column. */
    Optional<PrintedFigure> last(String table, String column) {
        return table(table).flatMap(t -> lines(t).reduce((a, b) -> b).flatMap(r -> figure(t, r, column(t, column))));
    }

    /** The least figure of a column. */
    Optional<PrintedFigure> least(String table, String column) {
        return table(table).flatMap(t -> lines(t).filter(r -> r.cells().get(column(t, column)) instanceof BigDecimal)
                .min(Comparator.comparing(r -> (BigDecimal) r.cells().get(column(t, column)))).flatMap(r -> figure(t, r, column(t, column))));
    }

    /** A cell with its unit; a column of words and money says its currency in its label. */
    private Optional<PrintedFigure> figure(DataTable table, DataTable.Row row, int place) {
        DataTable.Column column = table.columns().get(place);
        Object cell = row.cells().get(place);
        if (cell == null || cell.toString().isEmpty()) {
            return Optional.empty();
        }
        String printed = table.printed(row, place);
        if (!(cell instanceof BigDecimal)) {
            return Optional.of(plain(printed, table));
        }
        if (column.format().kind() == CellFormat.Kind.PERCENT) {
            return Optional.of(new PrintedFigure(printed.replace(" %", ""), PERCENT, false, table.name(), table.mark()));
        }
        boolean money = column.unit().equals(in.currency()) || column.label().endsWith("(" + in.currency() + ")");
        return Optional.of(new PrintedFigure(printed, money ? in.currency() : column.unit(), money, table.name(), table.mark()));
    }
}
