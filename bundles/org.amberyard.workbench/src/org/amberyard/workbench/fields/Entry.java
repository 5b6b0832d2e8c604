package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.osgi.util.NLS;

/** Values gathered for several cells and then entered as one step. */
final class Entry {

    private final StudySession session;
    private final List<Command> additions = new ArrayList<>();
    private final List<Command> changes = new ArrayList<>();
    private String lastField = "";

    Entry(StudySession session) {
        this.session = session;
    }

    /** Notes a value for a cell; nothing to do when it has it already. */
    void set(EObject element, Field field, Object value) {
        if (!Objects.equals(element.eGet(field.feature()), value)) {
            changes.add(new SetCommand(session.domain(), element, field.feature(), value));
            lastField = field.label();
        }
    }

    void add(Command addition) {
        additions.add(addition);
    }

    /** What it is called: by what is added, else by the one field that changes, else by the number of cells. */
    private String label(String blockLabel) {
        if (!additions.isEmpty()) {
            return additions.size() == 1 ? additions.get(0).getLabel() : NLS.bind(Messages.Add_rows, additions.size());
        }
        return changes.size() == 1 ? NLS.bind(Messages.Change_field, lastField) : NLS.bind(blockLabel, changes.size());
    }

    /** Carries everything out under one label. */
    void execute(String blockLabel) {
        List<Command> all = new ArrayList<>(additions);
        all.addAll(changes);
        if (all.isEmpty()) {
            return;
        }
        String label = label(blockLabel);
        session.execute(new CompoundCommand(label, label, all));
    }
}
