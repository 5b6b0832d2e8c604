package org.amberyard.workbench.roll;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.amberyard.study.roll.RollChange;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Fonts;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/** What rolling changes, field by field, below the kinds of elements with the number of changes of each; a kind can be folded away. */
final class RollChanges {
    private static final String NOTHING = "–";

    private final Composite area;
    private final Tree tree;
    private List<List<RollChange>> groups = List.of();

    RollChanges(Composite parent, int[] widths) {
        area = new Composite(parent, SWT.NONE);
        tree = new Tree(area, SWT.VIRTUAL | SWT.FULL_SELECTION);
        tree.setHeaderVisible(true);
        TreeColumnLayout layout = new TreeColumnLayout();
        area.setLayout(layout);
        String[] heads = {Messages.Roll_element, Messages.Roll_field, Messages.Roll_before, Messages.Roll_after, Messages.Roll_why};
        for (int place = 0; place < heads.length; place++) {
            TreeColumn column = new TreeColumn(tree, SWT.LEFT);
            column.setText(heads[place]);
            layout.setColumnData(column, new ColumnWeightData(widths[place], widths[place]));
        }
        tree.addListener(SWT.SetData, this::fill);
    }

    Control control() {
        return area;
    }

    /** Shows changes in place of those before; all kinds are unfolded. */
    void show(List<RollChange> changes) {
        Map<String, List<RollChange>> byKind = changes.stream().collect(Collectors.groupingBy(RollChange::kind, LinkedHashMap::new,
                Collectors.toList()));
        groups = new ArrayList<>(byKind.values());
        tree.removeAll();
        tree.setItemCount(groups.size());
        for (int group = 0; group < groups.size(); group++) {
            TreeItem item = tree.getItem(group);
            item.setText(NLS.bind(Messages.Roll_group, Words.say(groups.get(group).get(0).kind()), groups.get(group).size()));
            item.setFont(Fonts.STRONG.font());
            item.setItemCount(groups.get(group).size());
            item.setExpanded(true);
        }
    }

    /** Rows are made as they come into sight. */
    private void fill(Event event) {
        TreeItem item = (TreeItem) event.item;
        if (item.getParentItem() != null) {
            item.setText(cells(groups.get(tree.indexOf(item.getParentItem())).get(item.getParentItem().indexOf(item))));
        }
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
}
