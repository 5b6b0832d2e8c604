package org.amberyard.workbench.documents;

import java.util.Arrays;
import java.util.List;
import org.amberyard.report.papers.GrantTable;
import org.amberyard.workbench.look.MoveKeys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The tables of the grant set: which are written, in which order. */
final class TableOrder {
    private static final int HEIGHT = 210;

    private final Table table;

    /** @param changed is run whenever the choice changes */
    TableOrder(Composite parent, Runnable changed) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(area);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(area);
        table = new Table(area, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setToolTipText(Messages.Documents_tooltip);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, HEIGHT).applyTo(table);
        for (GrantTable of : GrantTable.values()) {
            TableItem item = new TableItem(table, SWT.NONE);
            show(item, of);
            item.setChecked(true);
        }
        table.select(0);
        table.addListener(SWT.Selection, e -> changed.run());
        MoveKeys.listen(table, this::move);
        Composite buttons = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(buttons);
        GridDataFactory.fillDefaults().applyTo(buttons);
        button(buttons, Messages.Documents_up, -1);
        button(buttons, Messages.Documents_down, 1);
    }

    private void button(Composite parent, String text, int step) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, e -> move(step));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
    }

    private static void show(TableItem item, GrantTable of) {
        item.setText(of.name() + "  " + of.title());
        item.setData(of);
    }

    private void move(int step) {
        int from = table.getSelectionIndex();
        int to = from + step;
        if (from < 0 || to < 0 || to >= table.getItemCount()) {
            return;
        }
        TableItem one = table.getItem(from);
        TableItem other = table.getItem(to);
        GrantTable of = (GrantTable) one.getData();
        boolean checked = one.getChecked();
        show(one, (GrantTable) other.getData());
        one.setChecked(other.getChecked());
        show(other, of);
        other.setChecked(checked);
        table.setSelection(to);
    }

    /** The checked tables in their order. */
    List<GrantTable> chosen() {
        return Arrays.stream(table.getItems()).filter(TableItem::getChecked).map(i -> (GrantTable) i.getData()).toList();
    }
}
