package org.amberyard.workbench.roll;

import java.util.List;
import java.util.stream.Stream;
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
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;

/** What rolling changes field by field, what is to be known of it, and how the years that are over went beside the plan. */
final class RollTabs {
    private static final double PERCENT = 100;
    private static final int[] CHANGE_WIDTHS = {260, 200, 120, 120, 240};
    private static final int[] YEAR_WIDTHS = {240, 70, 130, 130, 130, 110};

    private final TabFolder folder;
    private final RollChanges changes;
    private final Text remarks;
    private final Table years;
    private final Label[] nothing = new Label[3];
    private final Control[] something = new Control[3];

    RollTabs(Composite parent) {
        folder = new TabFolder(parent, SWT.NONE);
        changes = new RollChanges(folder, CHANGE_WIDTHS);
        remarks = new Text(folder, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        years = table(YEAR_WIDTHS, Messages.Roll_figure, Messages.Roll_year, Messages.Roll_planned, Messages.Roll_actual,
                Messages.Roll_difference, Messages.Roll_share);
        add(0, changes.control());
        add(1, remarks);
        add(2, years.getParent());
        wait(Messages.Roll_working);
    }

    private void add(int tab, Control control) {
        something[tab] = control;
        nothing[tab] = new Label(folder, SWT.WRAP);
        new TabItem(folder, SWT.NONE).setControl(control);
    }

    Control control() {
        return folder;
    }

    /** A table that makes its rows as they come into sight. */
    private Table table(int[] widths, String... heads) {
        Composite area = new Composite(folder, SWT.NONE);
        Table table = new Table(area, SWT.VIRTUAL | SWT.FULL_SELECTION);
        table.setHeaderVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        area.setLayout(layout);
        for (int place = 0; place < heads.length; place++) {
            TableColumn column = new TableColumn(table, place == 0 ? SWT.LEFT : SWT.RIGHT);
            column.setText(heads[place]);
            layout.setColumnData(column, new ColumnWeightData(widths[place], widths[place]));
        }
        return table;
    }

    /** Says why there is nothing yet. */
    void wait(String why) {
        show(List.of(), List.of(), List.of());
        Stream.of(nothing).forEach(label -> label.setText(why));
    }

    void show(List<RollChange> changed, List<String> sentences, List<YearVariance> variances) {
        changes.show(changed);
        remarks.setText(String.join(System.lineSeparator(), sentences.stream().map(s -> "• " + Words.say(s)).toList()));
        TextRows.show(years, variances.stream().map(RollTabs::cells).toList());
        title(0, Messages.Roll_changes, changed.size());
        title(1, Messages.Roll_remarks, sentences.size());
        title(2, Messages.Roll_variance, variances.size());
        fill(0, changed.isEmpty(), Messages.Roll_changes_none);
        fill(1, sentences.isEmpty(), Messages.Roll_remarks_none);
        fill(2, variances.isEmpty(), Messages.Roll_variance_none);
    }

    private void fill(int tab, boolean empty, String why) {
        nothing[tab].setText(why);
        folder.getItem(tab).setControl(empty ? nothing[tab] : something[tab]);
    }

    private void title(int tab, String words, int count) {
        folder.getItem(tab).setText(NLS.bind(words, count));
    }

    private static String[] cells(YearVariance of) {
        return new String[] {Words.say(of.figure()), String.valueOf(of.year()), figure(of.planned()), figure(of.actual()),
            figure(of.difference()), Double.isNaN(of.share()) ? "" : figure(PERCENT * of.share()) + " %"};
    }

    private static String figure(double value) {
        return Words.figure(Figures.whole(value));
    }
}
