package org.amberyard.workbench.work;

import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;

/** A strip in a view, there only while work goes on or after it was stopped: how far it is, and a button to stop or to start it. */
public final class WorkStrip {
    private static final int WHOLE = 100;
    private static final int BAR_WIDTH = 160;

    private final Composite strip;
    private final Label words;
    private final ProgressBar bar;
    private final Button button;
    private boolean running;

    /**
     * A strip that takes no room yet.
     *
     * @param parent a grid, of which the strip takes a row
     * @param columns columns of the grid
     * @param stop stops the work
     * @param again starts it again after it was stopped
     */
    public WorkStrip(Composite parent, int columns, Runnable stop, Runnable again) {
        strip = new Composite(parent, SWT.NONE);
        strip.setBackground(Palette.PAPER.color());
        strip.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 3).spacing(8, 0).applyTo(strip);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(strip);
        strip.setVisible(false);
        bar = new ProgressBar(strip, SWT.SMOOTH);
        bar.setMaximum(WHOLE);
        GridDataFactory.swtDefaults().hint(BAR_WIDTH, SWT.DEFAULT).applyTo(bar);
        words = new Label(strip, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(words);
        button = new Button(strip, SWT.PUSH);
        button.addListener(SWT.Selection, e -> {
            if (running) {
                stop.run();
            } else {
                again.run();
            }
        });
    }

    /** A part of the work, 0 to 1, is done. */
    public void at(double share) {
        int percent = (int) Math.floor(WHOLE * share);
        bar.setSelection(percent);
        show(true, NLS.bind(Messages.Work_running, percent), Messages.Work_stop);
    }

    /** The work was stopped. */
    public void stopped() {
        bar.setSelection(0);
        show(false, Messages.Work_stopped, Messages.Work_again);
    }

    /** There is no work. */
    public void done() {
        if (strip.getVisible()) {
            place(false);
        }
    }

    private void show(boolean isRunning, String text, String action) {
        running = isRunning;
        words.setText(text);
        bar.setVisible(isRunning);
        if (!button.getText().equals(action)) {
            button.setText(action);
            strip.layout();
        }
        if (!strip.getVisible()) {
            place(true);
        }
    }

    private void place(boolean visible) {
        ((GridData) strip.getLayoutData()).exclude = !visible;
        strip.setVisible(visible);
        strip.getParent().layout();
    }
}
