package org.amberyard.workbench.grid;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleTableCellAdapter;
import org.eclipse.swt.accessibility.AccessibleTableCellEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Tells screen readers of one cell of a grid. */
final class CellAccess {

    private final Grid grid;
    private final Point place;

    CellAccess(Grid grid, Point place) {
        this.grid = grid;
        this.place = place;
    }

    Accessible accessible() {
        Accessible cell = new Accessible(grid.getAccessible());
        cell.addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = grid.words(place.y, place.x);
            }
        });
        cell.addAccessibleControlListener(new ControlListener());
        cell.addAccessibleTableCellListener(new CellListener());
        return cell;
    }

    private final class ControlListener extends AccessibleControlAdapter {

        @Override
        public void getRole(AccessibleControlEvent event) {
            event.detail = ACC.ROLE_TABLECELL;
        }

        @Override
        public void getLocation(AccessibleControlEvent event) {
            Rectangle cell = grid.getDisplay().map(grid, null, grid.cellBounds(place.y, place.x));
            event.x = cell.x;
            event.y = cell.y;
            event.width = cell.width;
            event.height = cell.height;
        }
    }

    private final class CellListener extends AccessibleTableCellAdapter {

        @Override
        public void getRowIndex(AccessibleTableCellEvent event) {
            event.index = place.y;
        }

        @Override
        public void getColumnIndex(AccessibleTableCellEvent event) {
            event.index = place.x;
        }

        @Override
        public void getTable(AccessibleTableCellEvent event) {
            event.accessible = grid.getAccessible();
        }

        @Override
        public void isSelected(AccessibleTableCellEvent event) {
            event.isSelected = grid.selection().range().contains(place.y, place.x);
        }
    }
}
