package org.amberyard.workbench.session;

import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;

/** All edits of a session in words, those that have been taken back included; goes back to any of them and forward again. */
public final class EditHistory {

    /** The stack of commands, which tells of what it has done only when the history knows it. */
    private static final class Stack extends BasicCommandStack {
        private boolean quiet;

        int done() {
            return top + 1;
        }

        @Override
        protected void notifyListeners() {
            if (!quiet) {
                super.notifyListeners();
            }
        }

        void quietly(Runnable work) {
            quiet = true;
            try {
                work.run();
            } finally {
                quiet = false;
            }
        }

        void move(int done) {
            while (done() > done && canUndo()) {
                undo();
            }
            while (done() < done && canRedo()) {
                redo();
            }
        }
    }

    private final Stack stack = new Stack();
    private final List<HistoryStep> steps = new ArrayList<>();
    private final List<KeptStep> keptSteps = new ArrayList<>();
    private final List<Keeping> kept = new ArrayList<>();
    private final ChangeLog log;
    private HistoryMove last;

    EditHistory(Study study) {
        log = new ChangeLog(study);
    }

    BasicCommandStack stack() {
        return stack;
    }

    /**
     * Carries out an edit. Edits that had been taken back are gone by it.
     *
     * @param label what the edit is called
     */
    void execute(Command command, String label) {
        int before = stack.done();
        log.begin();
        stack.quietly(() -> stack.execute(command));
        List<Change> changes = log.end();
        if (stack.done() > before) {
            steps.subList(before, steps.size()).clear();
            keptSteps.replaceAll(k -> k.behind(before));
            steps.add(new HistoryStep(now(), label, changes, log.count()));
            last = new HistoryMove(HistoryMove.Way.EDIT, steps.subList(before, before + 1));
        }
        stack.notifyListeners();
    }

    private static LocalTime now() {
        return LocalTime.now().truncatedTo(ChronoUnit.SECONDS);
    }

    /** Writes something into the study that is no edit: it stays whichever edits are taken back. */
    void keep(Keeping what) {
        what.write();
        kept.add(what);
        keptSteps.add(new KeptStep(now(), what.label(), done()));
    }

    /** What was kept with the study besides its edits, oldest first. */
    public List<KeptStep> kept() {
        return List.copyOf(keptSteps);
    }

    /** The edits, oldest first. */
    public List<HistoryStep> steps() {
        return List.copyOf(steps);
    }

    /** How many of the edits the study holds now; those behind them have been taken back. */
    public int done() {
        return stack.done();
    }

    /** Brings the study to where it was after a number of edits. */
    public void goTo(int done) {
        int before = stack.done();
        if (done != before) {
            stack.quietly(() -> stack.move(done));
            kept.forEach(Keeping::write);
            last = new HistoryMove(done < before ? HistoryMove.Way.UNDO : HistoryMove.Way.REDO,
                    steps.subList(Math.min(before, done), Math.max(before, done)));
            stack.notifyListeners();
        }
    }

    /** The edit that undo would take back. */
    public Optional<HistoryStep> undoable() {
        return done() > 0 ? Optional.of(steps.get(done() - 1)) : Optional.empty();
    }

    /** The edit that redo would make again. */
    public Optional<HistoryStep> redoable() {
        return done() < steps.size() ? Optional.of(steps.get(done())) : Optional.empty();
    }

    /** What has last happened to the study; empty before the first edit. */
    public Optional<HistoryMove> last() {
        return Optional.ofNullable(last);
    }
}
