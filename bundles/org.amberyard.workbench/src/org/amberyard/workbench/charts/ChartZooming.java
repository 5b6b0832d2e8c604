package org.amberyard.workbench.charts;

import java.util.Optional;
import org.amberyard.charts.ChartZoom;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;

/**
 * Shows a part of a chart: the one that is dragged over, more and less of it with the wheel and the keys + and -, the parts beside
 * it with the arrows, and the whole again with 0.
 */
final class ChartZooming {
    private static final double STEP = 0.8;
    private static final double MIDDLE = 0.5;
    private static final double MOVED = 0.2;
    /** What is dragged less far is meant for a click, or for the other direction alone. */
    private static final int LEAST_DRAG = 6;
    private static final int FILM = 70;

    private final ChartCanvas canvas;
    private final ChartScrolling scrolling;
    private Point from;
    private Point to;

    ChartZooming(ChartCanvas canvas, ChartScrolling scrolling) {
        this.canvas = canvas;
        this.scrolling = scrolling;
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseMove, this::drag);
        canvas.addListener(SWT.MouseUp, e -> release());
        canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
        canvas.addListener(SWT.KeyDown, this::key);
    }

    /** True while a part is being dragged over. */
    boolean isDragging() {
        return to != null && !(isShort(to.x - from.x) && isShort(to.y - from.y));
    }

    private void press(Event event) {
        Point at = new Point(event.x, event.y);
        from = event.button == 1 && area().filter(a -> a.contains(at)).isPresent() ? at : null;
        to = null;
    }

    private void drag(Event event) {
        if (from != null) {
            to = new Point(event.x, event.y);
            canvas.redraw();
        }
    }

    private void release() {
        if (from != null && isDragging()) {
            area().ifPresent(this::zoomToDragged);
        }
        from = null;
        to = null;
        canvas.redraw();
    }

    private void zoomToDragged(Rectangle area) {
        Rectangle part = dragged(area);
        double left = (part.x - area.x) / (double) area.width;
        double top = (part.y - area.y) / (double) area.height;
        zoom(left, left + part.width / (double) area.width, 1 - top - part.height / (double) area.height, 1 - top);
    }

    /** What is dragged over, as far as it lies in the plot; a drag along one direction takes all of the other. */
    private Rectangle dragged(Rectangle area) {
        Rectangle part = new Rectangle(Math.min(from.x, to.x), Math.min(from.y, to.y), Math.abs(to.x - from.x),
                Math.abs(to.y - from.y));
        if (isShort(part.width)) {
            part = new Rectangle(area.x, part.y, area.width, part.height);
        } else if (isShort(part.height)) {
            part = new Rectangle(part.x, area.y, part.width, area.height);
        }
        return part.intersection(area);
    }

    private static boolean isShort(int length) {
        return Math.abs(length) < LEAST_DRAG;
    }

    /** Draws the frame around what is dragged over. */
    void paint(GC gc) {
        if (from == null || !isDragging()) {
            return;
        }
        area().map(this::dragged).ifPresent(part -> {
            gc.setBackground(Palette.AMBER.color());
            gc.setForeground(Palette.AMBER.color());
            gc.setAlpha(FILM);
            gc.fillRectangle(part);
            gc.setAlpha(255);
            gc.drawRectangle(part);
        });
    }

    /** A chart that scrolls keeps the wheel for that and is zoomed with Ctrl. */
    private void wheel(Event event) {
        Optional<Rectangle> area = area().filter(a -> a.contains(event.x, event.y));
        if (area.isPresent() && (!scrolling.isNeeded() || (event.stateMask & SWT.MOD1) != 0)) {
            double x = (event.x - area.get().x) / (double) area.get().width;
            double y = 1 - (event.y - area.get().y) / (double) area.get().height;
            scale(event.count > 0 ? STEP : 1 / STEP, x, y);
            event.doit = false;
        }
    }

    private void key(Event event) {
        switch (event.character) {
            case '+', '=' -> in();
            case '-' -> out();
            case '0' -> whole();
            case SWT.ESC -> from = null;
            default -> move(event.keyCode);
        }
    }

    private void move(int key) {
        if (scrolling.isNeeded() || canvas.zoom().isEmpty()) {
            return;
        }
        switch (key) {
            case SWT.ARROW_LEFT -> zoom(-MOVED, 1 - MOVED, 0, 1);
            case SWT.ARROW_RIGHT -> zoom(MOVED, 1 + MOVED, 0, 1);
            case SWT.ARROW_UP -> zoom(0, 1, MOVED, 1 + MOVED);
            case SWT.ARROW_DOWN -> zoom(0, 1, -MOVED, 1 - MOVED);
            default -> {
                // other keys do not move the part
            }
        }
    }

    /** Shows less, and larger. */
    void in() {
        scale(STEP, MIDDLE, MIDDLE);
    }

    /** Shows more. */
    void out() {
        scale(1 / STEP, MIDDLE, MIDDLE);
    }

    /** Shows the whole chart. */
    void whole() {
        canvas.zoom(Optional.empty());
    }

    private void scale(double factor, double x, double y) {
        zoom(x - factor * x, x + factor * (1 - x), y - factor * y, y + factor * (1 - y));
    }

    private void zoom(double left, double right, double bottom, double top) {
        canvas.picture().ifPresent(p -> {
            Optional<ChartZoom> next = p.part(left, right, bottom, top);
            canvas.zoom(next);
        });
    }

    private Optional<Rectangle> area() {
        return canvas.picture().map(ChartPicture::plotArea)
                .map(a -> new Rectangle(a.x, a.y - scrolling.offset(), a.width, a.height));
    }
}
