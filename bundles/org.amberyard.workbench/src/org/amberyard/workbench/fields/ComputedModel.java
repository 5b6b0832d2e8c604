package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.grid.Blocks;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.CellRefusal;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Point;

/** Elements as rows, their fields as columns, and behind those columns that are computed and only read. */
final class ComputedModel implements ElementModel {

    private final RowModel rows;
    private final StudySession session;
    private final List<ComputedColumn> computed;

    ComputedModel(RowModel rows, StudySession session, List<ComputedColumn> computed) {
        this.rows = rows;
        this.session = session;
        this.computed = computed;
    }

    private boolean isField(int column) {
        return column < rows.columns();
    }

    private ComputedColumn computed(int column) {
        return computed.get(column - rows.columns());
    }

    private UnitSystem units() {
        return StudyUnits.of(session.study());
    }

    @Override
    public void update() {
        rows.update();
    }

    @Override
    public int rows() {
        return rows.rows();
    }

    @Override
    public int columns() {
        return rows.columns() + computed.size();
    }

    @Override
    public String header(int column) {
        return isField(column) ? rows.header(column) : computed(column).header(units());
    }

    @Override
    public String columnName(int column) {
        return isField(column) ? rows.columnName(column) : computed(column).label();
    }

    @Override
    public String headerTip(int column) {
        return isField(column) ? rows.headerTip(column) : computed(column).meaning();
    }

    @Override
    public String text(int row, int column) {
        return isField(column) ? rows.text(row, column) : computed(column).shown(rows.element(row, 0), units());
    }

    @Override
    public String fullText(int row, int column) {
        return isField(column) ? rows.fullText(row, column) : computed(column).fullText(rows.element(row, 0), units());
    }

    @Override
    public String tip(int row, int column) {
        return isField(column) ? rows.tip(row, column) : "";
    }

    @Override
    public String note(int row, int column) {
        return isField(column) ? rows.note(row, column) : "";
    }

    @Override
    public boolean isFigure(int row, int column) {
        return isField(column) ? rows.isFigure(row, column) : computed(column).isFigure();
    }

    @Override
    public CellLook look(int row, int column) {
        return isField(column) ? rows.look(row, column) : CellLook.PLAIN;
    }

    @Override
    public int frozenColumns() {
        return rows.frozenColumns();
    }

    @Override
    public Optional<CellMark> mark(int row, int column) {
        return isField(column) ? rows.mark(row, column) : Optional.empty();
    }

    @Override
    public boolean isEditable(int row, int column) {
        return isField(column) && rows.isEditable(row, column);
    }

    @Override
    public List<String> choices(int row, int column) {
        return isField(column) ? rows.choices(row, column) : List.of();
    }

    @Override
    public List<String> commonChoices(int column) {
        return isField(column) ? rows.commonChoices(column) : List.of();
    }

    @Override
    public boolean hasEntryRow() {
        return rows.hasEntryRow();
    }

    @Override
    public EObject element(int row, int column) {
        return rows.element(row, column);
    }

    @Override
    public Object subject(int row, int column) {
        return rows.subject(row, column);
    }

    @Override
    public String meaning(int row, int column) {
        return isField(column) ? rows.meaning(row, column) : computed(column).meaning();
    }

    @Override
    public EStructuralFeature feature(int row, int column) {
        return isField(column) ? rows.feature(row, column) : null;
    }

    @Override
    public Point find(EObject element, EStructuralFeature feature) {
        return rows.find(element, feature);
    }

    @Override
    public boolean has(EStructuralFeature feature) {
        return rows.has(feature);
    }

    @Override
    public List<CellRefusal> put(int row, int column, List<List<String>> block) throws CellRefusal {
        Blocks.checkFits(this, row, column, block);
        int fields = Math.max(0, rows.columns() - column);
        List<CellRefusal> refused = new ArrayList<>();
        for (int i = 0; i < block.size(); i++) {
            for (int j = fields; j < block.get(i).size(); j++) {
                put(row + i, column + j, block.get(i).get(j)).ifPresent(refused::add);
            }
        }
        BlockRows entered = rows.enter(row, Math.min(column, rows.columns()),
                block.stream().map(line -> line.subList(0, Math.min(fields, line.size()))).toList(), refused);
        refused.sort(Comparator.comparingInt(CellRefusal::row).thenComparingInt(CellRefusal::column));
        return entered.place(Blocks.told(refused, block));
    }

    /** A block that was copied here, columns that are computed included, comes back with the figures that stand there anyway. */
    private Optional<CellRefusal> put(int row, int column, String text) {
        boolean same = text == null || text.isBlank() || row < rows.rows() && text.equals(fullText(row, column));
        return same ? Optional.empty() : Optional.of(new CellRefusal(NLS.bind(Messages.Computed_refused, computed(column).label()), text, row, column));
    }

    @Override
    public void clear(int top, int bottom, List<Integer> columns) {
        rows.clear(top, bottom, columns.stream().filter(this::isField).toList());
    }

    @Override
    public void filter(RowWords words) {
        rows.filter(words, computed.stream().map(c -> c.header(units())).toList(),
                element -> Stream.concat(computed.stream().map(c -> c.shown(element, units())), RowModel.alsoSaid(element)));
    }

    @Override
    public int unfiltered() {
        return rows.unfiltered();
    }

    @Override
    public boolean isSortable() {
        return true;
    }

    @Override
    public void sort(int column, boolean ascending) {
        if (isField(column)) {
            rows.sort(column, ascending);
        } else {
            rows.sort(computed(column).order(), ascending);
        }
    }
}
