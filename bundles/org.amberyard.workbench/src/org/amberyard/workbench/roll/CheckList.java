package org.amberyard.workbench.roll;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Lines with a box to check before each, below a heading; where there is no line, it says why. */
final class CheckList {
    private static final int HEIGHT = 110;

    private final Label head;
    private final Table table;
    private final String heading;
    private final String none;
    private List<String> keys = List.of();

    /**
     * @param none what is said where there is no line
     * @param changed is run whenever a box is checked or no longer is
     */
    CheckList(Composite parent, String heading, String tip, String none, Runnable changed) {
        this.heading = heading;
        this.none = none;
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        head = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(0, SWT.DEFAULT).applyTo(head);
        table = new Table(area, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setToolTipText(tip);
        GridDataFactory.fillDefaults().grab(true, false).hint(0, HEIGHT).applyTo(table);
        table.addListener(SWT.Selection, e -> {
            if (e.detail == SWT.CHECK) {
                changed.run();
            }
        });
        show(List.of(), List.of());
    }

    /** Shows lines; a box stays checked where its key was there before. */
    void show(List<String> newKeys, List<String> lines) {
        Set<String> checked = checkedKeys();
        keys = List.copyOf(newKeys);
        table.removeAll();
        for (int line = 0; line < lines.size(); line++) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(lines.get(line));
            item.setChecked(checked.contains(keys.get(line)));
        }
        head.setText(lines.isEmpty() ? none : heading);
        ((GridData) table.getLayoutData()).exclude = lines.isEmpty();
        table.setVisible(!lines.isEmpty());
        table.requestLayout();
    }

    /** Places of the checked lines. */
    Set<Integer> checked() {
        return IntStream.range(0, keys.size()).filter(line -> table.getItem(line).getChecked()).boxed().collect(Collectors.toSet());
    }

    /** Keys of the checked lines. */
    Set<String> checkedKeys() {
        return new HashSet<>(checked().stream().map(keys::get).toList());
    }
}
