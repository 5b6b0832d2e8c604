package org.amberyard.workbench.documents;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.report.papers.Submission;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Writes documents into a folder beside the window; while it does so, Cancel stops it and nothing is left half done. */
public final class DocumentsDialog extends SizedDialog {
    private static final Point SIZE = new Point(640, 720);
    private static final int PERCENT = 100;

    private static final int FREEZE_ID = IDialogConstants.CLIENT_ID;

    private final StudyResult result;
    private final Study study;
    private final StudyFacts facts;
    private final Optional<WhatIfResults> whatIf;
    private final Choices choices;
    private final Supplier<Optional<Path>> chooser;
    private String cautions;
    private DocumentsForm form;
    private Text words;
    private ProgressBar bar;
    private Job job;
    private BiConsumer<FigureSource, List<Map<String, String>>> whenGivenOut = (source, figures) -> {};

    /**
     * @param study the study of the results, which nobody edits while the dialog is open
     * @param whatIf what a what-if of the study as it is has found
     * @param choices what the views show, with which the dialog begins
     */
    public DocumentsDialog(Shell parent, StudyResult result, Study study, Optional<WhatIfResults> whatIf, Choices choices,
            Optional<Path> near) {
        this(parent, result, study, whatIf, choices, () -> askFolder(parent, near));
    }

    /** @param chooser answers the folder to write into */
    public DocumentsDialog(Shell parent, StudyResult result, Study study, Optional<WhatIfResults> whatIf, Choices choices,
            Supplier<Optional<Path>> chooser) {
        super(parent, Messages.Documents_title, SIZE);
        this.result = result;
        this.study = StudyFile.copy(study);
        this.facts = StudyFacts.of(study);
        this.whatIf = whatIf;
        this.choices = choices;
        this.chooser = chooser;
        this.cautions = PlaceholderUse.inEmissions(result) ? " " + Messages.Documents_placeholders : "";
    }

    /**
     * Tells of documents that have been written with narratives in them.
     *
     * @param listener hears whose figures they have, and for each narrative what stood in the place of each name
     */
    public void onGivenOut(BiConsumer<FigureSource, List<Map<String, String>>> listener) {
        whenGivenOut = listener;
    }

    /** Says that a what-if was run, but of an earlier version of the study, so that documents do without it. */
    public void leaveOutWhatIf() {
        cautions += " " + Messages.Documents_whatIfLeft;
    }

    private static Optional<Path> askFolder(Shell shell, Optional<Path> near) {
        DirectoryDialog dialog = new DirectoryDialog(shell, SWT.SAVE);
        dialog.setText(Messages.Documents_title);
        dialog.setMessage(Messages.Documents_message);
        near.ifPresent(f -> dialog.setFilterPath(f.toString()));
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        form = new DocumentsForm(area, result, choices, this::show);
        words = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(SIZE.x / 2, SWT.DEFAULT).applyTo(words);
        words.setText(Messages.Documents_hint);
        bar = new ProgressBar(area, SWT.HORIZONTAL);
        bar.setMaximum(PERCENT);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Documents_write, true);
        createButton(parent, FREEZE_ID, Messages.Documents_freeze, false).setToolTipText(Messages.Documents_freeze_tip);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, false);
        show();
    }

    private void show() {
        boolean complete = form.isComplete();
        say(complete ? Messages.Documents_hint + cautions : Messages.Documents_nothing);
        allow(complete && job == null);
    }

    private void allow(boolean writing) {
        getButton(IDialogConstants.OK_ID).setEnabled(writing);
        getButton(FREEZE_ID).setEnabled(writing);
    }

    private void say(String text) {
        words.setText(text);
        words.requestLayout();
    }

    @Override
    protected void okPressed() {
        chooser.get().ifPresent(f -> write(f, (in, wanted, folder, progress) -> written(
                DocumentFolder.write(in, wanted, folder, progress).size(), folder)));
    }

    private static String written(int files, Path folder) {
        return NLS.bind(files == 1 ? Messages.Documents_doneOne : Messages.Documents_done, files, folder);
    }

    @Override
    protected void buttonPressed(int button) {
        if (button == FREEZE_ID) {
            chooser.get().ifPresent(f -> write(f, this::freeze));
        } else {
            super.buttonPressed(button);
        }
    }

    private String freeze(PaperInput in, DocumentFolder.Wanted wanted, Path folder, Progress progress) throws IOException {
        LocalDate frozenOn = in.choices().dated().map(LocalDate::parse).orElseGet(LocalDate::now);
        Submission.Frozen frozen = Submission.freeze(in, study, wanted, frozenOn, folder, progress);
        return NLS.bind(Messages.Documents_frozen, new Object[] {frozen.files().size(), folder, frozen.sum()});
    }

    private void write(Path folder, WritingJob.Writing writing) {
        PaperInput in = new PaperInput(result, form.plan(), facts, form.choices(), whatIf);
        job = new WritingJob(in, form.wanted(), folder, writing, new Owner(words), new Ending(FigureSource.of(in)), this::tell);
        form.setEnabled(false);
        allow(false);
        getButton(IDialogConstants.CANCEL_ID).setText(IDialogConstants.CANCEL_LABEL);
        tell(0);
        job.schedule();
    }

    /** Says what has become of documents. */
    private final class Ending implements WritingJob.Listener {
        private final FigureSource source;

        Ending(FigureSource source) {
            this.source = source;
        }

        @Override
        public void written(String what, List<Map<String, String>> given) {
            finish(what + cautions);
            whenGivenOut.accept(source, given);
        }

        @Override
        public void stopped() {
            finish(Messages.Documents_stopped);
        }

        @Override
        public void failed(String why) {
            finish(Messages.Documents_failed);
            MessageDialog.openError(getShell(), Messages.Documents_failed, why);
        }
    }

    private void tell(double share) {
        int percent = (int) Math.round(PERCENT * share);
        bar.setSelection(percent);
        say(NLS.bind(Messages.Documents_working, percent));
    }

    private void finish(String text) {
        job = null;
        form.setEnabled(true);
        bar.setSelection(0);
        getButton(IDialogConstants.CANCEL_ID).setText(IDialogConstants.CLOSE_LABEL);
        show();
        say(text);
    }

    /** The first press stops what is being written, the next one closes. A job that has not begun yet says nothing of its end. */
    @Override
    protected void cancelPressed() {
        if (job == null) {
            super.cancelPressed();
        } else if (job.cancel()) {
            finish(Messages.Documents_stopped);
        }
    }

    @Override
    public boolean close() {
        if (job != null) {
            job.cancel();
        }
        return super.close();
    }
}
