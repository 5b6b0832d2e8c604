package org.amberyard.workbench.views;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.CsvTables;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.columns.ArrangedModel;
import org.amberyard.workbench.columns.ColumnMenu;
import org.amberyard.workbench.fields.CellMenu;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.grid.SortOrder;
import org.amberyard.workbench.layout.TableMemory;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.session.WhatIfStanding;
import org.amberyard.workbench.work.WorkStrip;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.part.ViewPart;

/** The figures behind the charts, table by table. */
public final class ResultsView extends ViewPart {

    /** Its id. */
    private static final String ID = "org.amberyard.workbench.results";
    private static final int COLUMNS = 4;
    private static final int SEARCH_WIDTH = 150;
    private static final GridModel EMPTY = new NoTable();

    private TableChooser chooser;
    private Button save;
    private Text search;
    private Label state;
    private Grid grid;
    private final AskedCell asked = new AskedCell();
    /** The rows on show, or null. */
    private ResultModel rows;
    private TableWork work;
    private WhatIfTableWork whatIf;
    private WorkStrip strip;
    private Optional<ResultTable> shown = Optional.empty();
    private StudyResult shownResult;
    private UnitSystem shownUnits;
    /** Name of the table whose rows are on show; blank for none. */
    private String arranged = "";
    /** How the rows of tables were sorted, by their names. */
    private final Map<String, SortOrder> orders = new HashMap<>();
    private boolean lastTable;
    private boolean outdated;
    private boolean hidden;

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(6, 4).spacing(8, 4).applyTo(area);
        chooser = new TableChooser(area, new TableList(List.of()).first(TableMemory.wanted(getSite().getPage())), this::choose);
        save = new Button(area, SWT.PUSH);
        save.setText(Messages.Results_save);
        save.addListener(SWT.Selection, e -> saveTable());
        search = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(Messages.Results_rows);
        search.setToolTipText(Messages.Results_rows_tip);
        search.addListener(SWT.Modify, e -> filter());
        GridDataFactory.fillDefaults().hint(SEARCH_WIDTH, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(search);
        state = new Label(area, SWT.NONE);
        state.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(state);
        grid = new Grid(area, EMPTY);
        grid.selection().onMove(this::ask);
        grid.onFilter(search::setFocus);
        ColumnMenu.on(grid);
        CellMenu menu = CellMenu.ofReading(grid);
        menu.add(Messages.Menu_why, () -> WhyView.show(getSite().getPage()));
        menu.add(ColumnMenu.TEXT, ColumnMenu::choose);
        grid.onOpen(cell -> WhyView.show(getSite().getPage()));
        GridDataFactory.fillDefaults().grab(true, true).span(COLUMNS, 1).hint(200, 60).applyTo(grid);
        grid.addListener(SWT.Paint, e -> seen());
        getSite().setSelectionProvider(asked);
        strip = new WorkStrip(area, COLUMNS, this::stop, this::showTable);
        work = new TableWork(grid, new Tables());
        whatIf = new WhatIfTableWork(grid, this::whatIfMade);
        PerspectiveAdapter layouts = new PerspectiveAdapter() {
            @Override
            public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
                showWanted();
            }
        };
        getSite().getWorkbenchWindow().addPerspectiveListener(layouts);
        grid.addListener(SWT.Dispose, e -> getSite().getWorkbenchWindow().removePerspectiveListener(layouts));
        ActiveSession.here().follow(grid, this::update);
    }

    /** Shows a table of results by its name, as if the user chose it. */
    public static void show(IWorkbenchPage page, String table) {
        try {
            ((ResultsView) page.showView(ID)).chooser.choose(table);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    private void choose(String table) {
        TableMemory.keep(getSite().getPage(), table);
        showAnother();
    }

    /** Shows the table that was chosen in the layout that is open, else the one that fits it, of those that there are. */
    private void showWanted() {
        String wanted = chooser.tables().first(TableMemory.wanted(getSite().getPage()));
        if (!wanted.equals(chooser.name())) {
            chooser.show(wanted);
            showAnother();
        }
    }

    /** Other tables of a what-if are there, or none. */
    private void whatIfMade(List<ResultTable> tables) {
        TableList list = new TableList(tables);
        boolean ofWhatIf = isOfWhatIf();
        List<String> names = new ArrayList<>(List.of(chooser.name()));
        names.addAll(TableMemory.wanted(getSite().getPage()));
        chooser.show(list, list.first(names));
        if (ofWhatIf) {
            showTable();
        }
        showWanted();
    }

    /** Tells those who explain figures which one is in focus: of the table on show, while another may have been chosen already. */
    private void ask() {
        Optional<StudySession> session = ActiveSession.here().get();
        int row = grid.selection().row();
        int column = grid.selection().column();
        boolean cell = shown.filter(t -> !isOfWhatIf()).isPresent() && session.isPresent() && grid.model() instanceof ArrangedModel && row < rows.rows()
                && column < grid.model().columns();
        asked.setSelection(cell ? new StructuredSelection(new CellQuestion(session.get().study(), shownResult, ResultTables.place(shown.get().name()),
                rows.row(row), ((ArrangedModel) grid.model()).source(column))) : StructuredSelection.EMPTY);
    }

    private void filter() {
        if (rows != null) {
            grid.rearrange(() -> rows.filter(search.getText()));
        }
    }

    /** Shows what is made. */
    private final class Tables implements TableWork.Listener {
        @Override
        public void at(double share) {
            if (lastTable) {
                lastTable = false;
                arrangeHeadings(ResultTables.headings(ResultTables.place(chooser.name()), shownResult, shownUnits));
            }
            strip.at(share);
        }

        @Override
        public void done(ResultTable table) {
            strip.done();
            showMade(table);
        }

        @Override
        public void failed(String why) {
            strip.done();
            empty();
            state.setText(NLS.bind(Messages.Results_failed, why));
        }
    }

    private void showMade(ResultTable table) {
        shown = Optional.of(table);
        save.setEnabled(true);
        lastTable = true;
        arrange(table.marked());
        grid.setFaded(isOutdated());
    }

    private boolean isOfWhatIf() {
        return chooser.tables().ofWhatIf(chooser.name()).isPresent();
    }

    private boolean isOutdated() {
        return isOfWhatIf() ? ActiveSession.here().get().filter(s -> s.whatIf().isOutdated()).isPresent() : outdated;
    }

    /** Says how what is on show stands to the study as it is; a what-if has its draws and may be of an earlier version. */
    private void say(Optional<StudySession> session) {
        String words = session.map(s -> isOfWhatIf() ? WhatIfStanding.withDraws(s) : EvaluationWords.of(s)).orElse(Messages.Headline_none);
        state.setText(words.replace("&", "&&"));
        state.setToolTipText(words);
    }

    /** Shows a table with its columns as the user has arranged them, and its rows as they were sorted and filtered. */
    private void arrange(ResultTable table) {
        boolean again = table.name().equals(arranged);
        rows = new ResultModel(table);
        rows.filter(search.getText());
        ArrangedModel model = new ArrangedModel(rows, table.name());
        if (again) {
            grid.renewModel(model);
        } else {
            keepOrder();
            grid.setModel(model);
            arranged = table.name();
            Optional.ofNullable(orders.get(arranged)).ifPresent(grid::sort);
        }
    }

    private void keepOrder() {
        grid.order().ifPresent(order -> orders.put(arranged, order));
    }

    /** What is on show of another table goes; of the same table it stays, faded, until the next is there. */
    private void arrangeHeadings(ResultTable table) {
        if (table.name().equals(arranged)) {
            grid.setFaded(true);
        } else {
            arrange(table);
        }
    }

    private void stop() {
        work.stop();
        strip.stopped();
    }

    private void update(Optional<StudySession> session) {
        StudyResult result = session.flatMap(s -> s.evaluation().result()).orElse(null);
        UnitSystem units = session.map(s -> StudyUnits.of(s.study())).orElse(UnitSystem.US);
        whatIf.follow(session);
        say(session);
        outdated = session.filter(s -> s.evaluation().isOutdated()).isPresent();
        if (result == shownResult && units == shownUnits) {
            grid.setFaded(isOutdated() || grid.isFaded() && shown.isEmpty());
            return;
        }
        shownResult = result;
        shownUnits = units;
        chooser.setEnabled(result != null);
        showTable();
    }

    /**
     * The last table stays for the moment in which the next is made, but is not saved under its name. Nothing is made as long as
     * the view is hidden behind another.
     */
    private void showTable() {
        shown = Optional.empty();
        save.setEnabled(false);
        hidden = !grid.isVisible();
        if (shownResult == null || hidden) {
            work.stop();
            strip.done();
            rest();
        } else if (isOfWhatIf()) {
            work.stop();
            strip.done();
            showMade(chooser.tables().ofWhatIf(chooser.name()).orElseThrow());
        } else {
            // Until it is there, what the grid shows is of another table or of other results.
            lastTable = true;
            strip.done();
            work.make(ResultTables.place(chooser.name()), shownResult, shownUnits);
        }
    }

    /** What was looked for in one table is not looked for in the next, which has other rows than those that are still on show. */
    private void showAnother() {
        shown = Optional.empty();
        search.setText("");
        say(ActiveSession.here().get());
        showTable();
    }

    private void seen() {
        if (hidden) {
            showTable();
        }
    }

    /** What is on show stays for the time when it is seen again, as long as there are results. */
    private void rest() {
        if (shownResult == null) {
            empty();
        } else {
            grid.setFaded(true);
        }
    }

    private void empty() {
        lastTable = false;
        rows = null;
        keepOrder();
        arranged = "";
        grid.setModel(EMPTY);
    }

    private void saveTable() {
        ResultTable table = shown.orElseThrow();
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
        dialog.setFileName(table.name() + ".csv");
        dialog.setFilterExtensions(new String[] {"*.csv"});
        dialog.setOverwrite(true);
        ActiveSession.here().get().flatMap(StudySession::folder).ifPresent(dialog::setFilterPath);
        String name = dialog.open();
        if (name == null) {
            return;
        }
        try {
            Files.writeString(Path.of(name), CsvTables.document(table), StandardCharsets.UTF_8);
        } catch (IOException e) {
            MessageDialog.openError(getSite().getShell(), Messages.Results_saveFailed, e.getMessage());
        }
    }

    @Override
    public void setFocus() {
        grid.setFocus();
    }
}
