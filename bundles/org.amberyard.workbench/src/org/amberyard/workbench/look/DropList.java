package org.amberyard.workbench.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** Lists that drop down from a bar. */
public final class DropList {

    private DropList() {
    }

    /** A list to choose from. It has a ground of its own: one that takes that of its bar drops down without any, which is black. */
    public static Combo on(Composite bar) {
        Combo list = new Combo(bar, SWT.READ_ONLY);
        list.setBackground(Palette.PAPER.color());
        return list;
    }
}
