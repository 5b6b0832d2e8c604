package org.amberyard.workbench.shop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.report.TaskSheet;
import org.amberyard.report.TaskSheetTable;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.views.ResultModel;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Shows the shop's tasks of a bus in a year with the cautions, saves them as a page or opens the page to print it. */
public final class TaskSheetDialog extends SizedDialog {
    private static final Point SIZE = new Point(900, 640);
    private static final int WORDS_HEIGHT = 210;
    private static final int SAVE = IDialogConstants.CLIENT_ID + 1;
    private static final int PRINT = IDialogConstants.CLIENT_ID + 2;

    private final StudyResult result;
    private final Choices choices;
    private final Function<String, Optional<Path>> chooser;
    private SheetForm form;
    private Text words;
    private Grid tasks;

    /** @param choices what the views show, with which the sheet begins */
    public TaskSheetDialog(Shell parent, StudyResult result, Choices choices) {
        this(parent, result, choices, name -> askFile(parent, name));
    }

    /** @param chooser answers the file to save in, from a name to offer */
    public TaskSheetDialog(Shell parent, StudyResult result, Choices choices, Function<String, Optional<Path>> chooser) {
        super(parent, Messages.Sheet_title, SIZE);
        this.result = result;
        this.choices = choices;
        this.chooser = chooser;
    }

    private static Optional<Path> askFile(Shell shell, String name) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(Messages.Sheet_title);
        dialog.setFileName(name);
        dialog.setFilterExtensions(new String[] {"*.html"});
        dialog.setFilterNames(new String[] {Messages.Sheet_fileKind});
        dialog.setOverwrite(true);
        ActiveSession.here().get().flatMap(StudySession::folder).ifPresent(dialog::setFilterPath);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        form = new SheetForm(area, result, choices, this::show);
        words = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, WORDS_HEIGHT).applyTo(words);
        tasks = new Grid(area, new ResultModel(TaskSheetTable.NONE));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tasks);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, SAVE, Messages.Sheet_save, true);
        createButton(parent, PRINT, Messages.Sheet_print, false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, false);
        show();
    }

    private void show() {
        Optional<UpkeepYear> chosen = form.chosen();
        words.setText(chosen.map(c -> TaskSheet.words(result.input(), c)).orElse(Messages.Sheet_noBus));
        tasks.setModel(new ResultModel(chosen.map(c -> TaskSheetTable.of(result.input(), c)).orElse(TaskSheetTable.NONE)));
        getButton(SAVE).setEnabled(chosen.isPresent());
        getButton(PRINT).setEnabled(chosen.isPresent());
    }

    @Override
    protected void buttonPressed(int button) {
        if (button == SAVE) {
            form.chosen().ifPresent(this::save);
        } else if (button == PRINT) {
            form.chosen().ifPresent(this::print);
        } else {
            super.buttonPressed(button);
        }
    }

    private void save(UpkeepYear chosen) {
        chooser.apply(TaskSheet.fileName(result.input(), chosen)).ifPresent(file -> write(file, chosen));
    }

    /** Printing is left to the program that shows pages: it knows the printers and the paper. */
    private void print(UpkeepYear chosen) {
        try {
            Path file = Files.createTempDirectory("task-sheet").resolve(TaskSheet.fileName(result.input(), chosen));
            if (write(file, chosen) && !Program.launch(file.toString())) {
                MessageDialog.openInformation(getShell(), Messages.Sheet_title, NLS.bind(Messages.Sheet_noPrograms, file));
            }
        } catch (IOException e) {
            MessageDialog.openError(getShell(), Messages.Sheet_failed, e.getMessage());
        }
    }

    private boolean write(Path file, UpkeepYear chosen) {
        try {
            Files.writeString(file, TaskSheet.html(result.input(), chosen), StandardCharsets.UTF_8);
            return true;
        } catch (IOException e) {
            MessageDialog.openError(getShell(), Messages.Sheet_failed, e.getMessage());
            return false;
        }
    }
}
