package org.amberyard.workbench.sheets;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.sheet.SheetChange;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.TextRows;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;

/** What an import would do: problems that keep it out, what it changes, and how the sheet was read. */
final class OutcomeTabs {
    private static final int WHOLE_LINES = 3;

    private final TabFolder folder;
    private final Table problems;
    private final Table changes;
    private final Table notes;
    private List<ImportProblem> shown = List.of();
    private Function<ImportProblem, String> sheetOf = p -> "";
    private boolean several;

    /** @param problemPicked hears of the problem that somebody has picked */
    OutcomeTabs(Composite parent, Consumer<ImportProblem> problemPicked) {
        folder = new TabFolder(parent, SWT.NONE);
        problems = table(Messages.Table_row, Messages.Table_header, Messages.Table_problem);
        changes = table(Messages.Table_row, Messages.Table_element, Messages.Table_typed, Messages.Table_change);
        notes = table(Messages.Table_note);
        show(List.of(), List.of(), List.of());
        problems.addListener(SWT.Selection, e -> {
            if (e.item != null) {
                problemPicked.accept(shown.get(problems.getSelectionIndex()));
            }
        });
    }

    Control control() {
        return folder;
    }

    /** A table that makes its rows as they come into sight. */
    private Table table(String... heads) {
        Composite page = new Composite(folder, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
        Composite area = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        Table table = new Table(area, SWT.VIRTUAL | SWT.FULL_SELECTION);
        TableColumnLayout layout = new TableColumnLayout();
        area.setLayout(layout);
        for (int place = 0; place < heads.length; place++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(heads[place]);
            layout.setColumnData(column, new ColumnWeightData(place == heads.length - 1 ? 12 : place == 0 ? 1 : 3, 50));
        }
        table.setHeaderVisible(heads.length > 1);
        Text whole = new Text(page, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, WHOLE_LINES * whole.getLineHeight()).applyTo(whole);
        table.addListener(SWT.Selection, e -> whole.setText(whole(table)));
        new TabItem(folder, SWT.NONE).setControl(page);
        return table;
    }

    /** What the selected row says, which may be too long for its column. */
    private static String whole(Table table) {
        int row = table.getSelectionIndex();
        return row < 0 ? "" : table.getItem(row).getText(table.getColumnCount() - 1);
    }

    /** Shows what several sheets would do together; rows stand behind the name of their sheet. */
    void show(SheetImport.Preview preview, Function<ImportProblem, String> sheet) {
        several = true;
        sheetOf = sheet;
        fill(preview);
    }

    void show(SheetImport.Preview preview) {
        several = false;
        fill(preview);
    }

    private void fill(SheetImport.Preview preview) {
        widenRows(problems);
        widenRows(changes);
        show(preview.problems(), preview.problems().isEmpty() ? preview.changes() : List.of(), preview.remarks());
    }

    private void show(List<ImportProblem> wrong, List<SheetChange> changed, List<String> remarks) {
        shown = wrong;
        fill(problems, wrong.stream().map(this::cells).toList());
        fill(changes, changed.stream().map(this::cells).toList());
        fill(notes, remarks.stream().map(r -> new String[] {Words.say(r)}).toList());
        title(0, Messages.Table_problems, wrong.size());
        title(1, Messages.Table_changes, (int) changed.stream().filter(SheetChange::isWhole).count());
        title(2, Messages.Table_notes, remarks.size());
    }

    private void title(int tab, String words, int count) {
        folder.getItem(tab).setText(NLS.bind(words, count));
    }

    /** Brings the tab that matters to the front. */
    void turnTo(SheetImport.Preview preview) {
        folder.setSelection(preview.problems().isEmpty() ? 1 : 0);
    }

    /** The name of a sheet needs more room than the number of a row. */
    private void widenRows(Table table) {
        ((TableColumnLayout) table.getParent().getLayout()).setColumnData(table.getColumn(0), new ColumnWeightData(several ? 3 : 1, 50));
        table.getParent().layout(true);
    }

    private String row(String sheet, int row) {
        String number = row == 0 ? "" : String.valueOf(row);
        return several ? (sheet + " " + number).strip() : number;
    }

    private String[] cells(ImportProblem problem) {
        return new String[] {row(sheetOf.apply(problem), problem.row()), problem.column(), Words.say(problem.message())};
    }

    private String[] cells(SheetChange change) {
        return new String[] {row(change.sheet(), change.row()), Words.say(change.element()), change.typed(), what(change)};
    }

    private static String what(SheetChange change) {
        if (change.isAddition()) {
            return Messages.Table_new;
        }
        return change.isNew() ? NLS.bind(Messages.Table_becomes, Words.say(change.field()), orNothing(change.after()))
                : NLS.bind(Messages.Table_from, new Object[] {Words.say(change.field()), orNothing(change.before()), orNothing(change.after())});
    }

    private static String orNothing(String value) {
        return value.isEmpty() ? Messages.Table_nothing : Words.say(value);
    }

    private static void fill(Table table, List<String[]> rows) {
        TextRows.show(table, rows);
        table.setSelection(rows.isEmpty() ? -1 : 0);
        table.notifyListeners(SWT.Selection, new Event());
    }
}
