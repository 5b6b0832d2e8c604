package org.amberyard.workbench.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetAmendments;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetKind;
import org.amberyard.exchange.sheet.SheetsTogether;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

/** Shows how a file of tables is read and what it would do to the study; imports it all or not at all, as one edit. */
public final class TableDialog extends TitleAreaDialog {
    private static final Point SIZE = new Point(960, 700);
    private static final int FOLLOW_MS = 150;

    private final StudySession session;
    private final TableChoice choice;
    private LatestWork work;
    private SheetImport.Preview found;
    private Combo sheets;
    private Combo kinds;
    private Combo headerRows;
    private Button together;
    private Button addTypes;
    private TabFolder read;
    private ColumnTable columns;
    private CellTable cells;
    private ProgressBar bar;
    private Label tally;
    private OutcomeTabs outcome;

    /** @param sheets sheets of the file */
    public TableDialog(Shell parent, StudySession session, List<Sheet> sheets) {
        super(parent);
        this.session = session;
        this.choice = new TableChoice(session.study(), sheets);
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
        read = new TabFolder(sash, SWT.NONE);
        columns = new ColumnTable(read, choice, this::look);
        tab(Messages.Table_columns, columns.control());
        cells = new CellTable(read, this::amend);
        tab(Messages.Table_cells, cells.control());
        outcome = new OutcomeTabs(sash, this::reveal);
        sash.setWeights(3, 2);
        tally = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 0).applyTo(tally);
        bar = new ProgressBar(area, SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 0).applyTo(bar);
        work = new LatestWork(parent.getDisplay());
        return area;
    }

    /** Tries again with other cells. */
    private void amend(SheetAmendments amended) {
        choice.amend(amended);
        look();
    }

    private void tab(String title, Control control) {
        TabItem tab = new TabItem(read, SWT.NONE);
        tab.setText(title);
        tab.setControl(control);
    }

    /** Leads from a problem to its cell. */
    private void reveal(ImportProblem problem) {
        if (together.getSelection() && !problem.file().equals(choice.made().sheet().place())) {
            sheets.select(choice.turnTo(problem));
            fillChoices();
            columns.refresh();
            showCells();
        }
        if (cells.reveal(problem)) {
            read.setSelection(1);
        }
    }

    private void createChoices(Composite area) {
        Composite choices = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(choices);
        GridLayoutFactory.fillDefaults().numColumns(6).margins(8, 6).spacing(8, 4).applyTo(choices);
        sheets = combo(choices, Messages.Table_sheet, choice.sheets().stream().map(s -> s.name().isEmpty() ? s.file() : s.name()).toList());
        sheets.select(0);
        kinds = combo(choices, Messages.Table_kind, SheetKind.ALL.stream().map(SheetKind::label).map(Words::say).toList());
        headerRows = combo(choices, Messages.Table_headerRow, List.of());
        sheets.addListener(SWT.Selection, e -> find(sheet(sheets.getSelectionIndex())));
        kinds.addListener(SWT.Selection, e -> find(kind(SheetKind.ALL.get(kinds.getSelectionIndex()))));
        headerRows.addListener(SWT.Selection, e -> find(headerRow(Integer.parseInt(headerRows.getText()))));
        together = new Button(choices, SWT.CHECK);
        GridDataFactory.fillDefaults().span(6, 1).exclude(true).applyTo(together);
        together.setVisible(false);
        together.addListener(SWT.Selection, e -> look());
        addTypes = new Button(choices, SWT.CHECK);
        addTypes.setText(Messages.Table_addTypes);
        GridDataFactory.fillDefaults().span(6, 1).applyTo(addTypes);
        addTypes.addListener(SWT.Selection, e -> amend(choice.made().amended().addingTypes(addTypes.getSelection())));
    }

    private Function<ReadingProgress, SheetImport> sheet(int place) {
        return progress -> choice.sheet(place, progress);
    }

    private Function<ReadingProgress, SheetImport> kind(SheetKind kind) {
        return progress -> choice.kind(kind);
    }

    private Function<ReadingProgress, SheetImport> headerRow(int number) {
        return progress -> choice.headerRow(number);
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
        offerTogether();
        addTypes.setEnabled(made.kind().mayAddTypes());
        addTypes.setSelection(made.amended().addsTypes());
        List<String> rows = choice.rowNumbers().stream().limit(SheetImport.SEARCHED_ROWS).map(String::valueOf).toList();
        headerRows.setItems(rows.toArray(String[]::new));
        headerRows.select(rows.indexOf(String.valueOf(made.mapping().headerRow())));
    }

    /** Sheets of parts of the day are read in one go as long as nobody wants one alone. */
    private void offerTogether() {
        boolean possible = choice.together().isPresent();
        GridData place = (GridData) together.getLayoutData();
        if (possible && place.exclude) {
            together.setText(NLS.bind(Messages.Table_together, choice.together().get().names()));
            together.setSelection(true);
        }
        if (possible == place.exclude) {
            place.exclude = !possible;
            together.setVisible(possible);
            together.setSelection(possible);
            together.getParent().getParent().layout(true, true);
        }
    }

    /** The sheets that are read together, when they are to be. */
    private Optional<SheetsTogether> chosenTogether() {
        return together.getSelection() ? choice.together() : Optional.empty();
    }

    private String place() {
        return chosenTogether().map(t -> choice.made().sheet().file() + ", " + t.names()).orElse(choice.made().sheet().place());
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Table_import, true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        find(sheet(0));
    }

    /** Sets out to recognise the sheet; until then nothing about it can be chosen. */
    private void find(Function<ReadingProgress, SheetImport> search) {
        enableChoices(false);
        begin(Messages.Table_recognising);
        work.ask(search, this::found);
    }

    private void found(SheetImport made) {
        if (isOpen()) {
            choice.take(made);
            fillChoices();
            enableChoices(true);
            columns.refresh();
            look();
        }
    }

    private void enableChoices(boolean known) {
        sheets.setEnabled(known && choice.sheets().size() > 1);
        kinds.setEnabled(known);
        headerRows.setEnabled(known);
        columns.control().setEnabled(known);
    }

    /** Sets out to find what the import would do; until then it cannot be done. */
    private void look() {
        SheetImport made = choice.made();
        Optional<SheetsTogether> all = chosenTogether();
        setTitle(Words.say(made.kind().label()) + ": " + place());
        bar.setMaximum(made.sheet().rows().isEmpty() ? 1 : made.sheet().rows().get(made.sheet().rows().size() - 1).number());
        begin(Messages.Table_looking);
        work.ask(progress -> all.isPresent() ? all.get().preview(choice.study(), progress) : made.preview(choice.study(), progress), this::show);
    }

    private void begin(String words) {
        getButton(IDialogConstants.OK_ID).setEnabled(false);
        setMessage(words);
        bar.setSelection(0);
        bar.setVisible(true);
        follow();
    }

    /** Shows how many rows have been gone through, as long as there is work. */
    private void follow() {
        bar.getDisplay().timerExec(FOLLOW_MS, () -> {
            if (isOpen() && bar.getVisible()) {
                bar.setSelection((int) work.rows());
                follow();
            }
        });
    }

    private boolean isOpen() {
        return getShell() != null && !getShell().isDisposed();
    }

    private void show(SheetImport.Preview preview) {
        if (!isOpen()) {
            return;
        }
        bar.setVisible(false);
        found = preview;
        showCells();
        if (together.getSelection()) {
            outcome.show(preview, choice::sheetOf);
        } else {
            outcome.show(preview);
        }
        outcome.turnTo(preview);
        tally.setText(RowWords.of(preview.rows()));
        tally.getParent().layout();
        boolean sound = preview.problems().isEmpty();
        boolean some = !preview.changes().isEmpty();
        getButton(IDialogConstants.OK_ID).setEnabled(sound && some);
        if (!sound) {
            setMessage(NLS.bind(Messages.Table_refused, preview.problems().size()), IMessageProvider.ERROR);
        } else {
            setMessage(some ? Words.say(choice.made().kind().purpose()) : Messages.Table_nothingNew, IMessageProvider.INFORMATION);
        }
    }

    private void showCells() {
        String place = choice.made().sheet().place();
        cells.show(choice.made(), found.problems().stream().filter(p -> p.file().equals(place)).toList(), choice.study());
    }

    @Override
    protected void okPressed() {
        List<SheetImport> parts = chosenTogether().map(SheetsTogether::parts).orElse(List.of(choice.made()));
        parts.forEach(SheetMemories::keep);
        int mended = parts.stream().mapToInt(p -> p.amended().count()).sum();
        session.execute(new TableEdit(session.study(), mended == 0 ? place() : NLS.bind(Messages.Mend_done, place(), mended), found));
        super.okPressed();
    }

    @Override
    public boolean close() {
        work.cancel();
        if (choice.isCorrected()) {
            SheetMemories.keep(choice.made());
        }
        return super.close();
    }
}
