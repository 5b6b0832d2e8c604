package org.amberyard.workbench.plan;

import java.util.EnumMap;
import java.util.Map;
import org.amberyard.core.plan.FillRule.Pace;
import org.amberyard.model.study.Study;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;

/** The number that belongs to a pace: an age or buses a year; each keeps its own while the other is on show. */
final class PaceNumber {

    /** Common practice for replacing a school bus; no source. */
    private static final int AGE_YEARS = 12;
    private static final int MOST_YEARS = 40;

    private final Map<Pace, Integer> numbers = new EnumMap<>(Pace.class);
    private final Map<Pace, Integer> most = new EnumMap<>(Pace.class);
    private final Spinner spinner;
    private final Label unit;
    private Pace shown;

    /** @param changed is run whenever another number is entered */
    PaceNumber(Composite parent, Study study, Runnable changed) {
        int buses = Math.max(1, study.getBuses().size());
        numbers.put(Pace.AT_AGE, AGE_YEARS);
        numbers.put(Pace.PER_YEAR, Math.max(1, Math.round((float) buses / study.getSettings().getHorizonYears())));
        most.put(Pace.AT_AGE, MOST_YEARS);
        most.put(Pace.PER_YEAR, buses);
        spinner = new Spinner(parent, SWT.BORDER);
        unit = new Label(parent, SWT.NONE);
        spinner.addListener(SWT.Selection, e -> {
            numbers.put(shown, spinner.getSelection());
            changed.run();
        });
    }

    /** Shows the number of a pace; one without a number shows none. */
    void show(Pace pace) {
        if (pace == shown) {
            return;
        }
        shown = pace;
        boolean has = numbers.containsKey(pace);
        if (has) {
            spinner.setValues(numbers.get(pace), 1, most.get(pace), 0, 1, 1);
            unit.setText(pace == Pace.AT_AGE ? Messages.Fill_years : Messages.Fill_buses);
        }
        spinner.setVisible(has);
        unit.setVisible(has);
        unit.getParent().layout();
    }

    /** The number of the pace on show. */
    int value() {
        return numbers.getOrDefault(shown, 1);
    }
}
