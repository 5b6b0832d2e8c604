package org.amberyard.workbench.look;

import java.util.Objects;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;

/**
 * What is told of the place in a control on which the pointer rests. It goes when the pointer leaves the place, be it for one of which the
 * same is told, and when a key is pressed or the wheel turned; then it comes back at another place only. Platforms that know of the whole
 * control alone would let it follow the pointer.
 */
public final class PlaceTip {
    /** Longer than the platform takes to notice that there is nothing to tell. */
    private static final int GONE_MS = 120;

    private final Control control;
    private final Listener pressed = e -> gone();
    private Object place;
    private String words;

    /** Tells of places of a control, none yet. */
    public PlaceTip(Control control) {
        this.control = control;
        control.addListener(SWT.MouseEnter, e -> listen(true));
        control.addListener(SWT.MouseExit, e -> left());
        control.addListener(SWT.Dispose, e -> listen(false));
    }

    /** Keys go to what has the focus, which may be anywhere. */
    private void listen(boolean wanted) {
        control.getDisplay().removeFilter(SWT.KeyDown, pressed);
        control.getDisplay().removeFilter(SWT.MouseWheel, pressed);
        if (wanted) {
            control.getDisplay().addFilter(SWT.KeyDown, pressed);
            control.getDisplay().addFilter(SWT.MouseWheel, pressed);
        }
    }

    private void left() {
        listen(false);
        at(null, () -> null);
    }

    /**
     * The pointer is at a place.
     *
     * @param now the place, equal to itself as long as the pointer stays there; null for none
     * @param tip what is told of it, asked for once; null or blank for nothing
     */
    public void at(Object now, Supplier<String> tip) {
        if (Objects.equals(now, place)) {
            return;
        }
        place = now;
        String next = tip.get();
        words = next == null || next.isEmpty() ? null : next;
        boolean toldBefore = control.getToolTipText() != null;
        hide();
        if (words != null && toldBefore) {
            control.getDisplay().timerExec(GONE_MS, () -> show(now));
        } else {
            show(now);
        }
    }

    /** Nothing is told until the pointer is at another place. */
    public void gone() {
        words = null;
        hide();
    }

    private void show(Object wanted) {
        if (!control.isDisposed() && Objects.equals(wanted, place)) {
            control.setToolTipText(words);
        }
    }

    private void hide() {
        if (control.getToolTipText() != null) {
            control.setToolTipText(null);
        }
    }
}
