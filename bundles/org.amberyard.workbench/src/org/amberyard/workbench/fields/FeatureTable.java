package org.amberyard.workbench.fields;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.amberyard.model.common.Sourced;
import org.amberyard.workbench.columns.ArrangedModel;
import org.amberyard.workbench.columns.ColumnMenu;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.CellRange;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Palette;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** A titled table of elements and their fields. Every table of the editor is one of these. */
public final class FeatureTable {

    private final PageSite site;
    private final ElementModel model;
    /** What the user has made of the columns; null where elements are columns. */
    private final ArrangedModel arranged;
    private final ElementList list;
    private final Composite area;
    private final Grid grid;
    private final CellMenu menu;
    private final TableHead head;
    private Runnable front = () -> {};
    private Supplier<EObject> owner;

    private FeatureTable(Composite parent, PageSite site, String title, ElementModel model, ElementList list) {
        this.site = site;
        this.model = model;
        this.list = list;
        area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().margins(8, 3).spacing(4, 2).numColumns(2).applyTo(area);
        head = new TableHead(area, title);
        boolean byRows = !(model instanceof PropertyModel);
        arranged = byRows ? new ArrangedModel(model, list.type().getName() + " " + list.containmentName()) : null;
        grid = new Grid(area, byRows ? arranged : model);
        grid.setData(FeatureTable.class.getName(), this);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(grid);
        grid.onRefusal(r -> site.refusal().accept(r == null ? null : r.getMessage()));
        grid.comesBy(this::come);
        grid.selection().onMove(this::tellMeaning);
        grid.addListener(SWT.FocusIn, e -> tellMeaning());
        grid.addListener(SWT.FocusOut, e -> site.hint().accept(""));
        menu = new CellMenu(grid);
        menu.add(Messages.Menu_vary, this::vary);
        menu.add(Messages.Menu_note, this::note);
        if (list != null) {
            addTools();
        }
        if (byRows) {
            ColumnMenu.on(grid);
            head.onFilter(this::filter, grid::setFocus);
            grid.onFilter(this::askFilter);
            addCommand(Messages.Menu_filter, this::askFilter);
            addCommand(Messages.Menu_columns, ColumnMenu::choose);
        }
    }

    /** Lets the user say which rows are to be seen; for tables of rows. */
    private void askFilter() {
        if (arranged != null && grid.entry().close()) {
            head.askFilter();
        }
    }

    private void filter(String text) {
        grid.rearrange(() -> model.filter(new RowWords(text)));
        head.filtered(model.rows(), model.unfiltered());
    }

    /** Column of the model that is shown in a column of the grid. */
    private int source(int column) {
        return arranged == null ? column : arranged.source(column);
    }

    private void addTools() {
        if (list.isTyped()) {
            head.add(Messages.Add, NLS.bind(Messages.Add_tip, Words.kind(list.type()).toLowerCase(Locale.ROOT)),
                    this::addElement);
        }
        head.add(Messages.Delete, Messages.Delete_tip, this::deleteElements);
        menu.addSeparator();
        menu.add(Messages.Menu_delete, this::deleteElements);
    }

    /** Elements as rows. */
    public static FeatureTable ofRows(Composite parent, PageSite site, String title, ElementList list,
            List<EStructuralFeature> features) {
        return new FeatureTable(parent, site, title, new RowModel(site.session(), list, features), list);
    }

    /** Elements as rows, with columns behind that are computed. */
    public static FeatureTable ofRows(Composite parent, PageSite site, String title, ElementList list,
            List<EStructuralFeature> features, List<ComputedColumn> computed) {
        RowModel rows = new RowModel(site.session(), list, features);
        return new FeatureTable(parent, site, title, new ComputedModel(rows, site.session(), computed), list);
    }

    /** Elements of a list as columns. */
    public static FeatureTable ofColumns(Composite parent, PageSite site, String title, ElementList list,
            List<EStructuralFeature> features) {
        String corner = Words.kind(list.type());
        return new FeatureTable(parent, site, title, new PropertyModel(site.session(), corner, list::elements, () -> features, false),
                list).besideLabels();
    }

    /** The fields of one element below each other; which ones, its kind may decide. */
    public static FeatureTable ofOne(Composite parent, PageSite site, String title, Supplier<EObject> element,
            Supplier<List<EStructuralFeature>> features) {
        Supplier<List<EObject>> elements = () -> element.get() == null ? List.of() : List.of(element.get());
        return new FeatureTable(parent, site, title, new PropertyModel(site.session(), "", elements, features, true), null)
                .besideLabels();
    }

    /** Begins where something can be entered, not at the labels. */
    private FeatureTable besideLabels() {
        if (model.columns() > 1) {
            grid.goTo(0, 1);
        }
        return this;
    }

    /** The table that has the focus. */
    public static Optional<FeatureTable> inFocus() {
        Control focus = Display.getCurrent().getFocusControl();
        return focus == null ? Optional.empty() : of(focus);
    }

    /** The table that a control belongs to. */
    public static Optional<FeatureTable> of(Control control) {
        for (Control c = control; c != null; c = c.getParent()) {
            if (c.getData(FeatureTable.class.getName()) instanceof FeatureTable table) {
                return Optional.of(table);
            }
        }
        return Optional.empty();
    }

    /** Its title. */
    public String title() {
        return head.title();
    }

    /** Says something of its rows beside its title; blank for nothing. */
    public void remark(String words) {
        head.remark(words);
    }

    /** Says in its title of which element its rows are; for a table that another drives. */
    public void titleNames(Supplier<EObject> element) {
        owner = element;
        nameOwner();
    }

    private void nameOwner() {
        if (owner != null) {
            head.of(owner.get() == null ? "" : Words.name(owner.get()));
        }
    }

    /** Lets other tables have its place; whoever looks for a field here has the table in front. */
    void share(List<String> titles, IntConsumer choose, Runnable bringUp) {
        head.share(titles, choose);
        front = bringUp;
    }

    private boolean come() {
        boolean on = site.bringOn().getAsBoolean();
        front.run();
        return on;
    }

    /** Lets more be said of its rows than the findings say, at their first cell. */
    public void markAlso(Function<EObject, Optional<CellMark>> more) {
        model.markAlso(more);
    }

    /** Adds a command beside the title and to the menu of the cells; for tables whose elements come and go. */
    public void addTool(String text, String tip, Runnable action) {
        head.add(text, tip, action);
        addCommand(text, action);
    }

    /** Adds a command to the menu of the cells. */
    public void addCommand(String text, Runnable action) {
        menu.add(text, action);
    }

    /** The control to lay out. */
    public Composite control() {
        return area;
    }

    /** The table itself. */
    public Grid grid() {
        return grid;
    }

    /** Tints the row in focus and calls the listener whenever it changes; for tables whose rows drive others. */
    public void drives(Runnable listener) {
        grid.markRow();
        grid.selection().onMove(listener);
    }

    /** The element of the focus cell, or null. */
    public EObject selected() {
        int row = grid.selection().row();
        int column = grid.selection().column();
        return row < model.rows() && column < grid.model().columns() ? model.element(row, source(column)) : null;
    }

    /** The field of the focus cell; empty for labels, computed columns and where nothing is. */
    public Optional<EStructuralFeature> field() {
        return selected() == null ? Optional.empty()
                : Optional.ofNullable(model.feature(grid.selection().row(), source(grid.selection().column())));
    }

    /** Makes the field in focus an uncertain input. */
    private void vary() {
        field().filter(f -> grid.entry().close()).ifPresent(f -> site.vary().accept(selected(), f));
    }

    /** Opens the note on the element in focus. */
    public void note() {
        if (selected() instanceof Sourced element && grid.entry().close()) {
            new NoteDialog(grid.getShell(), site.session(), element, field()).open();
            update();
        }
    }

    /** The elements of all selected cells. */
    public List<EObject> selectedElements() {
        CellRange range = grid.selection().range();
        return IntStream.rangeClosed(range.top(), Math.min(range.bottom(), model.rows() - 1)).boxed()
                .flatMap(row -> IntStream.rangeClosed(range.left(), Math.min(range.right(), grid.model().columns() - 1))
                        .mapToObj(column -> model.element(row, source(column))))
                .filter(e -> e != null).distinct().toList();
    }

    /** Adds an element below the one in focus and goes to it. */
    public void addElement() {
        if (list != null) {
            addElement(list);
        }
    }

    /** Adds an element of a kind that the empty row does not stand for. */
    public void addElement(ElementList kind) {
        if (kind.canGrow() && grid.entry().close()) {
            EObject element = kind.create();
            site.session().execute(kind.addition(element, selected()));
            reveal(element, null);
            grid.setFocus();
        }
    }

    /** Deletes the selected elements. */
    public void deleteElements() {
        List<EObject> doomed = selectedElements();
        if (list != null && !doomed.isEmpty() && grid.entry().close()) {
            list.delete(doomed);
        }
    }

    /** Goes to a field of an element; false when it is not here. */
    public boolean reveal(EObject element, EStructuralFeature feature) {
        model.update();
        grid.refresh();
        Point place = found(element, feature);
        if (place == null) {
            return false;
        }
        front.run();
        grid.goTo(place.y, arranged == null ? place.x : feature == null ? 0 : revealed(place.x));
        return true;
    }

    /** An element that the filter has taken out of sight is shown with all others. */
    private Point found(EObject element, EStructuralFeature feature) {
        Point place = model.find(element, feature);
        boolean filteredOut = place == null && model.rows() < model.unfiltered() && list.elements().contains(element);
        if (filteredOut) {
            head.endFilter();
            place = model.find(element, feature);
        }
        return place;
    }

    /** Place in the grid of a column of the model; one that was hidden comes back into sight. */
    private int revealed(int source) {
        int before = grid.model().columns();
        int column = arranged.reveal(source);
        if (grid.model().columns() != before) {
            grid.columnsChanged();
        }
        return column;
    }

    /** True when the table has cells for a field. */
    public boolean has(EStructuralFeature feature) {
        return model.has(feature);
    }

    /** Reads the study again. */
    public void update() {
        model.update();
        nameOwner();
        grid.refresh();
        head.filtered(model.rows(), model.unfiltered());
    }

    private void tellMeaning() {
        int row = grid.selection().row();
        int column = grid.selection().column();
        if (!grid.isFocusControl() || column >= grid.model().columns()) {
            return;
        }
        String trouble = row < model.rows() ? model.mark(row, source(column)).map(m -> m.message()).orElse("") : "";
        boolean hasMeaning = model.rows() == 0 || row < model.rows() || model.hasEntryRow();
        site.hint().accept(trouble.isEmpty() && hasMeaning ? model.meaning(row, source(column)) : trouble);
    }
}
