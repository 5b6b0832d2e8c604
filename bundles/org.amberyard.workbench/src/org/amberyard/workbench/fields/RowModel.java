package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.workbench.grid.Blocks;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.CellRefusal;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.graphics.Point;

/** Elements as rows, fields as columns. */
final class RowModel implements ElementModel {

    private final StudySession session;
    private final ElementList list;
    private final List<EStructuralFeature> features;
    private final Marks marks;
    private List<Field> fields = List.of();
    private List<EObject> ordered = List.of();
    private List<EObject> rows = List.of();
    private Set<EObject> filteredOut = Set.of();
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
        ordered = order == null ? elements : inTheirPlaces(elements);
        rows = left();
    }

    /** Rows keep the places that the last sort gave them, so that an edit does not make its row jump away. */
    private List<EObject> inTheirPlaces(List<EObject> elements) {
        Set<EObject> present = new HashSet<>(elements);
        Set<EObject> kept = ordered.stream().filter(present::contains).collect(Collectors.toCollection(LinkedHashSet::new));
        kept.addAll(elements);
        return List.copyOf(kept);
    }

    private List<EObject> left() {
        return filteredOut.isEmpty() ? ordered : ordered.stream().filter(e -> !filteredOut.contains(e)).toList();
    }

    @Override
    public void filter(RowWords words) {
        filter(words, List.of(), RowModel::alsoSaid);
    }

    /** What a bus runs on stands with its type, but is looked for with the bus. */
    static Stream<String> alsoSaid(EObject element) {
        return element instanceof Bus bus && bus.getType() instanceof CombustionType type ? Stream.of(Words.model().choice(
                VehiclesPackage.Literals.FUEL, type.getFuel())) : Stream.empty();
    }

    /**
     * @param moreHeaders headers of the first of the further texts
     * @param more texts in which words may stand besides those of the fields
     */
    void filter(RowWords words, List<String> moreHeaders, Function<EObject, Stream<String>> more) {
        List<String> headers = Stream.concat(fields.stream().map(Field::header), moreHeaders.stream()).toList();
        filteredOut = words.isEmpty() ? Set.of() : ordered.stream()
                .filter(e -> !words.in(headers, () -> Stream.concat(fields.stream().map(f -> f.text(e)), more.apply(e))))
                .collect(Collectors.toSet());
        rows = left();
    }

    @Override
    public int unfiltered() {
        return ordered.size();
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
    public String columnName(int column) {
        return fields.get(column).feature().getName();
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
    public String tip(int row, int column) {
        return Marks.source(rows.get(row), fields.get(column).feature());
    }

    @Override
    public String note(int row, int column) {
        return column == 0 ? Marks.note(rows.get(row)) : "";
    }

    @Override
    public boolean isFigure(int row, int column) {
        return fields.get(column).isFigure();
    }

    @Override
    public CellLook look(int row, int column) {
        return row < rows.size() && fields.get(column).standsIn(rows.get(row)) ? CellLook.DEFAULT : CellLook.PLAIN;
    }

    @Override
    public int frozenColumns() {
        return fields.size() > 8 || fields.size() > 2 && fields.get(0).isName() ? 1 : 0;
    }

    @Override
    public Optional<CellMark> mark(int row, int column) {
        return marks.of(rows.get(row), fields.get(column).feature(), column == 0);
    }

    @Override
    public void markAlso(Function<EObject, Optional<CellMark>> more) {
        marks.also(more);
    }

    @Override
    public boolean isEditable(int row, int column) {
        return row < rows.size() || hasEntryRow();
    }

    @Override
    public List<String> choices(int row, int column) {
        return fields.get(column).choices(element(row, column));
    }

    @Override
    public List<String> commonChoices(int column) {
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
    public List<CellRefusal> put(int row, int column, List<List<String>> block) throws CellRefusal {
        List<CellRefusal> refused = new ArrayList<>();
        BlockRows entered = enter(row, column, block, refused);
        return entered.place(Blocks.told(refused, block));
    }

    /**
     * The same, but what is refused is added to a list, be it a single text or one of several, as if every line had become a row.
     *
     * @return the rows that the lines have become
     */
    BlockRows enter(int row, int column, List<List<String>> block, List<CellRefusal> refused) throws CellRefusal {
        Blocks.checkFits(this, row, column, block);
        Entry entry = new Entry(session);
        List<EObject> entered = new ArrayList<>();
        for (int i = 0; i < block.size(); i++) {
            Point first = new Point(column, row + i);
            EObject there = element(first.y, column);
            if (there != null) {
                enter(entry, there, first, block.get(i), refused);
            }
            entered.add(there == null ? added(entry, first, block.get(i), refused) : there);
        }
        entry.execute(Messages.Change_block);
        update();
        return new BlockRows(row, entered, rows);
    }

    /** Adds an element for a line of a block; null where the line is blank or nothing of it was taken. */
    private EObject added(Entry entry, Point first, List<String> line, List<CellRefusal> refused) {
        if (Blocks.isBlank(line)) {
            return null;
        }
        EObject element = list.create();
        boolean taken = enter(entry, element, first, line, refused);
        if (taken) {
            entry.add(list.addition(element, null));
        }
        return taken ? element : null;
    }

    /** Enters a line of a block, whose first cell is at a place; true when any of it was taken. */
    private boolean enter(Entry entry, EObject element, Point first, List<String> line, List<CellRefusal> refused) {
        EObject asTyped = fields.stream().anyMatch(Field::isVaried) ? EcoreUtil.copy(element) : element;
        boolean taken = false;
        for (int j = 0; j < line.size(); j++) {
            Field field = fields.get(first.x + j);
            String text = line.get(j);
            try {
                if (text != null && !(asTyped == element && stands(element, field, text))) {
                    Object value = value(field, text, kind(element, first.x + j, first.x, line), asTyped);
                    entry.set(element, field, value);
                    taken = true;
                    if (asTyped != element) {
                        asTyped.eSet(field.feature(), value);
                    }
                }
            } catch (FieldRefusal refusal) {
                refused.add(new CellRefusal(refusal.getMessage(), text, first.y, first.x + j));
            }
        }
        return taken;
    }

    /** True when a cell reads as what comes for it: its last digits, which no text has, stay. */
    private static boolean stands(EObject element, Field field, String text) {
        return element.eContainer() != null && text.equals(field.fullText(element));
    }

    /** The kind of element that a cell names a field of: that of the same line of the block, else that of the row; null for neither. */
    private String kind(EObject element, int column, int first, List<String> line) {
        Optional<PlaceNames> places = fields.get(column).places();
        int kind = places.map(p -> features.indexOf(p.kind()) - first).orElse(-1);
        String typed = kind >= 0 && kind < line.size() ? line.get(kind) : null;
        try {
            return typed == null ? places.map(p -> (String) element.eGet(p.kind())).orElse(null)
                    : PlaceNames.of(places.orElseThrow().kind()).orElseThrow().stored(null, typed);
        } catch (FieldRefusal refusal) {
            return typed;
        }
    }

    /** @param asTyped the element of the row with what the line of the block has said of it so far */
    private static Object value(Field field, String text, String kind, EObject asTyped) throws FieldRefusal {
        return field.places().isPresent() ? field.places().get().stored(kind, text) : field.value(asTyped, text);
    }

    @Override
    public void clear(int top, int bottom, List<Integer> columns) {
        Entry entry = new Entry(session);
        for (int row = top; row <= Math.min(bottom, rows.size() - 1); row++) {
            for (int column : columns) {
                Field field = fields.get(column);
                if (!field.feature().isRequired()) {
                    entry.clear(rows.get(row), field);
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
        ordered = ordered.stream().sorted(order).toList();
        rows = left();
    }
}
