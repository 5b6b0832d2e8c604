package org.amberyard.workbench.lists;

import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** A list under the titles of its sections; typing leaves the lines that have every word typed. Enter or a click goes there. */
public final class SectionList extends PopupDialog {
    private static final Point SIZE = new Point(440, 400);
    private static final int MOST_LINES = 24;

    private final List<Section> sections;
    private final String hint;
    private final String shown;
    private final UnaryOperator<Point> place;
    private Text filter;
    private Tree tree;

    /**
     * A list.
     *
     * @param hint what can be typed
     * @param shown text of the line to begin at; blank for the first
     * @param place place on the screen for a size
     */
    public SectionList(Shell parent, List<Section> sections, String hint, String shown, UnaryOperator<Point> place) {
        super(parent, SWT.TOOL, true, false, false, false, false, null, null);
        this.sections = List.copyOf(sections);
        this.hint = hint;
        this.shown = shown;
        this.place = place;
    }

    @Override
    protected Point getInitialSize() {
        return SIZE;
    }

    @Override
    protected Point getInitialLocation(Point size) {
        return place.apply(size);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(area);
        filter = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH);
        filter.setMessage(hint);
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
    protected Color getBackground() {
        return Palette.PAPER.color();
    }

    @Override
    protected Color getForeground() {
        return Palette.INK.color();
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
        Section.having(sections, new Search(filter.getText())).forEach(this::add);
        if (tree.getItemCount() == 0) {
            new TreeItem(tree, SWT.NONE).setText(Messages.List_nothing);
        } else if (tree.getSelectionCount() == 0) {
            tree.setSelection(tree.getItem(0).getItem(0));
            tree.setTopItem(tree.getItem(0));
        }
    }

    private void add(Section section) {
        TreeItem head = new TreeItem(tree, SWT.NONE);
        head.setText(section.title());
        head.setFont(Fonts.STRONG.font());
        section.lines().stream().limit(MOST_LINES).forEach(line -> add(head, line));
        int more = section.lines().size() - MOST_LINES;
        if (more > 0) {
            new TreeItem(head, SWT.NONE).setText(NLS.bind(Messages.List_more, more));
        }
        head.setExpanded(true);
    }

    private void add(TreeItem head, Section.Line line) {
        TreeItem item = new TreeItem(head, SWT.NONE);
        item.setText(line.text());
        item.setData(line);
        if (line.text().equals(shown) && filter.getText().isBlank()) {
            tree.setSelection(item);
        }
    }

    /** Titles lead nowhere. */
    private void choose() {
        Arrays.stream(tree.getSelection()).map(TreeItem::getData).filter(Section.Line.class::isInstance)
                .map(Section.Line.class::cast).findFirst().ifPresent(line -> {
                    close();
                    line.open().run();
                });
    }
}
