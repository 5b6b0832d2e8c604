package org.amberyard.workbench.roll;

import java.util.List;
import org.amberyard.charts.Figures;
import org.amberyard.report.YearVariance;
import org.amberyard.study.roll.RollChange;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.TextRows;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;

/** What rolling changes field by field, what is to be known of it, and how the years that are over went beside the plan. */
final class RollTabs {
    private static final double PERCENT = 100;
    private static final String NOTHING = "–";
    private static final int[] CHANGE_WIDTHS = {6, 5, 3, 3, 7};
    private static final int[] YEAR_WIDTHS = {5, 2, 3, 3, 3, 2};

    private final TabFolder folder;
    private final Table changes;
    private final Text remarks;
    private final Table years;

    RollTabs(Composite parent) {
        folder = new TabFolder(parent, SWT.NONE);
        changes = table(CHANGE_WIDTHS, SWT.LEFT, Messages.Roll_element, Messages.Roll_field, Messages.Roll_before, Messages.Roll_after,
                Messages.Roll_why);
        remarks = new Text(folder, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        new TabItem(folder, SWT.NONE).setControl(remarks);
        years = table(YEAR_WIDTHS, SWT.RIGHT, Messages.Roll_figure, Messages.Roll_year, Messages.Roll_planned, Messages.Roll_actual,
                Messages.Roll_difference, Messages.Roll_share);
        show(List.of(), List.of(), List.of());
    }

    Control control() {
        return folder;
    }

    /** A table that makes its rows as they come into sight. */
    private Table table(int[] widths, int style, String... heads) {
        Composite area = new Composite(folder, SWT.NONE);
        Table table = new Table(area, SWT.VIRTUAL | SWT.FULL_SELECTION);
        table.setHeaderVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        area.setLayout(layout);
        for (int place = 0; place < heads.length; place++) {
            TableColumn column = new TableColumn(table, place == 0 ? SWT.LEFT : style);
            column.setText(heads[place]);
            layout.setColumnData(column, new ColumnWeightData(widths[place], 40));
        }
        new TabItem(folder, SWT.NONE).setControl(area);
        return table;
    }

    void show(List<RollChange> changed, List<String> sentences, List<YearVariance> variances) {
        TextRows.show(changes, changed.stream().map(RollTabs::cells).toList());
        remarks.setText(String.join(System.lineSeparator(), sentences.stream().map(s -> "• " + Words.say(s)).toList()));
        TextRows.show(years, variances.stream().map(RollTabs::cells).toList());
        title(0, Messages.Roll_changes, changed.size());
        title(1, Messages.Roll_remarks, sentences.size());
        folder.getItem(2).setText(Messages.Roll_variance);
    }

    private void title(int tab, String words, int count) {
        folder.getItem(tab).setText(NLS.bind(words, count));
    }

    private static String[] cells(RollChange change) {
        boolean whole = change.field().isEmpty();
        String field = whole ? (change.after().isEmpty() ? Messages.Roll_goes : Messages.Roll_new) : Words.say(change.field());
        return new String[] {Words.say(change.element()), field, whole ? "" : value(change.before()), whole ? "" : value(change.after()),
            Words.say(change.why())};
    }

    private static String value(String text) {
        return text.isEmpty() ? NOTHING : Words.say(text);
    }

    private static String[] cells(YearVariance of) {
        return new String[] {Words.say(of.figure()), String.valueOf(of.year()), figure(of.planned()), figure(of.actual()),
            figure(of.difference()), Double.isNaN(of.share()) ? "" : figure(PERCENT * of.share()) + " %"};
    }

    private static String figure(double value) {
        return Words.figure(Figures.whole(value));
    }
}
