package org.amberyard.workbench.look;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Rows of texts in a table that asks for them as it shows them, so that thousands cost nothing. */
public final class TextRows {
    private TextRows() {
    }

    /** Shows rows, in place of those before, in a table made with {@link SWT#VIRTUAL}. */
    public static void show(Table table, List<String[]> rows) {
        for (Listener old : table.getListeners(SWT.SetData)) {
            table.removeListener(SWT.SetData, old);
        }
        table.addListener(SWT.SetData, e -> {
            TableItem item = (TableItem) e.item;
            item.setText(rows.get(table.indexOf(item)));
        });
        table.setItemCount(rows.size());
        table.clearAll();
    }
}
