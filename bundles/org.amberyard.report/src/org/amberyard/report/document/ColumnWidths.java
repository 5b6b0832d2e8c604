package org.amberyard.report.document;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Widths of the columns of a table on paper. A column is never narrower than its longest word or figure; what is left of the
 * page goes to columns with more to say. A table that needs more than the page gets smaller letters.
 */
final class ColumnWidths {
    /** Letters that a column has room for in any case. */
    static final int LONGEST_WORD = 20;
    /** Letters that a column of width 1 would like to have on a line. */
    static final int LETTERS_PER_PART = 14;
    /** Lines that a heading may take. */
    private static final int HEADING_LINES = 3;
    /** Bold letters of headings are wider. */
    private static final double BOLD = 1.08;

    private final DataTable table;
    private final RowSetting setting;

    ColumnWidths(DataTable table, RowSetting setting) {
        this.table = table;
        this.setting = setting;
    }

    /** Those of a table on a page, in smaller letters where it has no room for it otherwise. */
    static ColumnWidths on(DataTable table, RowSetting setting, double textPoints) {
        ColumnWidths widths = new ColumnWidths(table, setting);
        return widths.fit(textPoints) ? widths : new ColumnWidths(table, RowSetting.DENSE);
    }

    /** How rows are set. */
    RowSetting setting() {
        return setting;
    }

    /** True when a page has room for the table. */
    boolean fit(double textPoints) {
        return Arrays.stream(of(this::least)).sum() <= textPoints;
    }

    /** Shares of the width; together 1. */
    double[] shares(double textPoints) {
        double[] widths = widths(textPoints);
        double all = Arrays.stream(widths).sum();
        return Arrays.stream(widths).map(w -> w / all).toArray();
    }

    /** Each column first gets what it needs, then what it would like, then what its longest words would take on one line. */
    private double[] widths(double textPoints) {
        double[] liked = grown(of(this::least), of(this::wanted), textPoints);
        return grown(liked, of(this::longest), textPoints);
    }

    private double[] of(IntToDoubleFunction points) {
        return IntStream.range(0, table.columns().size()).mapToDouble(points).toArray();
    }

    /** Widths on their way to others, as far as the page allows. */
    private static double[] grown(double[] from, double[] to, double textPoints) {
        double spare = Math.max(0, textPoints - Arrays.stream(from).sum());
        double asked = IntStream.range(0, from.length).mapToDouble(c -> Math.max(0, to[c] - from[c])).sum();
        double granted = asked <= 0 ? 0 : Math.min(1, spare / asked);
        return IntStream.range(0, from.length).mapToDouble(c -> from[c] + granted * Math.max(0, to[c] - from[c])).toArray();
    }

    /** Lines of all rows on a page of a width, about. */
    int lines(double textPoints) {
        double[] shares = shares(textPoints);
        return table.rows().stream().mapToInt(r -> IntStream.range(0, shares.length).map(c -> setting.lines(table.printed(r, c),
                shares[c] * textPoints)).max().orElse(1)).sum();
    }

    private double least(int column) {
        double heading = BOLD * longestWord(table.columns().get(column).heading());
        ToDoubleFunction<String> width = table.columns().get(column).format().right() ? setting::points : this::longestWord;
        return Math.min(setting.points(LONGEST_WORD), Math.max(heading, cells(column).mapToDouble(width).max().orElse(0)));
    }

    private double wanted(int column) {
        DataTable.Column of = table.columns().get(column);
        double most = setting.points((int) (of.width() * LETTERS_PER_PART));
        double heading = BOLD * setting.points(of.heading()) / HEADING_LINES;
        return of.toFill() ? most : Math.max(heading, Math.min(most, longest(column)));
    }

    private double longest(int column) {
        return table.columns().get(column).toFill() ? 0 : cells(column).mapToDouble(setting::points).max().orElse(0);
    }

    private Stream<String> cells(int column) {
        return cells(table, column);
    }

    /** What stands in a column, without words over the whole width. */
    static Stream<String> cells(DataTable table, int column) {
        return table.rows().stream().filter(r -> r.kind() != DataTable.Kind.GROUP).map(r -> table.printed(r, column));
    }

    private double longestWord(String text) {
        return longestWord(text, setting::points);
    }

    /** Width of the widest word of a text, by a measure of words. */
    static double longestWord(String text, ToDoubleFunction<String> width) {
        return Arrays.stream(text.split("\\s+")).mapToDouble(width).max().orElse(0);
    }
}
