package org.amberyard.workbench.charts;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;

/** A slider of years below a chart that shows one of them; charts follow while it is dragged, or played from year to year. */
final class YearSlider {
    private static final int PACE_MS = 800;

    private final Composite area;
    private final Button play;
    private final Scale slider;
    private final Label year;
    private final ChoiceBar.Listener listener;
    private final BooleanSupplier busy;
    private List<Chosen> years = List.of();
    private boolean playing;

    /** @param busy true while the year chosen last is not on show yet, for which playing waits */
    YearSlider(Composite parent, ChoiceBar.Listener listener, BooleanSupplier busy) {
        this.listener = listener;
        this.busy = busy;
        area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 0).spacing(6, 0).applyTo(area);
        play = new Button(area, SWT.PUSH);
        GridDataFactory.swtDefaults().applyTo(play);
        play.addListener(SWT.Selection, e -> play(!playing));
        slider = new Scale(area, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(slider);
        slider.addListener(SWT.Selection, e -> {
            play(false);
            choose(slider.getSelection());
        });
        slider.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = ChoiceWords.label(Kind.YEAR);
            }
        });
        year = new Label(area, SWT.NONE);
        year.setForeground(Palette.INK.color());
        play(false);
        disable();
    }

    Composite area() {
        return area;
    }

    private void choose(int place) {
        listener.chosen(Kind.YEAR, years.get(place));
    }

    /** Offers the years of a result, with the one that is picked of them. */
    void show(Picks picks) {
        List<Chosen> next = picks.options(Kind.YEAR).list();
        slider.setEnabled(next.size() > 1);
        play.setEnabled(next.size() > 1);
        if (!next.equals(years)) {
            years = next;
            slider.setMaximum(Math.max(1, years.size() - 1));
            slider.setIncrement(1);
            slider.setPageIncrement(1);
        }
        picks.picked(Kind.YEAR).ifPresent(p -> {
            year.setText(p.name());
            slider.setSelection(years.indexOf(p));
            slider.setToolTipText(p.name());
        });
        area.layout();
    }

    /** There are no results. */
    void disable() {
        play(false);
        slider.setEnabled(false);
        play.setEnabled(false);
    }

    private void play(boolean on) {
        playing = on;
        play.setText(on ? "\u275A\u275A" : "\u25B6");
        play.setToolTipText(on ? Messages.Slider_pause : Messages.Slider_play);
        if (on) {
            if (slider.getSelection() == slider.getMaximum()) {
                choose(0);
            }
            area.getDisplay().timerExec(PACE_MS, this::step);
        }
    }

    private void step() {
        if (area.isDisposed() || !playing) {
            return;
        }
        if (!busy.getAsBoolean() && slider.getSelection() < slider.getMaximum()) {
            choose(slider.getSelection() + 1);
        }
        if (slider.getSelection() < slider.getMaximum()) {
            area.getDisplay().timerExec(PACE_MS, this::step);
        } else {
            play(false);
        }
    }
}
