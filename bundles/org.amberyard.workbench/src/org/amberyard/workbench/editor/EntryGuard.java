package org.amberyard.workbench.editor;

import java.util.Collection;
import java.util.Optional;
import java.util.function.Supplier;
import org.amberyard.workbench.grid.CellEntry;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Enters what is being typed before a mouse press anywhere in the window can change the table that it is typed into. A press
 * inside the editor waits while the entry is refused; the text stays open for as long.
 */
final class EntryGuard {

    private final Composite editor;
    private final Supplier<Collection<StudyPage>> pages;
    private final Listener pressed = this::pressed;

    EntryGuard(Composite editor, Supplier<Collection<StudyPage>> pages) {
        this.editor = editor;
        this.pages = pages;
    }

    void hook() {
        editor.getDisplay().addFilter(SWT.MouseDown, pressed);
        editor.addListener(SWT.Dispose, e -> editor.getDisplay().removeFilter(SWT.MouseDown, pressed));
    }

    private void pressed(Event event) {
        Optional<CellEntry> open = open();
        if (open.isEmpty() || !(event.widget instanceof Control control) || open.get().owns(control)) {
            return;
        }
        if (!open.get().close() && isInEditor(control)) {
            event.type = SWT.None;
            event.doit = false;
        }
    }

    /** The entry that is open on any page, if there is one. */
    Optional<CellEntry> open() {
        return pages.get().stream().flatMap(StudyPage::entries).filter(CellEntry::isOpen).findFirst();
    }

    private boolean isInEditor(Control control) {
        for (Control c = control; c != null; c = c.getParent()) {
            if (c == editor) {
                return true;
            }
        }
        return false;
    }
}
