package org.amberyard.workbench.charts;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.charts.Subject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Tells what is under the pointer; a double click opens the part of the study behind it. */
final class ChartPointer {
    private final ChartCanvas canvas;
    private final ChartScrolling scrolling;
    private Consumer<Subject> opener;

    ChartPointer(ChartCanvas canvas, ChartScrolling scrolling) {
        this.canvas = canvas;
        this.scrolling = scrolling;
        canvas.addListener(SWT.MouseMove, this::tell);
        canvas.addListener(SWT.MouseDoubleClick, this::open);
    }

    void onOpen(Consumer<Subject> newOpener) {
        opener = newOpener;
    }

    private void tell(Event event) {
        String tip = canvas.picture().map(p -> p.tip(event.x, event.y + scrolling.offset())).orElse(null);
        boolean opens = subject(event).isPresent();
        String told = tip != null && opens ? tip + "\n" + Messages.Tip_inputs : tip;
        if (!Objects.equals(told, canvas.getToolTipText())) {
            canvas.setToolTipText(told);
        }
        canvas.setCursor(opens ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }

    private void open(Event event) {
        subject(event).ifPresent(opener::accept);
    }

    private Optional<Subject> subject(Event event) {
        return opener == null ? Optional.empty()
                : canvas.picture().flatMap(p -> p.subject(event.x, event.y + scrolling.offset()));
    }
}
