package org.amberyard.workbench.handlers;

import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.study.Study;
import org.amberyard.study.begin.Answers;
import org.amberyard.study.begin.BeginStudy;
import org.amberyard.workbench.begin.NewStudyDialog;
import org.amberyard.workbench.preferences.NewStudySettings;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks what a new study begins with and opens it. */
public final class NewStudyHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        NewStudyDialog dialog = new NewStudyDialog(window.getShell());
        dialog.open();
        if (dialog.withoutAnswers()) {
            Study study = StudyDefaults.create();
            study.getSettings().setUnits(NewStudySettings.units());
            NewStudySettings.apply(study.getSettings());
            new StudyOpener(window.getActivePage()).openNew(study);
        }
        dialog.answers().ifPresent(answers -> begin(answers, window.getActivePage()));
        return null;
    }

    /** The pack is found by evaluations, which must not hold up the window. */
    private static void begin(Answers answers, IWorkbenchPage page) {
        Job job = Job.create(Messages.NewStudy_job, (ICoreRunnable) monitor -> {
            Study study = BeginStudy.of(answers);
            NewStudySettings.apply(study.getSettings());
            page.getWorkbenchWindow().getWorkbench().getDisplay().asyncExec(() -> new StudyOpener(page).openNew(study));
        });
        job.setUser(true);
        job.schedule();
    }
}
