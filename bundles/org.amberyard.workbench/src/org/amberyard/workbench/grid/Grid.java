package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/**
 * The sheet. Its clipboard methods have the names that the workbench's own edit commands look for on the control with
 * the focus.
 */
public final class Grid extends Canvas {

    private final GridGeometry geometry = new GridGeometry(this);
    private final GridSelection selection = new GridSelection();
    private final GridPainter painter = new GridPainter(this, geometry);
    private final GridScrolling scrolling = new GridScrolling(this, geometry);
    private final GridClipboard clipboard = new GridClipboard(this);
    private final GridKeys keys = new GridKeys(this, geometry);
    private final GridAccess access = new GridAccess(this);
    private final GridMouse mouse = new GridMouse(this, geometry);
    private final CellEntry entry = new CellEntry(this, geometry);
    private final PastedRefusals refusals = new PastedRefusals(this, geometry);
    private final List<Consumer<CellRefusal>> refusalListeners = new ArrayList<>();
    private final List<Consumer<Point>> openListeners = new ArrayList<>();
    private final List<Consumer<Point>> dragListeners = new ArrayList<>();
    private BooleanSupplier way = () -> true;
    private GridModel model;
    private boolean rowMarked;
    private boolean faded;
    private SortOrder order;
    private Runnable filter = () -> {};

    /** An empty table of a model. */
    public Grid(Composite parent, GridModel model) {
        super(parent, SWT.V_SCROLL | SWT.H_SCROLL | SWT.DOUBLE_BUFFERED);
        this.model = model;
        geometry.measure();
        addListener(SWT.Paint, e -> painter.paint(e.gc));
        addListener(SWT.Resize, this::resized);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        scrolling.hook();
        keys.hook();
        mouse.hook();
        new GridTips(this, geometry).hook();
        access.hook();
        selection.onMove(this::selectionMoved);
        refusals.hook();
    }

    /** The grid that has the focus, itself or by the text typed into it. */
    public static Optional<Grid> inFocus() {
        for (Control c = Display.getCurrent().getFocusControl(); c != null; c = c.getParent()) {
            if (c instanceof Grid grid) {
                return Optional.of(grid);
            }
        }
        return Optional.empty();
    }

    /** What is shown. */
    public GridModel model() {
        return model;
    }

    /** Shows another model. */
    public void setModel(GridModel newModel) {
        entry.cancel();
        model = newModel;
        order = null;
        selection.begin(0);
        geometry.scrollTo(0, 0);
        refresh();
    }

    /** Shows the same table with other contents: it stays sorted, its selected rows stay selected, and what is in sight stays there. */
    public void renewModel(GridModel newModel) {
        entry.cancel();
        SelectedRows selected = new SelectedRows(this);
        int x = geometry.scrollX();
        int top = geometry.topRow();
        model = newModel;
        sort();
        refresh();
        selected.selectAgain();
        geometry.scrollTo(x, top);
        scrolling.update();
        redraw();
    }

    /** Reads the model again after its columns have changed; what was sorted by one of them stays sorted. */
    public void columnsChanged() {
        entry.cancel();
        refresh();
        goTo(selection.row(), selection.column());
    }

    /** Reads the model again. */
    public void refresh() {
        geometry.measure();
        selection.keepWithin(shownRows(), model.columns());
        scrolling.update();
        entry.place();
        redraw();
    }

    /** The selected cells. */
    public GridSelection selection() {
        return selection;
    }

    /** The open entry into a cell, if there is one. */
    public CellEntry entry() {
        return entry;
    }

    /** Lets strokes of the mouse do something else than select. */
    public void setTool(GridTool tool) {
        mouse.setTool(tool);
    }

    /** Scrolls to a cell. */
    void reveal(int row, int column) {
        scrolling.reveal(row, column);
        redraw();
    }

    void giveUpStroke() {
        mouse.giveUpStroke();
    }

    /**
     * Lets Enter lead out of the table, after an entry and without one, instead of a row down.
     *
     * @param there goes there; false when there is nowhere to go from the focus cell
     */
    public void leadEnter(BooleanSupplier there) {
        keys.leadBy(there);
    }

    /**
     * Tells how the table comes on show where it is on a page that is behind another.
     *
     * @param newWay brings it on; false when it cannot
     */
    public void comesBy(BooleanSupplier newWay) {
        way = newWay;
    }

    /** Brings the table on show; false when it cannot. */
    boolean come() {
        return way.getAsBoolean();
    }

    GridKeys keys() {
        return keys;
    }

    /** Rows on show: those of the model and the empty one for new entries. */
    public int shownRows() {
        return model.rows() + (model.hasEntryRow() ? 1 : 0);
    }

    /** Tints the whole row of the focus cell, for tables whose rows drive something else. */
    public void markRow() {
        rowMarked = true;
    }

    boolean isRowMarked() {
        return rowMarked;
    }

    /** Lets figures step back that are not up to date. */
    public void setFaded(boolean isFaded) {
        if (isFaded != faded) {
            faded = isFaded;
            redraw();
        }
    }

    /** True while the figures are not up to date. */
    public boolean isFaded() {
        return faded;
    }

    /** How the rows were sorted; empty for their own order. */
    public Optional<SortOrder> order() {
        return Optional.ofNullable(order);
    }

    /** Column that the rows are sorted by, or -1. */
    int sortedColumn() {
        return order == null ? -1 : IntStream.range(0, model.columns()).filter(c -> model.columnName(c).equals(order.column())).findFirst().orElse(-1);
    }

    boolean isSortedUp() {
        return order != null && order.ascending();
    }

    /** Calls the listener with every refused entry, and with null when the last refusal is over. */
    public void onRefusal(Consumer<CellRefusal> listener) {
        refusalListeners.add(listener);
    }

    /** Calls the listener with the column and row of a cell that was double-clicked but takes no entries. */
    public void onOpen(Consumer<Point> listener) {
        openListeners.add(listener);
    }

    /** Says how rows are asked for by words: where there is a field for it, by going there. */
    public void onFilter(Runnable asker) {
        filter = asker;
    }

    /** Lets the user say which rows are to be seen, where there is a field for it. */
    public void askFilter() {
        filter.run();
    }

    /** Calls the listener with a column whose header was dragged, as x, and the column that it was dropped on, as y. */
    public void onHeaderDrag(Consumer<Point> listener) {
        dragListeners.add(listener);
    }

    void tellHeaderDragged(int from, int to) {
        dragListeners.forEach(l -> l.accept(new Point(from, to)));
    }

    /** Column whose header is at a place of the grid, or -1. */
    public int headerAt(Point place) {
        return place.y < geometry.headerHeight() ? geometry.columnAt(place.x) : -1;
    }

    void tellRefusal(CellRefusal refusal) {
        refusalListeners.forEach(l -> l.accept(refusal));
    }

    void tellOpened(int row, int column) {
        openListeners.forEach(l -> l.accept(new Point(column, row)));
    }

    /** Moves the focus to a cell and brings it into view. */
    public void goTo(int row, int column) {
        selection.moveTo(Math.min(row, shownRows() - 1), Math.min(column, model.columns() - 1), false);
    }

    /** What a screen reader says of a cell: what it is, what it holds and what is wrong with it. */
    public String words(int row, int column) {
        return access.words(row, column);
    }

    /** Place of a cell in the grid. */
    public Rectangle cellBounds(int row, int column) {
        return geometry.cell(row, column);
    }

    /** Moves the focus to the cell that stands for something, in its row or wherever that row is now; false when there is none. */
    boolean goToCell(int row, int column, Object subject) {
        OptionalInt place = IntStream.concat(IntStream.of(row), IntStream.range(0, model.rows()))
                .filter(r -> r < model.rows() && Objects.equals(model.subject(r, column), subject)).findFirst();
        place.ifPresent(r -> goTo(r, column));
        return place.isPresent();
    }

    /** Enters a block of texts from a cell on; false when nothing is entered, which is said at the cell. */
    boolean enter(int row, int column, List<List<String>> block) {
        refusals.forget();
        try {
            int texts = Blocks.texts(block, model.rows() - row);
            List<CellRefusal> refused = model.put(row, column, block);
            tellRefusal(null);
            refresh();
            refusals.list(refused, texts);
            return true;
        } catch (CellRefusal refusal) {
            tellRefusal(refusal);
            refusals.say(refusal);
            return false;
        }
    }

    /** Why the cell refused what was pasted last; blank where it did not. */
    public String refusal() {
        return refusals.said();
    }

    void toggleSort(int column) {
        if (!model.isSortable()) {
            return;
        }
        sort(new SortOrder(model.columnName(column), sortedColumn() != column || !isSortedUp()));
    }

    /** Sorts the rows. */
    public void sort(SortOrder by) {
        order = by;
        rearrange(this::sort);
    }

    private void sort() {
        int column = sortedColumn();
        if (column >= 0 && model.isSortable()) {
            model.sort(column, order.ascending());
        }
    }

    /**
     * Lets rows get other places, go or come back. Those that somebody has selected stay selected and come into sight; else the first rows are
     * shown.
     */
    public void rearrange(Runnable change) {
        entry.cancel();
        SelectedRows selected = new SelectedRows(this);
        boolean kept = selection.isChosen() || rowMarked;
        change.run();
        refresh();
        if (!kept || !selected.selectAgain()) {
            selection.begin(selection.column());
        }
    }

    /** Copies the selected cells; more than one go with their headers. */
    public void copy() {
        clipboard.copy(!selection.range().isSingle());
    }

    /** Copies the selected cells without headers. */
    public void copyBare() {
        clipboard.copy(false);
    }

    /** Copies the selected cells without thousands separators; more than one go with their headers. */
    public void copyPlain() {
        clipboard.copyPlain();
    }

    /** Copies the selected cells and empties them. */
    public void cut() {
        clipboard.copy(false);
        clear();
    }

    /** Enters the block on the clipboard from the first selected cell on. */
    public void paste() {
        clipboard.paste();
    }

    /** Selects all cells. */
    public void selectAll() {
        selection.select(new CellRange(0, 0, Math.max(0, model.rows() - 1), model.columns() - 1));
    }

    /** Empties the selected cells. */
    public void clear() {
        CellRange range = selection.range();
        model.clear(range.top(), range.bottom(), IntStream.rangeClosed(range.left(), range.right()).boxed().toList());
        refresh();
    }

    /** Repeats the first selected row in the selected rows below it. */
    public void fillDown() {
        clipboard.fillDown();
    }

    private void selectionMoved() {
        scrolling.reveal(selection.row(), selection.column());
        redraw();
    }

    private void resized(Event event) {
        if (model.stretchesLast() || model.frozenColumns() > 1 && !model.isCompact()) {
            geometry.measure();
        }
        scrolling.update();
        entry.place();
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int width = geometry.contentWidth() + 2;
        int height = geometry.headerHeight() + shownRows() * geometry.rowHeight() + 2;
        return new Point(widthHint == SWT.DEFAULT ? width : widthHint, heightHint == SWT.DEFAULT ? height : heightHint);
    }
}
