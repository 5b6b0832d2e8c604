package org.amberyard.workbench.handlers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.osgi.util.NLS;

/** Puts what an import changes into a study: first words on it, then one step that can be undone. */
public final class UpdateAddition {
    private static final int MOST_SHOWN = 12;

    private final StudySession session;
    private final StudyUpdate update;

    /** An update of the study of a session. */
    public UpdateAddition(StudySession session, StudyUpdate update) {
        this.session = session;
        this.update = update;
    }

    /** What was read and assumed, and what changes. */
    public String words(List<String> sentences) {
        return words(sentences, update.changes());
    }

    /** Sentences, and changes as far as a dialog has room. */
    static String words(List<String> sentences, List<String> changes) {
        List<String> lines = new ArrayList<>(sentences);
        lines.add("");
        lines.add(changes.isEmpty() ? Messages.Update_nothing : Messages.Update_changes);
        changes.stream().limit(MOST_SHOWN).forEach(lines::add);
        if (changes.size() > MOST_SHOWN) {
            lines.add(NLS.bind(Messages.Update_more, changes.size() - MOST_SHOWN));
        }
        return String.join("\n", lines);
    }

    /** Puts the values, under a name for undo. */
    public void add(String name) {
        CompoundCommand change = new CompoundCommand(name);
        update.puts().forEach(p -> change.append(SetCommand.create(session.domain(), p.element(), p.feature(), p.value())));
        session.execute(change);
    }
}
