package org.amberyard.workbench.columns;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.look.MoveKeys;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Chooses and orders the columns of a table. */
final class ColumnsDialog extends SizedDialog {

    private static final Point SIZE = new Point(460, 480);
    private static final int MOST_FROZEN = 8;

    private final ArrangedModel model;
    private final Runnable changed;
    private Table table;
    private Spinner frozen;
    private boolean natural;

    /** @param changed is run after the columns have been arranged otherwise */
    ColumnsDialog(Shell parent, ArrangedModel model, Runnable changed) {
        super(parent, Messages.Columns_title, SIZE);
        this.model = model;
        this.changed = changed;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 10).applyTo(area);
        table = new Table(area, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setToolTipText(Messages.Columns_list_tip);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        MoveKeys.listen(table, this::move);
        table.addListener(SWT.Selection, e -> touched());
        createButtons(area);
        Composite line = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(line);
        new Label(line, SWT.NONE).setText(Messages.Columns_freeze);
        frozen = new Spinner(line, SWT.BORDER);
        frozen.setMaximum(MOST_FROZEN);
        fill(model.arrangement());
        frozen.addListener(SWT.Modify, e -> natural = false);
        return area;
    }

    private void createButtons(Composite area) {
        Composite buttons = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(buttons);
        GridDataFactory.fillDefaults().applyTo(buttons);
        button(buttons, Messages.Columns_up, () -> move(-1));
        button(buttons, Messages.Columns_down, () -> move(1));
        button(buttons, Messages.Columns_all, this::showAll);
        button(buttons, Messages.Columns_reset, this::reset);
    }

    private static void button(Composite parent, String text, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, e -> action.run());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
    }

    private void fill(ColumnArrangement arrangement) {
        table.removeAll();
        for (String name : arrangement.order()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(model.headerOf(name));
            item.setData(name);
            item.setChecked(!arrangement.hidden().contains(name));
        }
        table.select(0);
        frozen.setSelection(arrangement.frozen() < 0 ? model.frozenColumns() : arrangement.frozen());
    }

    private void move(int step) {
        int from = table.getSelectionIndex();
        int to = from + step;
        if (from >= 0 && to >= 0 && to < table.getItemCount()) {
            String name = (String) table.getItem(from).getData();
            fill(chosen().move(name, (String) table.getItem(to).getData()));
            table.setSelection(to);
            touched();
        }
    }

    private void showAll() {
        fill(new ColumnArrangement(chosen().order(), Set.of(), frozen.getSelection()));
        touched();
    }

    private void reset() {
        fill(model.natural());
        natural = true;
        touchedOnly();
    }

    private void touched() {
        natural = false;
        touchedOnly();
    }

    /** A table without a column could not be brought back by its headers. */
    private void touchedOnly() {
        getButton(IDialogConstants.OK_ID).setEnabled(!chosen().shown().isEmpty());
    }

    private ColumnArrangement chosen() {
        List<TableItem> items = Arrays.asList(table.getItems());
        Set<String> hidden = items.stream().filter(i -> !i.getChecked()).map(i -> (String) i.getData()).collect(Collectors.toSet());
        return new ColumnArrangement(items.stream().map(i -> (String) i.getData()).toList(), hidden, frozen.getSelection());
    }

    @Override
    protected void okPressed() {
        if (natural) {
            model.reset();
        } else {
            model.arrange(chosen());
        }
        changed.run();
        super.okPressed();
    }
}
