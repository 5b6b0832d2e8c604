package org.amberyard.workbench.handlers;

import java.util.Optional;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.grid.CellEntry;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** What is being typed in the editor that a command is about. */
final class OpenEntry {

    private OpenEntry() {
    }

    static Optional<CellEntry> of(ExecutionEvent event) {
        return HandlerUtil.getActiveEditor(event) instanceof StudyEditor editor ? editor.openEntry() : Optional.empty();
    }

    /** Enters what is being typed; false when it is refused and the command must wait. */
    static boolean close(ExecutionEvent event) {
        return of(event).map(CellEntry::close).orElse(true);
    }
}
