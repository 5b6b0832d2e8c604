package org.amberyard.workbench.fields;

import java.util.List;
import java.util.function.IntConsumer;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** The line above a table: its title, or the titles of all tables that share its place, and the commands of the table. */
final class TableHead {
    private static final int HEIGHT = 24;

    private final Composite area;
    private final String title;
    private final Label label;
    private final ToolBar tools;
    private ToolItem own;

    /** @param area lays its children out in two columns */
    TableHead(Composite area, String title) {
        this.area = area;
        this.title = title;
        label = new Label(area, SWT.NONE);
        label.setText(title);
        label.setFont(Fonts.TITLE.font());
        label.setForeground(Palette.INK.color());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
        tools = new ToolBar(area, SWT.FLAT | SWT.RIGHT);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).hint(SWT.DEFAULT, HEIGHT).applyTo(tools);
    }

    String title() {
        return title;
    }

    /** Says in the title of a table that shares its place of which element the rows are; blank for none. */
    void of(String element) {
        own.setText(apart(element.isEmpty() ? title : NLS.bind(Messages.Title_of, title, element)));
        area.layout();
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
