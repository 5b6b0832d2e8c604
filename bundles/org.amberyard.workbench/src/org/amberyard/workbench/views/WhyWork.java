package org.amberyard.workbench.views;

import java.util.function.BiConsumer;
import org.amberyard.core.why.Derivation;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/**
 * Works out in the background how figures come about, since a present cost of a large fleet hangs on hundreds of thousands of figures; of
 * several questions only the last counts. Used on the event thread, on which it also answers.
 */
final class WhyWork extends Job {
    /** Less is not noticed. */
    private static final int PATIENCE_MS = 250;

    private final Owner owner;
    private final Runnable waiting;
    private final BiConsumer<CellQuestion, Derivation> told;
    private volatile CellQuestion wanted;

    /**
     * Work for a control, with which it ends.
     *
     * @param waiting run when an answer takes longer than a moment
     * @param told hears of the answer; a figure of which no derivation can be made has one without parts
     */
    WhyWork(Control owner, Runnable waiting, BiConsumer<CellQuestion, Derivation> told) {
        super(Messages.Why_making);
        this.owner = new Owner(owner);
        this.waiting = waiting;
        this.told = told;
        setSystem(true);
    }

    /** Asks a question. */
    void ask(CellQuestion question) {
        wanted = question;
        schedule();
        owner.display().timerExec(PATIENCE_MS, () -> {
            if (question == wanted && !owner.isGone()) {
                waiting.run();
            }
        });
    }

    /** Nothing is wanted any more. */
    void stop() {
        wanted = null;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        CellQuestion question = wanted;
        if (question != null) {
            Derivation why = why(question);
            owner.tell(() -> question == wanted, () -> {
                wanted = null;
                told.accept(question, why);
            });
        }
        return Status.OK_STATUS;
    }

    private static Derivation why(CellQuestion question) {
        try {
            return question.why();
        } catch (RuntimeException e) {
            // One figure that cannot be explained must not take the window down.
            ILog.of(WhyWork.class).error(e.getMessage(), e);
            return Derivation.of(String.valueOf(e.getMessage()), Double.NaN, "", "");
        }
    }
}
