package org.amberyard.workbench.compare;

import java.text.NumberFormat;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.look.Palette;
import org.eclipse.osgi.util.NLS;

/** What is compared as a table: a row for each figure or input, a column for each plan or study; what differs from the first is tinted. */
final class CompareModel implements GridModel {

    /** Columns before those that are compared. */
    static final int LABELS = 2;
    private static final int READABLE_DIGITS = 3;
    private static final int FULL_DIGITS = 9;
    private static final CellLook OTHER = new CellLook(Palette.AMBER_WASH, Palette.INK, null);

    private final Compared compared;
    private final List<Compared.Row> rows;

    /**
     * A table of some of the rows.
     *
     * @param onlyDifferent leaves out rows in which all are the same
     * @param search words that must stand in a row
     */
    CompareModel(Compared compared, boolean onlyDifferent, String search) {
        this.compared = compared;
        RowWords words = new RowWords(search);
        List<String> headers = IntStream.range(0, columns()).mapToObj(this::header).toList();
        this.rows = compared.rows().stream().filter(r -> !onlyDifferent || r.differs())
                .filter(r -> words.in(headers, () -> texts(r))).toList();
    }

    private static Stream<String> texts(Compared.Row row) {
        return Stream.concat(Stream.of(row.section(), row.figure()), row.values().stream().map(v -> text(v, decimals(row))));
    }

    @Override
    public int rows() {
        return rows.size();
    }

    @Override
    public int columns() {
        return LABELS + compared.columns().size();
    }

    @Override
    public String header(int column) {
        return switch (column) {
            case 0 -> compared.sectionLabel();
            case 1 -> compared.figureLabel();
            default -> compared.columns().get(column - LABELS);
        };
    }

    @Override
    public String text(int row, int column) {
        Compared.Row of = rows.get(row);
        return switch (column) {
            case 0 -> of.section();
            case 1 -> of.unit().isEmpty() ? of.figure() : NLS.bind(Messages.Compare_unit, of.figure(), of.unit());
            default -> text(of.values().get(column - LABELS), decimals(of));
        };
    }

    /** As many decimals as the largest value of the row needs, so that its values can be set against each other. */
    private static int decimals(Compared.Row row) {
        double largest = row.values().stream().filter(Double.class::isInstance).mapToDouble(v -> Math.abs((Double) v))
                .filter(Double::isFinite).max().orElse(0);
        return Math.max(0, READABLE_DIGITS - 1 - (int) Math.floor(Math.log10(Math.max(1, largest))));
    }

    private static String text(Object value, int decimals) {
        if (value instanceof Double number) {
            NumberFormat format = NumberFormat.getNumberInstance();
            format.setMinimumFractionDigits(Math.min(decimals, READABLE_DIGITS));
            format.setMaximumFractionDigits(decimals);
            return format.format(number).replace('-', '−');
        }
        return value == null ? "" : value.toString();
    }

    @Override
    public String fullText(int row, int column) {
        boolean label = column < LABELS;
        Object value = label ? null : rows.get(row).values().get(column - LABELS);
        if (value instanceof Double number) {
            NumberFormat format = NumberFormat.getNumberInstance();
            format.setMaximumFractionDigits(FULL_DIGITS);
            return format.format(number);
        }
        return text(row, column);
    }

    private boolean isOther(int row, int column) {
        List<Object> values = rows.get(row).values();
        return column > LABELS && !Objects.equals(values.get(column - LABELS), values.get(0));
    }

    /** How far a figure is from that of the first. */
    @Override
    public String tip(int row, int column) {
        if (!isOther(row, column)) {
            return "";
        }
        Compared.Row of = rows.get(row);
        Object value = of.values().get(column - LABELS);
        if (value instanceof Number number && of.values().get(0) instanceof Number first) {
            double change = number.doubleValue() - first.doubleValue();
            return NLS.bind(change > 0 ? Messages.Compare_above : Messages.Compare_below,
                    text(Math.abs(change), decimals(of)) + (of.unit().isEmpty() ? "" : " " + of.unit()), compared.columns().get(0));
        }
        return NLS.bind(Messages.Compare_other, compared.columns().get(0));
    }

    @Override
    public String words(int row, int column) {
        String tip = tip(row, column);
        return text(row, 1) + ", " + header(column) + ": " + text(row, column) + (tip.isEmpty() ? "" : ". " + tip);
    }

    @Override
    public CellLook look(int row, int column) {
        return column < LABELS ? CellLook.LABEL : isOther(row, column) ? OTHER : CellLook.PLAIN;
    }

    @Override
    public Object subject(int row, int column) {
        return List.of(rows.get(row).section(), rows.get(row).figure());
    }

    @Override
    public boolean isFigure(int row, int column) {
        return column >= LABELS && rows.get(row).values().get(column - LABELS) instanceof Number;
    }

    @Override
    public int frozenColumns() {
        return LABELS;
    }
}
