package org.amberyard.workbench.charts;

import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.charts.Subject;
import org.amberyard.workbench.look.PlaceTip;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Tells what is under the pointer; a double click opens the part of the study behind it, or shows all of a chart of which a part is shown. */
final class ChartPointer {
    private final ChartCanvas canvas;
    private final ChartScrolling scrolling;
    private final LegendSwitch legend;
    private final PlaceTip shown;
    private Consumer<Subject> opener;

    ChartPointer(ChartCanvas canvas, ChartScrolling scrolling, LegendSwitch legend) {
        this.legend = legend;
        this.canvas = canvas;
        this.scrolling = scrolling;
        this.shown = new PlaceTip(canvas);
        canvas.addListener(SWT.MouseMove, this::tell);
        canvas.addListener(SWT.MouseDoubleClick, this::open);
    }

    void onOpen(Consumer<Subject> newOpener) {
        opener = newOpener;
    }

    private void tell(Event event) {
        String tip = canvas.picture().map(p -> p.tip(event.x, event.y + scrolling.offset())).orElse(null);
        boolean opens = subject(event).isPresent();
        boolean switches = legend.at(event).isPresent();
        String told = switches ? Messages.Tip_legend : tip != null && opens ? tip + "\n" + Messages.Tip_inputs : tip;
        shown.at(told, () -> told);
        canvas.setCursor(opens || switches ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }

    private void open(Event event) {
        int y = event.y + scrolling.offset();
        if (legend.at(event).isPresent()) {
            return;
        }
        if (canvas.zoom().isPresent() && canvas.picture().filter(p -> p.tip(event.x, y) != null).isEmpty()) {
            canvas.zoom(Optional.empty());
        } else {
            subject(event).ifPresent(opener::accept);
        }
    }

    private Optional<Subject> subject(Event event) {
        return opener == null ? Optional.empty()
                : canvas.picture().flatMap(p -> p.subject(event.x, event.y + scrolling.offset()));
    }
}
