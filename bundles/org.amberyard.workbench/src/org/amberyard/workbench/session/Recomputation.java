package org.amberyard.workbench.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.ResultFindings;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyFindings;
import org.amberyard.workbench.language.Words;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/**
 * Keeps the results of a study in step with its edits. The study is compiled on the event thread, which alone may read
 * it, and evaluated in the background; a newer edit makes whatever is under way pointless.
 */
final class Recomputation {

    /** Edits that follow each other faster than this are evaluated together; the first of them is evaluated at once. */
    private static final int PAUSE_MS = 20;
    /** An edit after so long a time is taken for one by itself. */
    private static final long REST_MS = 200;
    private static final long NANOS_PER_MS = 1_000_000;
    /** Figures that are there sooner than this need not fade before. */
    private static final int LATE_MS = 300;
    /** How often it is told how far a long evaluation is. */
    private static final int TOLD_MS = 500;

    private final StudySession session;
    private final Display display;
    private final StudyEvaluator evaluator;
    private final Runnable compile = this::compile;
    private final Runnable late = this::late;
    private final NarrativeWatch narratives;
    private List<Finding> found = List.of();
    private EvaluationJob running;
    private long lastEditNanos = System.nanoTime();
    private boolean stopped;

    Recomputation(StudySession session, StudyEvaluator evaluator, Display display) {
        this.session = session;
        this.evaluator = evaluator;
        this.display = display;
        this.narratives = new NarrativeWatch(session.study(), display, session.figures(), this::publishAgain);
    }

    /** Evaluates at once; for a study that has just been opened, or whose evaluation was stopped. */
    void start() {
        display.timerExec(LATE_MS, late);
        display.asyncExec(compile);
    }

    void studyChanged() {
        supersede();
        narratives.stop();
        if (session.evaluation().phase() != Evaluation.Phase.COMPUTING) {
            display.timerExec(LATE_MS, late);
        }
        session.publish(session.evaluation().computing());
        long now = System.nanoTime();
        display.timerExec(now - lastEditNanos > NANOS_PER_MS * REST_MS ? 0 : PAUSE_MS, compile);
        lastEditNanos = now;
    }

    void stop() {
        stopped = true;
        supersede();
        narratives.stop();
        display.timerExec(-1, compile);
        display.timerExec(-1, late);
    }

    /** Stops what is under way; the results stay old until the next edit, or until they are asked for. */
    void halt() {
        if (session.evaluation().phase() == Evaluation.Phase.COMPUTING) {
            supersede();
            display.timerExec(-1, compile);
            session.publish(session.evaluation().stale(Messages.Evaluation_stopped, session.evaluation().findings()));
        }
    }

    private void late() {
        if (!stopped && session.evaluation().phase() == Evaluation.Phase.COMPUTING) {
            session.publish(session.evaluation().beLate(running == null ? 0 : running.done()));
            display.timerExec(TOLD_MS, late);
        }
    }

    private void supersede() {
        if (running != null) {
            running.cancel();
            running = null;
        }
    }

    private void compile() {
        if (stopped) {
            return;
        }
        List<Finding> findings = StudyFindings.of(session.study());
        if (!StudyFindings.canEvaluate(findings)) {
            session.publish(session.evaluation().stale(reason(findings), findings));
            return;
        }
        StudyInput input;
        try {
            input = StudyCompiler.compile(session.study());
        } catch (IllegalArgumentException e) {
            session.publish(session.evaluation().stale(NLS.bind(Messages.Evaluation_failed, e.getMessage()), findings));
            return;
        }
        session.publish(session.evaluation().computing());
        running = new EvaluationJob(evaluator, input, done -> display.asyncExec(() -> finished(done, findings)));
        running.schedule();
    }

    private static String reason(List<Finding> findings) {
        List<Finding> errors = findings.stream().filter(f -> f.severity() == Severity.ERROR).toList();
        String first = Words.say(errors.get(0).message());
        return errors.size() == 1 ? NLS.bind(Messages.Evaluation_finding, first)
                : NLS.bind(Messages.Evaluation_findings, first, errors.size() - 1);
    }

    private void finished(EvaluationJob job, List<Finding> findings) {
        if (job != running) {
            return;
        }
        running = null;
        if (job.failure().isPresent()) {
            String why = NLS.bind(Messages.Evaluation_failed, job.failure().get());
            session.publish(session.evaluation().stale(why, findings));
        } else {
            publish(job.result(), findings);
        }
    }

    private void publish(StudyResult result, List<Finding> findings) {
        found = new ArrayList<>(findings);
        found.addAll(ResultFindings.of(session.study(), result));
        narratives.look(result);
        publishFound(result);
    }

    /** Narratives were given out: the results are the same, and what was found in those texts may be others. */
    void narrativesKept() {
        session.evaluation().current().ifPresent(result -> {
            narratives.look(result);
            publishFound(result);
        });
    }

    /** Narratives may be found to be stale when their results are on show already. */
    private void publishAgain(StudyResult result) {
        if (session.evaluation().current().filter(r -> r == result).isPresent()) {
            publishFound(result);
        }
    }

    private void publishFound(StudyResult result) {
        List<Finding> all = new ArrayList<>(found);
        all.addAll(narratives.findings());
        session.publish(new Evaluation(Evaluation.Phase.CURRENT, Optional.of(result), "", all, OptionalDouble.empty()));
    }
}
