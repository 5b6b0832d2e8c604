package org.amberyard.workbench.handlers;

import java.util.Optional;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.HistoryStep;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.commands.ICommandService;

/** Keeps undo and redo in the menu at the edits that they concern. */
public final class ShownHistory {
    private final ICommandService commands;
    private Optional<HistoryStep> back = Optional.empty();
    private Optional<HistoryStep> forward = Optional.empty();

    private ShownHistory(ICommandService commands) {
        this.commands = commands;
    }

    /** Follows the study in use until a window is closed. */
    public static void follow(IWorkbenchWindow window) {
        ShownHistory shown = new ShownHistory(window.getService(ICommandService.class));
        ActiveSession.here().follow(window.getShell(), shown::update);
    }

    private void update(Optional<StudySession> session) {
        Optional<HistoryStep> undo = session.flatMap(s -> s.history().undoable());
        Optional<HistoryStep> redo = session.flatMap(s -> s.history().redoable());
        if (!undo.equals(back) || !redo.equals(forward)) {
            back = undo;
            forward = redo;
            commands.refreshElements(IWorkbenchCommandConstants.EDIT_UNDO, null);
            commands.refreshElements(IWorkbenchCommandConstants.EDIT_REDO, null);
        }
    }
}
