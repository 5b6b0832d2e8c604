package org.amberyard.workbench.charts;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.DropList;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.Options;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A row of choices above a chart, and the way to the inputs behind them. */
final class ChoiceBar {
    private static final int MOST_LINES = 20;
    private static final int WIDEST = 190;
    /** Where a bar would not fit in one line, long names give way. */
    private static final int WIDEST_IN_NARROW = 112;
    private static final int NARROWER = 6;

    /** Hears what the user chooses. */
    @FunctionalInterface
    interface Listener {
        void chosen(Kind kind, Chosen what);
    }

    private final Map<Kind, Combo> combos = new EnumMap<>(Kind.class);
    private final Composite area;
    private final Button inputs;
    private Picks shown;

    ChoiceBar(Composite parent, List<Kind> kinds, Listener listener, Runnable openInputs) {
        area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_DEFAULT);
        RowLayoutFactory.fillDefaults().wrap(true).center(true).spacing(6).margins(6, 3).applyTo(area);
        kinds.forEach(kind -> combos.put(kind, combo(kind, listener)));
        inputs = new Button(area, SWT.PUSH);
        inputs.setText(Messages.Inputs_button);
        inputs.setEnabled(false);
        inputs.addListener(SWT.Selection, e -> openInputs.run());
        area.addListener(SWT.Resize, e -> fit());
    }

    private Combo combo(Kind kind, Listener listener) {
        if (kind == Kind.COMPARED) {
            // Beside another list of plans, this one must say what it is for.
            Label label = new Label(area, SWT.NONE);
            label.setText(ChoiceWords.label(kind));
            label.setForeground(Palette.MUTED.color());
        }
        Combo combo = DropList.on(area);
        combo.setVisibleItemCount(MOST_LINES);
        combo.setLayoutData(new RowData());
        offer(combo, false);
        combo.setEnabled(false);
        combo.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = ChoiceWords.label(kind);
            }
        });
        combo.addListener(SWT.Selection, e -> listener.chosen(kind, shown.options(kind).list().get(combo.getSelectionIndex())));
        return combo;
    }

    /** Adds a way to something else, behind the choices. */
    void addButton(String text, String tip, Runnable action) {
        Button button = new Button(area, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tip);
        button.addListener(SWT.Selection, e -> action.run());
    }

    Composite area() {
        return area;
    }

    /** Offers what a result has, with what is picked of it, and says where the inputs lead. */
    void show(Picks picks, String inputsLabel) {
        shown = picks;
        boolean resized = false;
        for (Map.Entry<Kind, Combo> entry : combos.entrySet()) {
            resized |= show(entry.getKey(), entry.getValue(), picks.options(entry.getKey()));
            picks.picked(entry.getKey()).ifPresent(p -> select(entry.getKey(), picks.options(entry.getKey()), p));
        }
        inputs.setEnabled(!inputsLabel.isEmpty());
        inputs.setToolTipText(inputsLabel.isEmpty() ? null : inputsLabel);
        if (resized) {
            fit();
            area.getParent().layout(true, true);
        }
    }

    /** Nothing can be chosen as long as there are no results. */
    void disable() {
        combos.values().forEach(c -> c.setEnabled(false));
        inputs.setEnabled(false);
    }

    /** Names that the user has given stay as they are. */
    private static String said(Kind kind, String name) {
        return switch (kind) {
            case MONTH, DAY, STRETCH, POLICY, POLLUTANT -> Words.say(name);
            case PLAN, COMPARED, ROUTE, TYPE, BUS, YEAR, TARIFF -> name;
        };
    }

    /** A list that is open must not be taken from under the pointer while it stays the same. */
    private boolean show(Kind kind, Combo combo, Options options) {
        String[] names = options.names().stream().map(name -> said(kind, name)).toArray(String[]::new);
        combo.setEnabled(names.length > 0);
        if (Arrays.equals(names, combo.getItems())) {
            return false;
        }
        combo.setItems(names);
        offer(combo, names.length > 0);
        return true;
    }

    /** An empty list would only take room. */
    private static void offer(Combo combo, boolean filled) {
        ((RowData) combo.getLayoutData()).exclude = !filled;
        combo.setVisible(filled);
    }

    private void fit() {
        widths(WIDEST);
        for (int most = WIDEST - NARROWER; most >= WIDEST_IN_NARROW && area.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > area.getSize().x; most -= NARROWER) {
            widths(most);
        }
        area.layout();
    }

    private void widths(int most) {
        for (Combo combo : combos.values()) {
            ((RowData) combo.getLayoutData()).width = Math.min(most, combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        }
    }

    /** A long name may be cut off in the row; the tip has it whole. */
    private void select(Kind kind, Options options, Chosen picked) {
        Combo combo = combos.get(kind);
        combo.setToolTipText(NLS.bind(Messages.Choice_tip, ChoiceWords.label(kind), said(kind, picked.name())));
        int index = options.list().indexOf(picked);
        if (index != combo.getSelectionIndex()) {
            combo.select(index);
        }
    }
}
