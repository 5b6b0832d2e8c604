package org.amberyard.workbench.fields;

import org.amberyard.workbench.grid.Grid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** What can be done with the selected cells of a table, for the right mouse button. */
final class TableMenu {

    private final Menu menu;

    TableMenu(FeatureTable table) {
        Grid grid = table.grid();
        menu = new Menu(grid);
        item(Messages.Menu_cut, grid::cut);
        item(Messages.Menu_copy, grid::copy);
        item(Messages.Menu_copyBare, grid::copyBare);
        item(Messages.Menu_paste, grid::paste);
        new MenuItem(menu, SWT.SEPARATOR);
        item(Messages.Menu_fillDown, grid::fillDown);
        item(Messages.Menu_clear, grid::clear);
        if (table.canDeleteRows()) {
            new MenuItem(menu, SWT.SEPARATOR);
            item(Messages.Menu_delete, table::deleteElements);
        }
    }

    private void item(String text, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addListener(SWT.Selection, e -> action.run());
    }

    Menu menu() {
        return menu;
    }
}
