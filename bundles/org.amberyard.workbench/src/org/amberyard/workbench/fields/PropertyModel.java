package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.amberyard.workbench.grid.Blocks;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.CellRefusal;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.graphics.Point;

/** Fields as rows, elements as columns beside their labels; for kinds with many fields and few elements. */
final class PropertyModel implements ElementModel {

    private final StudySession session;
    private final String title;
    private final Supplier<List<EObject>> elements;
    private final Supplier<List<EStructuralFeature>> features;
    private final boolean one;
    private final Marks marks;
    private List<Field> fields = List.of();
    private List<EObject> columns = List.of();

    /** @param one true for a table of one element, whose name would say nothing above its values */
    PropertyModel(StudySession session, String title, Supplier<List<EObject>> elements,
            Supplier<List<EStructuralFeature>> features, boolean one) {
        this.session = session;
        this.title = title;
        this.elements = elements;
        this.features = features;
        this.one = one;
        this.marks = new Marks(session);
        update();
    }

    @Override
    public void update() {
        fields = features.get().stream().map(f -> new Field(f, session.study())).toList();
        columns = elements.get();
    }

    @Override
    public int rows() {
        return fields.size();
    }

    @Override
    public int columns() {
        return 1 + columns.size();
    }

    @Override
    public String header(int column) {
        if (column == 0) {
            return title;
        }
        return one && columns.size() == 1 ? Messages.Property_value : Words.name(columns.get(column - 1));
    }

    @Override
    public String text(int row, int column) {
        return column == 0 ? fields.get(row).header() : fields.get(row).text(columns.get(column - 1));
    }

    @Override
    public String fullText(int row, int column) {
        return column == 0 ? fields.get(row).header() : fields.get(row).fullText(columns.get(column - 1));
    }

    @Override
    public String tip(int row, int column) {
        return column == 0 ? fields.get(row).tip() : Marks.source(columns.get(column - 1), fields.get(row).feature());
    }

    @Override
    public String note(int row, int column) {
        return row == 0 && column > 0 ? Marks.note(columns.get(column - 1)) : "";
    }

    @Override
    public boolean isFigure(int row, int column) {
        return column > 0 && fields.get(row).isFigure();
    }

    @Override
    public boolean isLabel(int row, int column) {
        return column == 0;
    }

    @Override
    public CellLook look(int row, int column) {
        if (isLabel(row, column)) {
            return CellLook.LABEL;
        }
        return fields.get(row).standsIn(columns.get(column - 1)) ? CellLook.DEFAULT : CellLook.PLAIN;
    }

    @Override
    public boolean hasHeader() {
        return !stretchesLast();
    }

    /** The fields of one element use the room that there is; elements of a list stand at their own width. */
    @Override
    public boolean stretchesLast() {
        return one && columns.size() == 1;
    }

    @Override
    public int frozenColumns() {
        return 1;
    }

    @Override
    public Optional<CellMark> mark(int row, int column) {
        return column == 0 ? Optional.empty() : marks.of(columns.get(column - 1), fields.get(row).feature(), row == 0);
    }

    @Override
    public boolean isEditable(int row, int column) {
        return column > 0;
    }

    @Override
    public List<String> choices(int row, int column) {
        return column == 0 ? List.of() : fields.get(row).choices();
    }

    @Override
    public EObject element(int row, int column) {
        return column == 0 ? null : columns.get(column - 1);
    }

    @Override
    public Object subject(int row, int column) {
        return element(row, column);
    }

    @Override
    public String meaning(int row, int column) {
        return row < fields.size() ? fields.get(row).tip() : "";
    }

    @Override
    public EStructuralFeature feature(int row, int column) {
        return column == 0 ? null : fields.get(row).feature();
    }

    @Override
    public Point find(EObject element, EStructuralFeature feature) {
        int column = columns.indexOf(element);
        int row = feature == null ? 0 : features.get().indexOf(feature);
        return column < 0 ? null : new Point(column + 1, Math.max(0, row));
    }

    @Override
    public boolean has(EStructuralFeature feature) {
        return features.get().contains(feature);
    }

    @Override
    public List<CellRefusal> put(int row, int column, List<List<String>> block) throws CellRefusal {
        if (column == 0) {
            return putBesideLabels(row, block);
        }
        Blocks.checkFits(this, row, column, block);
        Entry entry = new Entry(session);
        List<CellRefusal> refused = new ArrayList<>();
        for (int i = 0; i < block.size(); i++) {
            for (int j = 0; j < block.get(i).size(); j++) {
                set(entry, row + i, column + j, block.get(i).get(j)).ifPresent(refused::add);
            }
        }
        entry.execute(Messages.Change_block);
        return Blocks.told(refused, block);
    }

    private Optional<CellRefusal> set(Entry entry, int row, int column, String text) {
        Field field = fields.get(row);
        EObject element = columns.get(column - 1);
        try {
            // A cell that reads as what comes for it keeps its last digits, which no text has.
            if (text != null && !text.equals(field.fullText(element))) {
                entry.set(element, field, field.value(text));
            }
            return Optional.empty();
        } catch (FieldRefusal refusal) {
            return Optional.of(new CellRefusal(refusal.getMessage(), text, row, column));
        }
    }

    /** A block that was copied with its labels is pasted without them. */
    private List<CellRefusal> putBesideLabels(int row, List<List<String>> block) throws CellRefusal {
        Blocks.checkFits(this, row, 0, block);
        return put(row, 1, block.stream().map(line -> line.subList(1, line.size())).toList());
    }

    @Override
    public void clear(int top, int bottom, List<Integer> cleared) {
        Entry entry = new Entry(session);
        for (int row = top; row <= bottom; row++) {
            Field field = fields.get(row);
            for (int column : cleared) {
                if (column > 0 && !field.feature().isRequired()) {
                    entry.clear(columns.get(column - 1), field);
                }
            }
        }
        entry.execute(Messages.Change_clear);
    }
}
