package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.study.InputSource;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.osgi.util.NLS;

/** Values gathered for several cells and then entered as one step. */
final class Entry {

    private final StudySession session;
    private final List<Command> additions = new ArrayList<>();
    private final List<Command> changes = new ArrayList<>();
    private final List<Command> notes = new ArrayList<>();
    private String lastField = "";
    private String cleared = "";

    Entry(StudySession session) {
        this.session = session;
    }

    /** Notes a value for a cell; nothing to do when it has it already. It is no default any more, as which it may be noted. */
    void set(EObject element, Field field, Object value) {
        change(element, field, value);
        if (element instanceof Sourced sourced) {
            SourceNotes.find(sourced, field.feature().getName()).filter(n -> InputSource.CLEARED.equals(n.getCitation()))
                    .ifPresent(note -> {
                        remove(sourced, note);
                        lastField = field.label();
                    });
        }
    }

    private void change(EObject element, Field field, Object value) {
        if (!Objects.equals(element.eGet(field.feature()), value)) {
            changes.add(new SetCommand(session.domain(), element, field.feature(), value));
            lastField = field.label();
        }
    }

    /** Clears a cell: what nobody has told is empty then, any other number is the default, and its source with it. */
    void clear(EObject element, Field field) {
        if (Objects.equals(element.eGet(field.feature()), field.cleared())) {
            return;
        }
        change(element, field, field.cleared());
        cleared = field.clearedWords();
        if (element instanceof Sourced sourced) {
            forget(sourced, field);
        }
    }

    /** The source of the value that has gone is not that of the default. */
    private void forget(Sourced element, Field field) {
        String name = field.feature().getName();
        SourceNotes.find(element, name).ifPresent(note -> remove(element, note));
        if (field.keepsNumber() && SourceNotes.find(element, SourceNotes.EVERY_FIELD).isPresent()) {
            notes.add(AddCommand.create(session.domain(), element, CommonPackage.Literals.SOURCED__SOURCES,
                    SourceNotes.of(name, Quality.ASSUMED, InputSource.CLEARED, null)));
        }
    }

    private void remove(Sourced element, SourceNote note) {
        notes.add(RemoveCommand.create(session.domain(), element, CommonPackage.Literals.SOURCED__SOURCES, note));
    }

    void add(Command addition) {
        additions.add(addition);
    }

    /** What it is called: by what is added, else by the one field that changes, else by the number of cells. */
    private String label(String blockLabel) {
        if (!additions.isEmpty()) {
            return additions.size() == 1 ? additions.get(0).getLabel() : NLS.bind(Messages.Add_rows, additions.size());
        }
        if (changes.size() == 1 && !cleared.isEmpty()) {
            return cleared;
        }
        return changes.size() <= 1 ? NLS.bind(Messages.Change_field, lastField) : NLS.bind(blockLabel, changes.size());
    }

    /** Carries everything out under one label. */
    void execute(String blockLabel) {
        List<Command> all = new ArrayList<>(additions);
        all.addAll(changes);
        all.addAll(notes);
        if (all.isEmpty()) {
            return;
        }
        String label = label(blockLabel);
        session.execute(new CompoundCommand(label, label, all));
    }
}
