package org.amberyard.workbench.help;

import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.SizedDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchWindow;

/** The keys of the window as a table, by purpose; typing leaves those of which every word is typed. */
final class KeysDialog extends SizedDialog {
    private static final Point SIZE = new Point(820, 640);
    private static final int KEYS_WIDTH = 270;

    private final KeyList keys;
    private Text search;
    private Tree tree;

    /** A dialog over a window. */
    KeysDialog(IWorkbenchWindow window) {
        super(window.getShell(), Messages.Keys_title, SIZE);
        keys = new KeyList(window);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.fillDefaults().margins(10, 10).applyTo(area);
        search = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(Messages.Keys_search);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        search.addListener(SWT.Modify, e -> fill());
        search.addListener(SWT.KeyDown, this::pressed);
        tree = new Tree(area, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.BORDER);
        tree.setBackground(Palette.PAPER.color());
        tree.setForeground(Palette.INK.color());
        tree.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
        column(Messages.Keys_key, KEYS_WIDTH);
        TreeColumn what = column(Messages.Keys_what, KEYS_WIDTH);
        tree.addListener(SWT.Resize, e -> what.setWidth(Math.max(KEYS_WIDTH, tree.getClientArea().width - tree.getColumn(0).getWidth())));
        fill();
        return area;
    }

    private TreeColumn column(String title, int width) {
        TreeColumn column = new TreeColumn(tree, SWT.LEFT);
        column.setText(title);
        column.setWidth(width);
        return column;
    }

    private void fill() {
        tree.removeAll();
        for (KeyList.Group group : keys.having(search.getText())) {
            TreeItem head = new TreeItem(tree, SWT.NONE);
            head.setText(group.title());
            head.setFont(Fonts.STRONG.font());
            group.lines().forEach(line -> new TreeItem(head, SWT.NONE).setText(new String[] {line.keys(), line.what()}));
            head.setExpanded(true);
        }
        if (tree.getItemCount() == 0) {
            new TreeItem(tree, SWT.NONE).setText(Messages.Keys_none);
        }
    }

    private void pressed(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN) {
            tree.setFocus();
            event.doit = false;
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.Keys_close, true);
    }
}
