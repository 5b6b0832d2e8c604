package org.amberyard.workbench.columns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.workbench.grid.Blocks;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.CellRefusal;
import org.amberyard.workbench.grid.GridModel;

/** A table whose columns the user has chosen and ordered; what it shows, and what is entered, is that of another model. */
public final class ArrangedModel implements GridModel {

    private final GridModel model;
    private final ColumnMemory memory;
    private ColumnArrangement arrangement;
    private List<String> names = List.of();
    private int[] sources = {};

    /**
     * A table as the user has left it.
     *
     * @param table name of the table, the same at every start
     */
    public ArrangedModel(GridModel model, String table) {
        this.model = model;
        memory = new ColumnMemory(table);
        arrangement = memory.recall();
        fit();
    }

    private void fit() {
        names = names(model);
        arrangement = arrangement.fitted(names);
        sources = arrangement.shown().stream().mapToInt(names::indexOf).toArray();
    }

    private static List<String> names(GridModel model) {
        return IntStream.range(0, model.columns()).mapToObj(model::columnName).toList();
    }

    private int[] sources() {
        if (model.columns() != names.size()) {
            fit();
        }
        return sources;
    }

    /** How the columns are arranged now. */
    public ColumnArrangement arrangement() {
        return arrangement;
    }

    /** How they are arranged as long as the user has not said otherwise. */
    ColumnArrangement natural() {
        return ColumnArrangement.NATURAL.fitted(names);
    }

    /** Arranges the columns otherwise, and keeps it. */
    public void arrange(ColumnArrangement next) {
        arrangement = next;
        fit();
        memory.keep(arrangement);
    }

    /** Brings all columns back to how the table is by itself. */
    public void reset() {
        arrangement = ColumnArrangement.NATURAL;
        fit();
        memory.forget();
    }

    /** Header of a column by its name. */
    public String headerOf(String name) {
        return model.header(names.indexOf(name));
    }

    /** Column of the other model that is shown in a place. */
    public int source(int column) {
        return sources()[column];
    }

    /** Place of a column of the other model; one that was hidden is shown again. */
    public int reveal(int source) {
        String name = model.columnName(source);
        if (arrangement.hidden().contains(name)) {
            arrange(arrangement.show(name));
        }
        return arrangement.shown().indexOf(name);
    }

    @Override
    public int rows() {
        return model.rows();
    }

    @Override
    public int columns() {
        return sources().length;
    }

    @Override
    public String columnName(int column) {
        return model.columnName(source(column));
    }

    @Override
    public String header(int column) {
        return model.header(source(column));
    }

    @Override
    public String headerTip(int column) {
        return model.headerTip(source(column));
    }

    @Override
    public String text(int row, int column) {
        return model.text(row, source(column));
    }

    @Override
    public String fullText(int row, int column) {
        return model.fullText(row, source(column));
    }

    @Override
    public String plainText(int row, int column) {
        return model.plainText(row, source(column));
    }

    @Override
    public String tip(int row, int column) {
        return model.tip(row, source(column));
    }

    @Override
    public String note(int row, int column) {
        return model.note(row, source(column));
    }

    @Override
    public boolean isFigure(int row, int column) {
        return model.isFigure(row, source(column));
    }

    @Override
    public boolean isLabel(int row, int column) {
        return model.isLabel(row, source(column));
    }

    @Override
    public int frozenColumns() {
        int own = arrangement.frozen() < 0 ? model.frozenColumns() : arrangement.frozen();
        return Math.min(own, columns());
    }

    @Override
    public CellLook look(int row, int column) {
        return model.look(row, source(column));
    }

    @Override
    public String words(int row, int column) {
        return model.words(row, source(column));
    }

    @Override
    public Optional<CellMark> mark(int row, int column) {
        return model.mark(row, source(column));
    }

    @Override
    public boolean isEditable(int row, int column) {
        return model.isEditable(row, source(column));
    }

    @Override
    public Object subject(int row, int column) {
        return model.subject(row, source(column));
    }

    @Override
    public List<String> choices(int row, int column) {
        return model.choices(row, source(column));
    }

    @Override
    public List<String> commonChoices(int column) {
        return model.commonChoices(source(column));
    }

    @Override
    public boolean hasEntryRow() {
        return model.hasEntryRow();
    }

    /** Texts go to the columns on show; those between them in the other model stay as they are. */
    @Override
    public List<CellRefusal> put(int row, int column, List<List<String>> block) throws CellRefusal {
        Blocks.checkFits(this, row, column, block);
        int width = block.stream().mapToInt(List::size).max().orElse(0);
        int[] touched = Arrays.copyOfRange(sources(), column, column + width);
        int left = Arrays.stream(touched).min().orElse(0);
        int right = Arrays.stream(touched).max().orElse(0);
        List<List<String>> spread = new ArrayList<>();
        for (List<String> line : block) {
            String[] texts = new String[right - left + 1];
            IntStream.range(0, line.size()).forEach(i -> texts[touched[i] - left] = line.get(i));
            spread.add(Arrays.asList(texts));
        }
        try {
            return model.put(row, left, spread).stream().map(this::here).toList();
        } catch (CellRefusal refusal) {
            throw here(refusal);
        }
    }

    private CellRefusal here(CellRefusal refusal) {
        return refusal.inColumn(Math.max(0, place(refusal.column())));
    }

    private int place(int source) {
        return IntStream.range(0, columns()).filter(c -> sources[c] == source).findFirst().orElse(-1);
    }

    @Override
    public void clear(int top, int bottom, List<Integer> columns) {
        model.clear(top, bottom, columns.stream().map(this::source).toList());
    }

    @Override
    public int headerLines() {
        return model.headerLines();
    }

    @Override
    public boolean stretchesLast() {
        return model.stretchesLast();
    }

    @Override
    public void sort(int column, boolean ascending) {
        model.sort(source(column), ascending);
    }

    @Override
    public boolean isSortable() {
        return model.isSortable();
    }
}
