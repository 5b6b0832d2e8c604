package org.amberyard.workbench.fields;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.amberyard.workbench.language.Counted;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** The line above a table: its title, or the titles of all tables that share its place, and the commands of the table. */
final class TableHead {
    private static final int HEIGHT = 24;
    private static final int FILTER_WIDTH = 220;

    private final Composite area;
    private final String title;
    private final Label label;
    private final ToolBar tools;
    private final Composite filterLine;
    private Text filter;
    private Label count;
    private ToolItem own;

    /** @param area lays its children out in two columns */
    TableHead(Composite area, String title) {
        this.area = area;
        this.title = title;
        label = new Label(area, SWT.NONE);
        label.setText(title);
        label.setFont(Fonts.TITLE.font());
        label.setForeground(Palette.INK.color());
        // In a narrow place commands give way, which the menu of the cells has too.
        int whole = label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.BEGINNING, SWT.CENTER).minSize(whole, SWT.DEFAULT).applyTo(label);
        tools = new ToolBar(area, SWT.FLAT | SWT.RIGHT);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).hint(SWT.DEFAULT, HEIGHT).applyTo(tools);
        filterLine = createFilter();
    }

    /** What is done with words of a filter, and where the focus goes after Esc or Enter. */
    void onFilter(Consumer<String> listener, Runnable leave) {
        filter.addListener(SWT.Modify, e -> listener.accept(filter.getText()));
        filter.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                endFilter();
            }
            if (e.detail == SWT.TRAVERSE_ESCAPE || e.detail == SWT.TRAVERSE_RETURN) {
                e.doit = false;
                leave.run();
            }
        });
    }

    /** Shows the filter and gives it the focus. */
    void askFilter() {
        showFilter(true);
        filter.setFocus();
        filter.selectAll();
    }

    /** Takes the filter away; all rows are shown. */
    void endFilter() {
        filter.setText("");
        showFilter(false);
    }

    private void showFilter(boolean show) {
        filterLine.setVisible(show);
        ((GridData) filterLine.getLayoutData()).exclude = !show;
        area.layout();
    }

    /** Says how many rows are in sight. */
    void filtered(int rows, int all) {
        count.setText(NLS.bind(Counted.of(all, Messages.Filter_countOne, Messages.Filter_count), rows, all));
        count.getParent().layout();
    }

    private Composite createFilter() {
        Composite line = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).exclude(true).applyTo(line);
        line.setVisible(false);
        filter = new Text(line, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Messages.Filter_hint);
        filter.setToolTipText(Messages.Filter_tip);
        GridDataFactory.fillDefaults().hint(FILTER_WIDTH, SWT.DEFAULT).applyTo(filter);
        count = new Label(line, SWT.NONE);
        count.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(count);
        return line;
    }

    String title() {
        return title;
    }

    /** Says in the title of a table that shares its place of which element the rows are; blank for none. */
    void of(String element) {
        own.setText(apart(element.isEmpty() ? title : NLS.bind(Messages.Title_of, title, element)));
        area.layout();
    }

    /** Says something of the rows beside the title; blank for nothing. */
    void remark(String words) {
        label.setText(words.isEmpty() ? title : NLS.bind(Messages.Title_remark, title, words.replace("&", "&&")));
        label.requestLayout();
    }

    void add(String text, String tip, Runnable action) {
        ToolItem item = new ToolItem(tools, SWT.PUSH);
        item.setText(apart(text));
        item.setForeground(Palette.MUTED.color());
        item.setToolTipText(tip);
        item.addListener(SWT.Selection, e -> action.run());
    }

    /** Words of neighbours need more room between them than a bar gives. */
    private static String apart(String text) {
        return " " + text + " ";
    }

    /** Shows the titles of all tables in this place instead of the one. */
    void share(List<String> titles, IntConsumer choose) {
        label.dispose();
        ToolBar bar = new ToolBar(area, SWT.FLAT | SWT.RIGHT);
        bar.moveAbove(null);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.BEGINNING, SWT.CENTER).hint(SWT.DEFAULT, HEIGHT)
                .applyTo(bar);
        for (int place = 0; place < titles.size(); place++) {
            choice(bar, titles.get(place), place, choose);
        }
    }

    /** The line is that of one table and says so whatever is pressed; another table comes with a line of its own. */
    private void choice(ToolBar bar, String text, int place, IntConsumer choose) {
        ToolItem item = new ToolItem(bar, SWT.CHECK);
        boolean isOwn = text.equals(title);
        own = isOwn ? item : own;
        item.setText(apart(text));
        item.setForeground(isOwn ? Palette.INK.color() : Palette.MUTED.color());
        item.setSelection(isOwn);
        item.addListener(SWT.Selection, e -> {
            item.setSelection(isOwn);
            choose.accept(place);
        });
    }
}
