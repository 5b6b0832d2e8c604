package org.amberyard.workbench.handlers;

import java.util.Map;
import java.util.Optional;
import org.amberyard.workbench.grid.CellEntry;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.EditHistory;
import org.amberyard.workbench.session.HistoryStep;
import org.amberyard.workbench.session.StepWords;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Takes the last edit back, or carries it out again; which of the two stands behind the class name in the extension. */
public final class HistoryHandler extends AbstractHandler implements IExecutableExtension, IElementUpdater {

    /** Letters of an edit in the menu; all of them are in its tooltip. */
    private static final int LONGEST = 90;

    private boolean back;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        back = "undo".equals(data);
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(step().isPresent());
    }

    private Optional<HistoryStep> step() {
        return ActiveSession.here().get().map(StudySession::history).flatMap(back ? EditHistory::undoable : EditHistory::redoable);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        Optional<CellEntry> typing = OpenEntry.of(event);
        if (typing.isPresent() && back) {
            // What is being typed is the last thing that the user did.
            typing.get().cancel();
        } else if (typing.map(CellEntry::close).orElse(true)) {
            ActiveSession.here().get().ifPresent(back ? StudySession::undo : StudySession::redo);
        }
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        String named = back ? Messages.Undo_named : Messages.Redo_named;
        String nothing = back ? Messages.Undo_nothing : Messages.Redo_nothing;
        String told = back ? Messages.Undo_told : Messages.Redo_told;
        Optional<String> words = step().map(StepWords::brief);
        element.setText(words.map(w -> NLS.bind(named, shortened(w).replace("&", "&&"))).orElse(nothing));
        element.setTooltip(words.map(w -> NLS.bind(told, w)).orElse(null));
    }

    private static String shortened(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST - 1).strip() + "\u2026";
    }
}
