package org.amberyard.workbench.fields;

import org.amberyard.workbench.grid.Grid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** What can be done with the selected cells of a grid, for the right mouse button. */
public final class CellMenu {

    private final Menu menu;

    /** The menu of a grid, with what all grids can do. */
    public CellMenu(Grid grid) {
        menu = new Menu(grid);
        add(Messages.Menu_cut, grid::cut);
        add(Messages.Menu_copy, grid::copy);
        add(Messages.Menu_copyBare, grid::copyBare);
        add(Messages.Menu_copyPlain, grid::copyPlain);
        add(Messages.Menu_paste, grid::paste);
        addSeparator();
        add(Messages.Menu_fillDown, grid::fillDown);
        add(Messages.Menu_clear, grid::clear);
        grid.setMenu(menu);
    }

    private CellMenu(Menu menu) {
        this.menu = menu;
    }

    /** The menu of a grid that is only read. */
    public static CellMenu ofReading(Grid grid) {
        CellMenu menu = new CellMenu(new Menu(grid));
        menu.add(Messages.Menu_copy, grid::copy);
        menu.add(Messages.Menu_copyBare, grid::copyBare);
        menu.add(Messages.Menu_selectAll, grid::selectAll);
        grid.setMenu(menu.menu);
        return menu;
    }

    /** Adds a line between commands. */
    public void addSeparator() {
        new MenuItem(menu, SWT.SEPARATOR);
    }

    /** Adds a command. */
    public void add(String text, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addListener(SWT.Selection, e -> action.run());
    }
}
