package org.amberyard.report.document;

import java.util.Arrays;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Widths of the columns of a table on paper. A column is never narrower than its longest word or figure; what is left of the
 * page goes to columns with more to say. A table that needs more than the page gets smaller letters.
 */
final class ColumnWidths {
    private static final double CHARACTER_POINTS = 4.7;
    private static final double PADDING_POINTS = 9;
    private static final int LONGEST_WORD = 20;
    /** Words that a column of width 1 would like to have on a line. */
    private static final int CHARACTERS_PER_PART = 14;
    /** Lines that a heading may take. */
    private static final int HEADING_LINES = 3;

    private final DataTable table;

    ColumnWidths(DataTable table) {
        this.table = table;
    }

    /** True when the table needs smaller letters. */
    boolean dense(double textPoints) {
        return IntStream.range(0, table.columns().size()).mapToDouble(c -> points(least(c))).sum() > textPoints;
    }

    /** Shares of the width; together 1. */
    double[] shares(double textPoints) {
        int columns = table.columns().size();
        double[] least = IntStream.range(0, columns).mapToDouble(c -> points(least(c))).toArray();
        double[] wanted = IntStream.range(0, columns).mapToDouble(c -> points(Math.max(least(c), wanted(c)))).toArray();
        double spare = textPoints - Arrays.stream(least).sum();
        double asked = Arrays.stream(wanted).sum() - Arrays.stream(least).sum();
        double granted = asked <= 0 ? 0 : Math.min(1, Math.max(0, spare) / asked);
        double[] widths = IntStream.range(0, columns).mapToDouble(c -> least[c] + granted * (wanted[c] - least[c])).toArray();
        double all = Arrays.stream(widths).sum();
        return Arrays.stream(widths).map(w -> w / all).toArray();
    }

    /** Characters of a column on one line, for a spreadsheet. */
    int characters(int column) {
        return Math.max(least(column), wanted(column));
    }

    private static double points(int characters) {
        return characters * CHARACTER_POINTS + PADDING_POINTS;
    }

    private int least(int column) {
        int heading = longestWord(table.columns().get(column).heading());
        ToIntFunction<String> length = table.columns().get(column).format().right() ? String::length : ColumnWidths::longestWord;
        return Math.min(LONGEST_WORD, Math.max(heading, cells(column).mapToInt(length).max().orElse(0)));
    }

    private int wanted(int column) {
        DataTable.Column of = table.columns().get(column);
        int most = (int) (of.width() * CHARACTERS_PER_PART);
        int heading = of.heading().length() / HEADING_LINES;
        return of.toFill() ? most : Math.max(heading, Math.min(most, cells(column).mapToInt(String::length).max().orElse(0)));
    }

    private Stream<String> cells(int column) {
        return table.rows().stream().filter(r -> r.kind() != DataTable.Kind.GROUP).map(r -> table.printed(r, column));
    }

    private static int longestWord(String text) {
        return Arrays.stream(text.split("\\s+")).mapToInt(String::length).max().orElse(0);
    }
}
