package org.amberyard.workbench.editor;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/**
 * Has in the folder of pages only the one on show and keeps the others in a window of their own that is never opened: the platform moves
 * the editor from layout to layout with all that is in it, widget by widget, and lets the window wait meanwhile.
 */
final class PageStage {
    private final CTabFolder folder;
    private final Shell behind;
    private final Map<CTabItem, Control> pages = new HashMap<>();
    private CTabItem shown;

    PageStage(CTabFolder folder) {
        this.folder = folder;
        this.behind = new Shell(folder.getDisplay(), SWT.NO_TRIM);
        folder.addListener(SWT.Dispose, e -> behind.dispose());
    }

    /** Takes up the page of a tab, made in the folder. */
    void add(CTabItem tab, Control page) {
        pages.put(tab, page);
    }

    /** Brings the page of a tab on and takes the one before away. */
    void show(CTabItem tab) {
        if (tab == shown) {
            return;
        }
        if (shown != null) {
            shown.setControl(null);
            pages.get(shown).setParent(behind);
        }
        shown = tab;
        pages.get(tab).setParent(folder);
        tab.setControl(pages.get(tab));
    }
}
