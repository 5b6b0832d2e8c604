package org.amberyard.workbench.grid;

import java.util.List;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.SizedDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Lists the cells of a block that were refused, beside the table, which stays usable: a line leads to its cell. */
final class RefusedDialog extends SizedDialog {
    private static final Point SIZE = new Point(760, 400);
    /** Lines for a reason that may be too long for the list. */
    private static final int WHOLE_LINES = 3;
    private static final int COPY_ID = IDialogConstants.CLIENT_ID;
    private static final int GO_ID = IDialogConstants.CLIENT_ID + 1;

    private final Grid table;
    private final RefusedModel model;
    private final String words;
    private Grid list;

    /** @param entered number of texts of the block */
    RefusedDialog(Grid table, List<CellRefusal> refused, int entered) {
        super(table.getShell(), Messages.Refused_title, SIZE);
        this.table = table;
        this.model = new RefusedModel(table.model(), refused);
        this.words = RefusedWords.of(refused, entered);
        setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MODELESS);
        setBlockOnOpen(false);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Label told = new Label(area, SWT.WRAP);
        told.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).hint(SIZE.x / 2, SWT.DEFAULT).applyTo(told);
        list = new Grid(area, model);
        list.setBackground(Palette.PAPER.color());
        list.markRow();
        list.onOpen(place -> goTo(place.y));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
        Text whole = new Text(area, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).hint(SIZE.x / 2, WHOLE_LINES * whole.getLineHeight()).applyTo(whole);
        whole.setText(model.refusal(0).getMessage());
        list.selection().onMove(() -> {
            whole.setText(model.refusal(list.selection().row()).getMessage());
            allowGoing();
        });
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, GO_ID, Messages.Refused_go, false);
        createButton(parent, COPY_ID, Messages.Refused_copy, false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, true);
        allowGoing();
        list.setFocus();
    }

    /** A line of the block that has not become a row leads nowhere. */
    private void allowGoing() {
        getButton(GO_ID).setEnabled(model.refusal(list.selection().row()).hasRow());
    }

    @Override
    protected void buttonPressed(int button) {
        if (button == COPY_ID) {
            list.selectAll();
            list.copy();
        } else if (button == GO_ID) {
            goTo(list.selection().row());
        } else {
            super.buttonPressed(button);
        }
    }

    private void goTo(int row) {
        CellRefusal refusal = model.refusal(row);
        if (!table.isDisposed() && refusal.hasRow() && table.come() && table.goToCell(refusal.row(), refusal.column(), model.of(row))) {
            table.getShell().forceActive();
            table.setFocus();
        }
    }
}
