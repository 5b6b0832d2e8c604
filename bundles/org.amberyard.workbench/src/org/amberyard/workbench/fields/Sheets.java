package org.amberyard.workbench.fields;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;

/** Tables that share one place, one of them in front under the titles of all; for what does not fit below each other. */
public final class Sheets {
    private final Composite area;
    private final StackLayout layout = new StackLayout();
    private List<FeatureTable> tables = List.of();

    /** A place for the tables, which are made in its area and then shared. */
    public Sheets(Composite parent) {
        area = new Composite(parent, SWT.NONE);
        area.setLayout(layout);
    }

    /** The parent of the tables. */
    public Composite area() {
        return area;
    }

    /** Shares the place among its tables; the first is in front. */
    public void share(FeatureTable... all) {
        tables = List.of(all);
        List<String> titles = tables.stream().map(FeatureTable::title).toList();
        tables.forEach(table -> table.share(titles, this::choose, () -> bringUp(table)));
        layout.topControl = all[0].control();
    }

    /** What is being typed is entered first; while it is refused, its table stays. */
    private void choose(int place) {
        boolean entered = tables.stream().allMatch(t -> t.grid().entry().close());
        if (entered) {
            bringUp(tables.get(place));
            tables.get(place).grid().setFocus();
        }
    }

    private void bringUp(FeatureTable table) {
        if (layout.topControl != table.control()) {
            layout.topControl = table.control();
            area.layout();
        }
    }
}
