package org.amberyard.workbench.documents;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.report.papers.SubmissionChanges;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Tells how the study differs from a frozen submission; the comparing goes on beside the window. */
public final class SubmissionDialog extends SizedDialog {
    private static final Point SIZE = new Point(860, 600);
    private static final int SUM_LIMIT = 200;

    private final Path folder;
    private final Study study;
    private final StudyResult result;
    private Text sum;
    private Text words;
    private int started;

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
        askSum(area);
        words = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(words);
        start();
        return area;
    }

    private void askSum(Composite area) {
        Composite line = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        new Label(line, SWT.NONE).setText(Messages.Submission_sum);
        sum = new Text(line, SWT.SINGLE | SWT.BORDER);
        sum.setTextLimit(SUM_LIMIT);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(sum);
        sum.addListener(SWT.DefaultSelection, e -> start());
        Button again = new Button(line, SWT.PUSH);
        again.setText(Messages.Submission_compare);
        again.addListener(SWT.Selection, e -> start());
    }

    /** Compares once more with the sum as it stands; what an earlier job still finds is not shown any more. */
    private void start() {
        String typed = sum.getText().strip();
        if (!typed.isEmpty() && !SubmissionChanges.isSum(typed)) {
            words.setText(Messages.Submission_noSum);
            return;
        }
        words.setText(NLS.bind(Messages.Submission_working, folder));
        Optional<String> expected = Optional.of(typed).filter(t -> !t.isEmpty());
        int asked = ++started;
        Owner owner = new Owner(words);
        Job.create(Messages.Submission_title, (ICoreRunnable) monitor -> {
            String text = compared(expected);
            owner.tell(() -> asked == started, () -> words.setText(text));
        }).schedule();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, true);
    }

    private String compared(Optional<String> expected) {
        try {
            return String.join(System.lineSeparator(), SubmissionChanges.of(folder, study, result, expected).lines());
        } catch (FileSystemException e) {
            return NLS.bind(Messages.Submission_failed, folder, e.getReason() == null ? e.getMessage() : e.getReason());
        } catch (IOException e) {
            return NLS.bind(Messages.Submission_failed, folder, e.getMessage());
        }
    }
}
