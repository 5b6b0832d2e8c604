package org.amberyard.workbench.work;

import java.util.function.BooleanSupplier;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** The control that work in the background is for: it hears on the event thread of what becomes of it, as long as it is there. */
public final class Owner {
    private final Control control;
    private final Display display;

    /** To be made on the event thread: later the control may be gone, and with it what would lead to its thread. */
    public Owner(Control control) {
        this.control = control;
        this.display = control.getDisplay();
    }

    /** Where it is shown. */
    public Display display() {
        return display;
    }

    /** True when there is nobody any more to tell anything. */
    public boolean isGone() {
        return control.isDisposed();
    }

    /** Tells it something, from any thread. */
    public void tell(Runnable telling) {
        tell(() -> true, telling);
    }

    /**
     * Tells it something that may not be wanted any more by then.
     *
     * @param wanted asked on the event thread
     */
    public void tell(BooleanSupplier wanted, Runnable telling) {
        new EventQueue(display).later(() -> {
            if (!isGone() && wanted.getAsBoolean()) {
                telling.run();
            }
        });
    }
}
