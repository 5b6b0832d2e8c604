package org.amberyard.workbench.handlers;

import java.util.Optional;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;

/** Stops the evaluation of a study, or has it done again; which of the two stands behind the class name in the extension. */
public final class EvaluationHandler extends AbstractHandler implements IExecutableExtension {

    private Evaluation.Phase when;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        when = "stop".equals(data) ? Evaluation.Phase.COMPUTING : Evaluation.Phase.STALE;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(session().isPresent());
    }

    private Optional<StudySession> session() {
        return ActiveSession.here().get().filter(s -> s.evaluation().phase() == when);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        session().ifPresent(when == Evaluation.Phase.COMPUTING ? StudySession::stopEvaluation : StudySession::evaluateAgain);
        return null;
    }
}
