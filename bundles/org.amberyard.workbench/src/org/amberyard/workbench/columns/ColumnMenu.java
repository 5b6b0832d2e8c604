package org.amberyard.workbench.columns;

import java.util.Optional;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Lets the columns of a grid be arranged at their headers: by a menu, by dragging one to the place of another, in a dialog. */
public final class ColumnMenu {

    /** What the command that opens the dialog is called in a menu. */
    public static final String TEXT = Messages.Menu_choose;

    private final Grid grid;
    private Menu menu;

    private ColumnMenu(Grid grid) {
        this.grid = grid;
    }

    /** Arms a grid; its headers answer as long as it shows an {@link ArrangedModel}. */
    public static void on(Grid grid) {
        ColumnMenu menu = new ColumnMenu(grid);
        grid.addListener(SWT.MenuDetect, menu::asked);
        grid.onHeaderDrag(menu::dragged);
    }

    /** Opens the dialog of the grid that has the focus, if its columns can be arranged. */
    public static void choose() {
        Grid.inFocus().ifPresent(grid -> new ColumnMenu(grid).choose(grid));
    }

    private void choose(Grid at) {
        arranged().ifPresent(model -> new ColumnsDialog(at.getShell(), model, at::columnsChanged).open());
    }

    private Optional<ArrangedModel> arranged() {
        return Optional.of(grid.model()).filter(ArrangedModel.class::isInstance).map(ArrangedModel.class::cast);
    }

    private void dragged(Point columns) {
        arranged().ifPresent(model -> move(model, columns.x, columns.y));
    }

    private void move(ArrangedModel model, int from, int to) {
        arrange(model, model.arrangement().move(model.columnName(from), model.columnName(to)));
        grid.goTo(grid.selection().row(), to);
    }

    private void arrange(ArrangedModel model, ColumnArrangement next) {
        if (grid.entry().close()) {
            model.arrange(next);
            grid.columnsChanged();
        }
    }

    private void asked(Event event) {
        int column = grid.headerAt(grid.toControl(event.x, event.y));
        if (column >= 0 && arranged().isPresent()) {
            event.doit = false;
            open(arranged().orElseThrow(), column, new Point(event.x, event.y));
        }
    }

    private void open(ArrangedModel model, int column, Point at) {
        if (menu != null) {
            menu.dispose();
        }
        menu = new Menu(grid);
        String header = model.header(column);
        ColumnArrangement now = model.arrangement();
        String name = model.columnName(column);
        item(NLS.bind(Messages.Menu_hide, header), now.shown().size() > 1, () -> arrange(model, now.hide(name)));
        item(NLS.bind(Messages.Menu_left, header), column > 0, () -> move(model, column, column - 1));
        item(NLS.bind(Messages.Menu_right, header), column < model.columns() - 1, () -> move(model, column, column + 1));
        item(Messages.Menu_freeze, column < model.columns() - 1, () -> arrange(model, now.freeze(column + 1)));
        new MenuItem(menu, SWT.SEPARATOR);
        item(Messages.Menu_choose, true, () -> choose(grid));
        item(Messages.Menu_reset, true, () -> reset(model));
        menu.setLocation(at);
        menu.setVisible(true);
    }

    private void reset(ArrangedModel model) {
        if (grid.entry().close()) {
            model.reset();
            grid.columnsChanged();
        }
    }

    private void item(String text, boolean enabled, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.setEnabled(enabled);
        item.addListener(SWT.Selection, e -> action.run());
    }
}
