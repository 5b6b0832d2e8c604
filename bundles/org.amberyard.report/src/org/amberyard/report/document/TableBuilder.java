package org.amberyard.report.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Makes a table of a document from any rows.
 *
 * @param <R> what a row is made from
 */
public final class TableBuilder<R> {
    /** How lines and totals are rounded where nothing else is said. */
    public static final String ADDS_UP = "Totals are rounded once from unrounded figures; lines are rounded so that they add up "
            + "to them (largest remainder), each within one unit of the last digit.";
    private static final double WIDE = 2;

    private final String name;
    private final String title;
    private final List<Spec<R>> columns = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private String mark = "";
    private String sumNote = ADDS_UP;
    private String checkWords = "";

    /**
     * A column and how it is filled; summed columns have a total.
     *
     * @param across number of columns before it of which it is the printed sum; zero where it is filled from rows
     * @param check what its total comes to in another way; empty where it is not checked
     */
    private record Spec<R>(DataTable.Column column, Function<R, Object> cell, boolean sum, int across, OptionalDouble check) {
    }

    /**
     * @param name short name for sheets and files
     * @param title caption, with its number
     */
    public TableBuilder(String name, String title) {
        this.name = name;
        this.title = title;
    }

    /** Words. */
    public TableBuilder<R> text(String label, Function<R, String> words) {
        return text(label, WIDE, words);
    }

    /** Words in a column of a width, in parts. */
    public TableBuilder<R> text(String label, double width, Function<R, String> words) {
        return add(new DataTable.Column(label, "", CellFormat.TEXT, false, width), words::apply, false);
    }

    /** Words, or figures as they are given, in a column of a width, in parts. */
    public TableBuilder<R> value(String label, double width, Function<R, Object> value) {
        return add(new DataTable.Column(label, "", CellFormat.VALUE, false, width), value, false);
    }

    /** A column that the applicant fills in. */
    public TableBuilder<R> toFill(String label) {
        return toFill(label, 1);
    }

    /** The same of a width, in parts. */
    public TableBuilder<R> toFill(String label, double width) {
        return add(new DataTable.Column(label, "", CellFormat.TEXT, true, width), r -> "", false);
    }

    /** Calendar years; no figure where there is none. */
    public TableBuilder<R> year(String label, Function<R, OptionalInt> year) {
        return add(new DataTable.Column(label, "", CellFormat.YEAR, false, 1),
                r -> year.apply(r).isPresent() ? BigDecimal.valueOf(year.apply(r).getAsInt()) : null, false);
    }

    /** Figures. */
    public TableBuilder<R> number(String label, String unit, CellFormat format, ToDoubleFunction<R> figure) {
        return optional(label, unit, format, r -> OptionalDouble.of(figure.applyAsDouble(r)));
    }

    /** Figures that may be missing. */
    public TableBuilder<R> optional(String label, String unit, CellFormat format, Function<R, OptionalDouble> figure) {
        return add(new DataTable.Column(label, unit, format, false, 1), r -> rounded(format, figure.apply(r)), false);
    }

    /** Figures that add up to a total. */
    public TableBuilder<R> sum(String label, String unit, CellFormat format, ToDoubleFunction<R> figure) {
        return add(new DataTable.Column(label, unit, format, false, 1), r -> figure.applyAsDouble(r), true);
    }

    /** Figures that may be missing, each rounded by a format of its row; the column's own format is the finest of them. */
    public TableBuilder<R> mixed(String label, String unit, CellFormat finest, Function<R, CellFormat> format,
            Function<R, OptionalDouble> figure) {
        return add(new DataTable.Column(label, unit, finest, false, 1), r -> rounded(format.apply(r), figure.apply(r)), false);
    }

    /** Sums of what is printed in the summed columns before it; none where a figure of its row is missing. */
    public TableBuilder<R> across(String label, String unit, CellFormat format, int summed) {
        columns.add(new Spec<>(new DataTable.Column(label, unit, format, false, 1), r -> null, true, summed, OptionalDouble.empty()));
        return this;
    }

    /** Figures that add up to a total, which {@code check} tells once more. */
    public TableBuilder<R> checkedSum(String label, String unit, CellFormat format, ToDoubleFunction<R> figure, double check) {
        columns.add(new Spec<>(new DataTable.Column(label, unit, format, false, 1), figure::applyAsDouble, true, 0,
                OptionalDouble.of(check)));
        return this;
    }

    private TableBuilder<R> add(DataTable.Column column, Function<R, Object> cell, boolean sum) {
        columns.add(new Spec<>(column, cell, sum, 0, OptionalDouble.empty()));
        return this;
    }

    private static Object rounded(CellFormat format, OptionalDouble figure) {
        return figure.isPresent() && Double.isFinite(figure.getAsDouble()) ? format.rounded(figure.getAsDouble()) : null;
    }

    /** A footnote. */
    public TableBuilder<R> note(String note) {
        notes.add(note);
        return this;
    }

    /** How sums come about, in place of the standard footnote; empty for none. */
    public TableBuilder<R> sums(String how) {
        sumNote = how;
        return this;
    }

    /** A row below the totals that begins with words and holds, to the cent, what checked columns come to in another way. */
    public TableBuilder<R> check(String words) {
        checkWords = words;
        return this;
    }

    /** What the table must say on placeholders; empty when there is nothing to say. */
    public TableBuilder<R> mark(String words) {
        mark = words;
        return this;
    }

    /** The table; with a row of totals where a column has one and there is more than one line. */
    public DataTable of(List<R> rows) {
        List<List<Object>> byColumn = new ArrayList<>();
        columns.forEach(c -> byColumn.add(c.across() == 0 ? cells(c, rows)
                : across(byColumn.subList(byColumn.size() - c.across(), byColumn.size()), rows.size())));
        List<DataTable.Row> lines = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            int at = row;
            lines.add(new DataTable.Row(DataTable.Kind.LINE, columnwise(byColumn, at)));
        }
        boolean totalled = columns.stream().anyMatch(Spec::sum) && !rows.isEmpty();
        if (totalled) {
            lines.add(new DataTable.Row(DataTable.Kind.TOTAL, totals(byColumn)));
        }
        if (totalled && !checkWords.isEmpty()) {
            lines.add(new DataTable.Row(DataTable.Kind.CHECK, checks()));
        }
        return new DataTable(name, title, columns.stream().map(Spec::column).toList(), lines, allNotes(totalled), mark);
    }

    private static List<Object> across(List<List<Object>> summed, int rows) {
        List<Object> cells = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            cells.add(total(columnwise(summed, row)).orElse(null));
        }
        return cells;
    }

    private static List<Object> columnwise(List<List<Object>> byColumn, int row) {
        List<Object> cells = new ArrayList<>();
        byColumn.forEach(c -> cells.add(c.get(row)));
        return cells;
    }

    private List<Object> cells(Spec<R> spec, List<R> rows) {
        List<Object> raw = new ArrayList<>();
        rows.forEach(r -> raw.add(spec.cell().apply(r)));
        return spec.sum() ? addingUp(raw, spec.column().format()) : raw;
    }

    /** A figure that is not known leaves the others to be rounded by themselves: there is no total to add up to. */
    private static List<Object> addingUp(List<Object> raw, CellFormat format) {
        List<Double> figures = raw.stream().map(Double.class::cast).toList();
        if (figures.stream().allMatch(Double::isFinite)) {
            return new ArrayList<>(format.addingUp(figures));
        }
        List<Object> each = new ArrayList<>();
        figures.forEach(f -> each.add(rounded(format, OptionalDouble.of(f))));
        return each;
    }

    private List<Object> totals(List<List<Object>> byColumn) {
        List<Object> totals = new ArrayList<>(Collections.nCopies(columns.size(), (Object) ""));
        for (int i = 0; i < columns.size(); i++) {
            totals.set(i, columns.get(i).sum() ? total(byColumn.get(i)).orElse(null) : "");
        }
        totals.set(0, "Total");
        return totals;
    }

    private List<Object> checks() {
        List<Object> cells = new ArrayList<>();
        columns.forEach(c -> cells.add(c.check().isPresent() ? rounded(CellFormat.CENTS, c.check()) : ""));
        cells.set(0, checkWords);
        return cells;
    }

    private static Optional<Object> total(List<Object> cells) {
        return cells.contains(null) ? Optional.empty()
                : Optional.of(cells.stream().map(BigDecimal.class::cast).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private List<String> allNotes(boolean totalled) {
        List<String> all = new ArrayList<>();
        if (columns.stream().anyMatch(c -> c.column().toFill())) {
            all.add(DataTable.TO_FILL);
        }
        all.addAll(notes);
        if (totalled && !sumNote.isEmpty()) {
            all.add(sumNote);
        }
        return all;
    }
}
