package org.amberyard.workbench.charts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;

/** Scrolls a chart that is higher than its canvas, by mouse and keyboard. */
final class ChartScrolling {
    private static final int LINE = 20;

    private final Canvas canvas;
    private final ScrollBar bar;

    ChartScrolling(Canvas canvas) {
        this.canvas = canvas;
        bar = canvas.getVerticalBar();
        bar.setVisible(false);
        bar.addListener(SWT.Selection, e -> canvas.redraw());
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, ChartScrolling::traverse);
    }

    /** A canvas that hears keys would keep Tab for itself. */
    private static void traverse(Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = true;
        }
    }

    /** Fits the bar to the height of what is on show. */
    void fit(int content) {
        int shown = canvas.getClientArea().height;
        bar.setVisible(content > shown && shown > 0);
        bar.setMaximum(Math.max(1, content));
        bar.setThumb(Math.max(1, Math.min(shown, content)));
        bar.setIncrement(LINE);
        bar.setPageIncrement(Math.max(1, shown));
    }

    /** True when the chart is higher than what there is for it. */
    boolean isNeeded() {
        return bar.isVisible();
    }

    /** How far the chart is scrolled up. */
    int offset() {
        return bar.isVisible() ? bar.getSelection() : 0;
    }

    private void key(Event event) {
        if (!bar.isVisible()) {
            return;
        }
        switch (event.keyCode) {
            case SWT.ARROW_UP -> scrollTo(offset() - LINE);
            case SWT.ARROW_DOWN -> scrollTo(offset() + LINE);
            case SWT.PAGE_UP -> scrollTo(offset() - bar.getPageIncrement());
            case SWT.PAGE_DOWN -> scrollTo(offset() + bar.getPageIncrement());
            case SWT.HOME -> scrollTo(0);
            case SWT.END -> scrollTo(bar.getMaximum());
            default -> {
                // other keys are not for scrolling
            }
        }
    }

    private void scrollTo(int offset) {
        bar.setSelection(Math.max(0, Math.min(bar.getMaximum() - bar.getThumb(), offset)));
        canvas.redraw();
    }
}
