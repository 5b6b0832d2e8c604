package org.amberyard.workbench.plan;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A row of a form: its name, and beside it a line for its controls. */
final class FormRow {
    private FormRow() {
    }

    /** A row in an area of two columns. */
    static Composite of(Composite area, String label) {
        Label name = new Label(area, SWT.NONE);
        name.setText(label);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(name);
        Composite row = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().center(true).spacing(8).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        return row;
    }
}
