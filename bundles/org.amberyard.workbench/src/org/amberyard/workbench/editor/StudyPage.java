package org.amberyard.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.ComputedColumn;
import org.amberyard.workbench.fields.ElementList;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.grid.CellEntry;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** A page of the editor: tables side by side, each defined in one line. */
abstract class StudyPage {

    private final PageSite site;
    private final List<FeatureTable> tables = new ArrayList<>();
    private final List<Grid> grids = new ArrayList<>();

    StudyPage(PageSite site) {
        this.site = site;
    }

    /** Creates the tables of the page. */
    abstract Composite create(Composite parent);

    final Study study() {
        return session().study();
    }

    final StudySession session() {
        return site.session();
    }

    /** Parts that lie side by side, with shares of the width. */
    static SashForm columns(Composite parent) {
        return sash(parent, SWT.HORIZONTAL);
    }

    /** Parts that lie below each other, with shares of the height. */
    static SashForm stack(Composite parent) {
        return sash(parent, SWT.VERTICAL);
    }

    private static SashForm sash(Composite parent, int direction) {
        SashForm sash = new SashForm(parent, direction | SWT.SMOOTH);
        sash.setSashWidth(4);
        sash.setBackground(Palette.PAPER.color());
        return sash;
    }

    final FeatureTable rows(Composite parent, String title, Supplier<EObject> owner, EReference list, EClass type,
            EStructuralFeature... without) {
        return rows(parent, title, new ElementList(site.session(), owner, list, type), Columns.of(type, without));
    }

    final FeatureTable rows(Composite parent, String title, ElementList elements, List<EStructuralFeature> columns) {
        return keep(FeatureTable.ofRows(parent, site, title, elements, columns));
    }

    final FeatureTable rows(Composite parent, String title, ElementList elements, List<EStructuralFeature> columns,
            List<ComputedColumn> computed) {
        return keep(FeatureTable.ofRows(parent, site, title, elements, columns, computed));
    }

    final ElementList list(EReference list, EClass type) {
        return new ElementList(site.session(), this::study, list, type);
    }

    final FeatureTable transposed(Composite parent, String title, EReference list, EClass type) {
        return transposed(parent, title, list(list, type), Columns.of(type));
    }

    final FeatureTable transposed(Composite parent, String title, ElementList elements, List<EStructuralFeature> fields) {
        return keep(FeatureTable.ofColumns(parent, site, title, elements, fields));
    }

    final FeatureTable one(Composite parent, String title, Supplier<EObject> element, EClass type,
            EStructuralFeature... without) {
        List<EStructuralFeature> fields = Columns.of(type, without);
        return keep(FeatureTable.ofOne(parent, site, title, element, () -> fields));
    }

    /** The fields of an element whose kind changes with the element. */
    final FeatureTable one(Composite parent, String title, Supplier<EObject> element) {
        return keep(FeatureTable.ofOne(parent, site, title, element,
                () -> element.get() == null ? List.of() : Columns.of(element.get().eClass())));
    }

    private FeatureTable keep(FeatureTable table) {
        tables.add(table);
        keep(table.grid());
        return table;
    }

    /** Keeps a grid of the page: its marks are shown and its entries closed; the first gets the focus. */
    final void keep(Grid grid) {
        grids.add(grid);
        grid.entry().onChange(site.entryChanged());
    }

    /** Lets the element in focus of a table drive what others show. */
    static void drive(FeatureTable master, FeatureTable... details) {
        EObject[] shown = {master.selected()};
        master.drives(() -> {
            if (master.selected() != shown[0]) {
                shown[0] = master.selected();
                List.of(details).forEach(FeatureTable::update);
            }
        });
    }

    final PageSite site() {
        return site;
    }

    /** Reads the study again. */
    void update() {
        tables.forEach(FeatureTable::update);
    }

    /** There are other results, or other knowledge of them. */
    void evaluationChanged() {
        // most pages show the study only
    }

    /** The user looks at something else. */
    void choiceChanged() {
        // most pages show all of the study
    }

    /** Shows the marks of new findings. */
    final void redrawMarks() {
        grids.forEach(Grid::redraw);
    }

    final void setFocus() {
        grids.get(0).setFocus();
    }

    /** Entries of the page's tables, open or not. */
    final Stream<CellEntry> entries() {
        return grids.stream().map(Grid::entry);
    }

    /** Enters what is being typed beside the tables. */
    void enter() {
        // most pages have tables alone
    }

    /** Enters what is being typed; false when it is refused. */
    final boolean closeEntries() {
        enter();
        return entries().allMatch(CellEntry::close);
    }

    /** Goes to a field of an element, by way of the elements that hold it; answers the table that has it. */
    final Optional<FeatureTable> reveal(EObject element, EStructuralFeature feature) {
        if (element == null) {
            return Optional.empty();
        }
        Optional<FeatureTable> table = revealHere(element, feature);
        return table.isPresent() ? table
                : reveal(element.eContainer(), null).flatMap(holder -> revealHere(element, feature));
    }

    /** A table of the element may lead to another that has the field. */
    private Optional<FeatureTable> revealHere(EObject element, EStructuralFeature feature) {
        Optional<FeatureTable> row = tables.stream().filter(t -> t.reveal(element, feature)).findFirst();
        return row.filter(t -> feature != null && !t.has(feature))
                .flatMap(t -> tables.stream().filter(d -> d.has(feature) && d.reveal(element, feature)).findFirst()).or(() -> row);
    }
}
