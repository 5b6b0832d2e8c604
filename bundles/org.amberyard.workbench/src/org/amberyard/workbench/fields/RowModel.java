package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.CellRange;
import org.amberyard.workbench.grid.CellRefusal;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.graphics.Point;

/** Elements as rows, fields as columns. */
final class RowModel implements ElementModel {

    private final StudySession session;
    private final ElementList list;
    private final List<EStructuralFeature> features;
    private final Marks marks;
    private List<Field> fields = List.of();
    private List<EObject> rows = List.of();
    private Comparator<EObject> order;

    RowModel(StudySession session, ElementList list, List<EStructuralFeature> features) {
        this.session = session;
        this.list = list;
        this.features = features;
        this.marks = new Marks(session);
        update();
    }

    @Override
    public void update() {
        fields = features.stream().map(f -> new Field(f, session.study())).toList();
        List<EObject> elements = list.elements();
        if (order == null) {
            rows = elements;
            return;
        }
        // Rows keep the places that the last sort gave them, so that an edit does not make its row jump away.
        List<EObject> kept = new ArrayList<>(rows);
        kept.retainAll(elements);
        elements.stream().filter(e -> !kept.contains(e)).forEach(kept::add);
        rows = kept;
    }

    @Override
    public int rows() {
        return rows.size();
    }

    @Override
    public int columns() {
        return fields.size();
    }

    @Override
    public String header(int column) {
        return fields.get(column).header();
    }

    @Override
    public String headerTip(int column) {
        return fields.get(column).tip();
    }

    @Override
    public String text(int row, int column) {
        return fields.get(column).text(rows.get(row));
    }

    @Override
    public String fullText(int row, int column) {
        return fields.get(column).fullText(rows.get(row));
    }

    @Override
    public boolean isFigure(int row, int column) {
        return fields.get(column).isFigure();
    }

    @Override
    public int frozenColumns() {
        return fields.size() > 8 ? 1 : 0;
    }

    @Override
    public Optional<CellMark> mark(int row, int column) {
        return marks.of(rows.get(row), fields.get(column).feature(), column == 0);
    }

    @Override
    public boolean isEditable(int row, int column) {
        return row < rows.size() || hasEntryRow();
    }

    @Override
    public List<String> choices(int row, int column) {
        return fields.get(column).choices();
    }

    @Override
    public boolean hasEntryRow() {
        return list.canGrow();
    }

    @Override
    public EObject element(int row, int column) {
        return row < rows.size() ? rows.get(row) : null;
    }

    @Override
    public EStructuralFeature feature(int row, int column) {
        return fields.get(column).feature();
    }

    /** The empty row stands for whatever would hold a new element. */
    @Override
    public Object subject(int row, int column) {
        return row < rows.size() ? rows.get(row) : list.owner();
    }

    @Override
    public String meaning(int row, int column) {
        return fields.get(column).tip();
    }

    @Override
    public Point find(EObject element, EStructuralFeature feature) {
        int row = rows.indexOf(element);
        int column = feature == null ? 0 : features.indexOf(feature);
        return row < 0 ? null : new Point(Math.max(0, column), row);
    }

    @Override
    public boolean has(EStructuralFeature feature) {
        return features.contains(feature);
    }

    @Override
    public void put(int row, int column, List<List<String>> block) throws CellRefusal {
        Blocks.checkFits(this, row, column, block);
        Entry entry = new Entry(session);
        for (int i = 0; i < block.size(); i++) {
            EObject element = row + i < rows.size() ? rows.get(row + i) : added(entry);
            for (int j = 0; j < block.get(i).size(); j++) {
                entry.set(element, fields.get(column + j), value(row + i, column + j, block.get(i).get(j), block));
            }
        }
        entry.execute(Messages.Change_block);
        update();
    }

    private EObject added(Entry entry) {
        EObject element = list.create();
        entry.add(list.addition(element, null));
        return element;
    }

    private Object value(int row, int column, String text, List<List<String>> block) throws CellRefusal {
        try {
            return fields.get(column).value(text);
        } catch (FieldRefusal refusal) {
            throw new CellRefusal(Blocks.refusal(refusal.getMessage(), row, block), row, column);
        }
    }

    @Override
    public void clear(CellRange range) {
        Entry entry = new Entry(session);
        for (int row = range.top(); row <= Math.min(range.bottom(), rows.size() - 1); row++) {
            for (int column = range.left(); column <= range.right(); column++) {
                Field field = fields.get(column);
                if (!field.feature().isRequired()) {
                    entry.set(rows.get(row), field, field.cleared());
                }
            }
        }
        entry.execute(Messages.Change_clear);
    }

    @Override
    public boolean isSortable() {
        return true;
    }

    @Override
    public void sort(int column, boolean ascending) {
        sort(new FieldOrder(fields.get(column)), ascending);
    }

    void sort(Comparator<EObject> up, boolean ascending) {
        order = ascending ? up : up.reversed();
        rows = rows.stream().sorted(order).toList();
    }
}
