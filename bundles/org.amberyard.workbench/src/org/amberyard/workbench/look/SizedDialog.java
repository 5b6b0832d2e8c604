package org.amberyard.workbench.look;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Shell;

/** A dialog with a title that begins at a size and can be made larger. */
public abstract class SizedDialog extends Dialog {
    private final String title;
    private final Point size;

    /** @param size size to begin with, in pixels at 100 % */
    protected SizedDialog(Shell parent, String title, Point size) {
        super(parent);
        this.title = title;
        this.size = size;
    }

    @Override
    protected final void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected final boolean isResizable() {
        return true;
    }

    @Override
    protected final Point getInitialSize() {
        return size;
    }
}
