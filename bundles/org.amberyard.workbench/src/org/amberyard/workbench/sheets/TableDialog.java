package org.amberyard.workbench.sheets;

import java.util.List;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetKind;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows how a file of tables is read and what it would do to the study; imports it all or not at all, as one edit. */
public final class TableDialog extends TitleAreaDialog {
    private static final Point SIZE = new Point(960, 680);

    private final StudySession session;
    private final TableChoice choice;
    private PreviewJob job;
    private SheetImport.Preview found;
    private Combo kinds;
    private Combo headerRows;
    private ColumnTable columns;
    private OutcomeTabs outcome;

    /** @param sheets sheets of the file */
    public TableDialog(Shell parent, StudySession session, List<Sheet> sheets) {
        super(parent);
        this.session = session;
        this.choice = new TableChoice(EcoreUtil.copy(session.study()), sheets);
        setHelpAvailable(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.Table_title);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        return SIZE;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        createChoices(area);
        SashForm sash = new SashForm(area, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).indent(8, 0).applyTo(sash);
        columns = new ColumnTable(sash, choice, this::look);
        outcome = new OutcomeTabs(sash);
        sash.setWeights(3, 2);
        job = new PreviewJob(choice.study(), parent.getDisplay(), this::show);
        return area;
    }

    private void createChoices(Composite area) {
        Composite bar = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        GridLayoutFactory.fillDefaults().numColumns(6).margins(8, 6).spacing(8, 4).applyTo(bar);
        Combo sheets = combo(bar, Messages.Table_sheet, choice.sheets().stream().map(s -> s.name().isEmpty() ? s.file() : s.name()).toList());
        sheets.setEnabled(choice.sheets().size() > 1);
        sheets.select(0);
        kinds = combo(bar, Messages.Table_kind, SheetKind.ALL.stream().map(SheetKind::label).toList());
        headerRows = combo(bar, Messages.Table_headerRow, List.of());
        fillChoices();
        sheets.addListener(SWT.Selection, e -> change(() -> choice.sheet(sheets.getSelectionIndex())));
        kinds.addListener(SWT.Selection, e -> change(() -> choice.kind(SheetKind.ALL.get(kinds.getSelectionIndex()))));
        headerRows.addListener(SWT.Selection, e -> change(() -> choice.headerRow(Integer.parseInt(headerRows.getText()))));
    }

    private static Combo combo(Composite bar, String label, List<String> words) {
        new Label(bar, SWT.NONE).setText(label);
        Combo combo = new Combo(bar, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(words.toArray(String[]::new));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        return combo;
    }

    private void fillChoices() {
        SheetImport made = choice.made();
        kinds.select(SheetKind.ALL.indexOf(made.kind()));
        List<String> rows = choice.rowNumbers().stream().limit(SheetImport.SEARCHED_ROWS).map(String::valueOf).toList();
        headerRows.setItems(rows.toArray(String[]::new));
        headerRows.select(rows.indexOf(String.valueOf(made.mapping().headerRow())));
    }

    private void change(Runnable change) {
        change.run();
        fillChoices();
        columns.refresh();
        look();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Table_import, true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        look();
    }

    /** Sets out to find what the import would do; until then it cannot be done. */
    private void look() {
        getButton(IDialogConstants.OK_ID).setEnabled(false);
        setTitle(choice.made().kind().label() + ": " + choice.made().sheet().place());
        setMessage(Messages.Table_looking);
        job.ask(choice.made());
    }

    private void show(SheetImport.Preview preview) {
        if (getShell() == null || getShell().isDisposed()) {
            return;
        }
        found = preview;
        outcome.show(preview);
        outcome.turnTo(preview);
        boolean sound = preview.problems().isEmpty();
        boolean some = !preview.changes().isEmpty();
        getButton(IDialogConstants.OK_ID).setEnabled(sound && some);
        if (!sound) {
            setMessage(NLS.bind(Messages.Table_refused, preview.problems().size()), IMessageProvider.ERROR);
        } else {
            setMessage(some ? choice.made().kind().purpose() : Messages.Table_nothingNew, IMessageProvider.INFORMATION);
        }
    }

    @Override
    protected void okPressed() {
        SheetImport made = choice.made();
        SheetMemories.keep(made);
        session.execute(new TableEdit(session.study(), made.sheet().place(), found));
        super.okPressed();
    }

    @Override
    public boolean close() {
        job.cancel();
        return super.close();
    }
}
