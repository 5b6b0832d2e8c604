package org.amberyard.workbench.charts;

import java.util.Optional;
import org.amberyard.charts.Figures;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.RunQuestion;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.session.WhatIfWork;
import org.amberyard.workbench.session.WhatIfWork.Phase;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;

/** The button that runs a what-if, stops it or goes on with it, and a strip that tells how far it is while it runs. */
final class WhatIfBar {
    private static final int TOLD_EVERY_MS = 200;
    private static final int WHOLE = 100;
    private static final int BAR_WIDTH = 160;
    private static final double MINUTE_S = 60;

    private final Button button;
    private Composite strip;
    private ProgressBar progress;
    private Label words;
    private WhatIfWork work;

    WhatIfBar(Composite parent) {
        button = new Button(parent, SWT.PUSH);
        button.setText(Messages.WhatIf_run);
        button.setToolTipText(Messages.WhatIf_run_tip);
        button.setEnabled(false);
        GridDataFactory.swtDefaults().indent(6, 0).applyTo(button);
        button.addListener(SWT.Selection, e -> pressed());
    }

    /** Makes the strip, a row of the grid. */
    void addProgress(Composite parent, int columns) {
        strip = new Composite(parent, SWT.NONE);
        strip.setBackground(Palette.PAPER.color());
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 3).spacing(8, 0).applyTo(strip);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(strip);
        strip.setVisible(false);
        progress = new ProgressBar(strip, SWT.SMOOTH);
        progress.setMaximum(WHOLE);
        GridDataFactory.swtDefaults().hint(BAR_WIDTH, SWT.DEFAULT).applyTo(progress);
        words = new Label(strip, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(words);
    }

    private void pressed() {
        if (work.phase() == Phase.RUNNING) {
            work.stop();
        } else {
            button.setEnabled(false);
            WhatIfWork asked = work;
            asked.estimate(estimate -> RunQuestion.ask(button, asked, estimate), this::estimated);
        }
    }

    /** There may be no estimate, and the study may be another or closed by now. */
    private void estimated() {
        if (!button.isDisposed()) {
            show(Optional.ofNullable(work));
        }
    }

    /** Shows where a what-if stands; empty when no study is open. */
    void show(Optional<WhatIfWork> next) {
        work = next.orElse(null);
        boolean running = work != null && work.phase() == Phase.RUNNING;
        setText(running ? Messages.WhatIf_stop : work != null && work.phase() == Phase.STOPPED && !work.isOutdated() ? Messages.WhatIf_goOn
                : Messages.WhatIf_run);
        button.setEnabled(running && !work.isStopping() || work != null && work.canRun());
        if (running && !strip.getVisible()) {
            place(true);
            tell();
        } else if (running && work.isStopping()) {
            words.setText(Messages.WhatIf_stopping);
        } else if (!running && strip.getVisible()) {
            place(false);
        }
    }

    private void setText(String text) {
        if (!button.getText().equals(text)) {
            button.setText(text);
            button.getParent().layout();
        }
    }

    private void place(boolean visible) {
        ((GridData) strip.getLayoutData()).exclude = !visible;
        strip.setVisible(visible);
        strip.getParent().layout();
    }

    private void tell() {
        if (strip.isDisposed() || work == null || work.phase() != Phase.RUNNING) {
            return;
        }
        int percent = (int) Math.floor(WHOLE * work.share());
        progress.setSelection(percent);
        words.setText(work.isStopping() ? Messages.WhatIf_stopping : left(percent));
        strip.getDisplay().timerExec(TOLD_EVERY_MS, this::tell);
    }

    private String left(int percent) {
        double left = work.secondsLeft();
        return Double.isNaN(left) ? NLS.bind(Messages.WhatIf_percent, percent) : NLS.bind(Messages.WhatIf_left, percent, time(left));
    }

    private static String time(double seconds) {
        return seconds < 2 * MINUTE_S ? NLS.bind(Messages.WhatIf_seconds, Figures.whole(Math.ceil(seconds)))
                : NLS.bind(Messages.WhatIf_minutes, Figures.whole(Math.ceil(seconds / MINUTE_S)));
    }

    /** Why there is nothing to show. */
    static String why(StudySession session, WhatIfWork work) {
        if (session.study().getWhatIf() == null || session.study().getWhatIf().getInputs().isEmpty()) {
            return Messages.WhatIf_noInputs;
        }
        return switch (work.phase()) {
            case RUNNING -> Messages.WhatIf_running;
            case FAILED -> NLS.bind(Messages.WhatIf_failed, work.failure());
            case OUTDATED_FILE -> Messages.WhatIf_changedSince;
            case NONE, STOPPED, DONE -> work.canRun() ? Messages.WhatIf_notRun : Messages.WhatIf_waits;
        };
    }
}
