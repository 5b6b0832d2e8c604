package org.amberyard.workbench.documents;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.report.papers.SubmissionChanges;
import org.amberyard.workbench.look.SizedDialog;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Tells how the study differs from a frozen submission; the comparing goes on beside the window. */
public final class SubmissionDialog extends SizedDialog {
    private static final Point SIZE = new Point(860, 600);

    private final Path folder;
    private final Study study;
    private final StudyResult result;
    private Text words;

    /**
     * @param folder folder of the submission
     * @param study the study; a copy is compared, so it may be edited
     * @param result its results
     */
    public SubmissionDialog(Shell parent, Path folder, Study study, StudyResult result) {
        super(parent, Messages.Submission_title, SIZE);
        this.folder = folder;
        this.study = StudyFile.copy(study);
        this.result = result;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        words = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        words.setText(NLS.bind(Messages.Submission_working, folder));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(words);
        Job.create(Messages.Submission_title, (ICoreRunnable) monitor -> compare()).schedule();
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, true);
    }

    private void compare() {
        try {
            show(String.join(System.lineSeparator(), SubmissionChanges.of(folder, study, result).lines()));
        } catch (FileSystemException e) {
            show(NLS.bind(Messages.Submission_failed, folder, e.getReason() == null ? e.getMessage() : e.getReason()));
        } catch (IOException e) {
            show(NLS.bind(Messages.Submission_failed, folder, e.getMessage()));
        }
    }

    private void show(String text) {
        if (!words.isDisposed()) {
            words.getDisplay().asyncExec(() -> {
                if (!words.isDisposed()) {
                    words.setText(text);
                }
            });
        }
    }
}
