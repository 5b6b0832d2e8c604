package org.amberyard.workbench.views;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import org.amberyard.report.ResultTables;
import org.amberyard.workbench.look.Fonts;
import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** All tables of results by what they are about; typing leaves those whose title or group has the words typed. */
final class TableList extends PopupDialog {
    private static final Point SIZE = new Point(420, 400);

    private final Control below;
    private final int shown;
    private final IntConsumer whenChosen;
    private Text filter;
    private Tree tree;

    /** A list below a control, with the table on show selected. */
    TableList(Control below, int shown, IntConsumer whenChosen) {
        super(below.getShell(), SWT.TOOL, true, false, false, false, false, null, null);
        this.below = below;
        this.shown = shown;
        this.whenChosen = whenChosen;
    }

    @Override
    protected Point getInitialSize() {
        return SIZE;
    }

    /** Below its control, or above it where the screen ends. */
    @Override
    protected Point getInitialLocation(Point size) {
        Point under = below.toDisplay(0, below.getSize().y);
        int bottom = below.getMonitor().getClientArea().y + below.getMonitor().getClientArea().height;
        return under.y + size.y <= bottom ? under : new Point(under.x, below.toDisplay(0, 0).y - size.y);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(area);
        filter = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH);
        filter.setMessage(Messages.Results_filter);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        filter.addListener(SWT.Modify, e -> fill());
        filter.addListener(SWT.DefaultSelection, e -> choose());
        filter.addListener(SWT.KeyDown, this::pressed);
        tree = new Tree(area, SWT.SINGLE | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
        tree.addListener(SWT.DefaultSelection, e -> choose());
        tree.addListener(SWT.MouseUp, e -> choose());
        fill();
        return area;
    }

    @Override
    protected Control getFocusControl() {
        return filter;
    }

    private void pressed(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN) {
            tree.setFocus();
            event.doit = false;
        }
    }

    private void fill() {
        tree.removeAll();
        List<String> words = List.of(filter.getText().strip().toLowerCase(Locale.ROOT).split("\\s+"));
        int place = 0;
        for (ResultTables.Group group : ResultTables.groups()) {
            add(group, place, words);
            place += group.tables().size();
        }
        if (tree.getSelectionCount() == 0 && tree.getItemCount() > 0) {
            tree.setSelection(tree.getItem(0).getItem(0));
        }
    }

    private void add(ResultTables.Group group, int first, List<String> words) {
        TreeItem head = null;
        for (int i = 0; i < group.tables().size(); i++) {
            String title = group.tables().get(i);
            String sought = (group.title() + " " + title).toLowerCase(Locale.ROOT);
            if (words.stream().allMatch(sought::contains)) {
                head = head == null ? head(group) : head;
                addTable(head, title, first + i);
            }
        }
        if (head != null) {
            head.setExpanded(true);
        }
    }

    private TreeItem head(ResultTables.Group group) {
        TreeItem head = new TreeItem(tree, SWT.NONE);
        head.setText(group.title());
        head.setFont(Fonts.STRONG.font());
        return head;
    }

    private void addTable(TreeItem head, String title, int place) {
        TreeItem item = new TreeItem(head, SWT.NONE);
        item.setText(title);
        item.setData(place);
        if (place == shown && filter.getText().isBlank()) {
            tree.setSelection(item);
        }
    }

    /** Groups are no tables. */
    private void choose() {
        Arrays.stream(tree.getSelection()).map(TreeItem::getData).filter(Integer.class::isInstance).findFirst()
                .ifPresent(place -> {
                    close();
                    whenChosen.accept((Integer) place);
                });
    }
}
