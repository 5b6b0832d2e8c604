package org.amberyard.workbench.charts;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartZoom;
import org.amberyard.charts.Subject;
import org.amberyard.core.progress.Progress;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.work.WorkStrip;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/**
 * Shows a chart, or says why there is none. The last picture stays until the next one has been painted. A double click opens
 * the part of the study behind what was clicked.
 */
public final class ChartCanvas extends Canvas {

    private static final int FADED = 110;

    private final ChartPainting painting = new ChartPainting(this);
    private final ChartScrolling scrolling;
    private final ChartZooming zooming;
    private final LegendSwitch legend;
    private final ChartPointer pointer;
    private Optional<ChartZoom> zoom = Optional.empty();
    private List<ChartNotes.Noted> notes = List.of();
    private ChartPicture picture;
    private Image image;
    private String message = "";
    private String failure = "";
    private boolean outdated;
    private boolean faded;

    /** An empty canvas. */
    public ChartCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND | SWT.V_SCROLL);
        scrolling = new ChartScrolling(this);
        zooming = new ChartZooming(this, scrolling);
        legend = new LegendSwitch(this, scrolling, zooming);
        pointer = new ChartPointer(this, scrolling, legend);
        addListener(SWT.Paint, e -> paint(e.gc));
        addListener(SWT.Resize, e -> resized());
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        addListener(SWT.Dispose, e -> disposeImage());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = textAlternative();
            }
        });
    }

    /** Shows a chart, which is made and painted in the background; making it may tell how far it is, and is stopped so. */
    public void show(Function<Progress, Chart> source) {
        painting.show(source);
    }

    /** Adds a strip to a grid with one column that tells of charts that take long to make, and stops them. */
    void addStrip(Composite parent) {
        painting.tellOn(new WorkStrip(parent, 1, painting::stop, painting::again));
    }

    /** Says something above the chart, which fades, or in place of one; blank for nothing. */
    public void say(String text) {
        if (!text.equals(message)) {
            message = text;
            redraw();
        }
    }

    /** Says whether the figures are out of date; a picture that is has faded until the next one has been painted. */
    void setOutdated(boolean isOutdated) {
        outdated = isOutdated;
        setFaded(outdated || faded && painting.isUnderWay());
    }

    /** The picture is not the one asked for, which takes a while. */
    void outpaced() {
        setFaded(true);
    }

    private void setFaded(boolean isFaded) {
        if (isFaded != faded) {
            faded = isFaded;
            redraw();
        }
    }

    /** True while the picture shows figures that are not those asked for. */
    public boolean isFaded() {
        return faded || !said().isEmpty();
    }

    /** Takes the chart away. */
    public void clear() {
        painting.forget();
        failure = "";
        drop();
    }

    /** Takes the picture away, not the wish for one. */
    void drop() {
        disposeImage();
        picture = null;
        redraw();
    }

    /** Takes the last chart away, since it is not the one asked for, and says what went wrong. */
    void fail(String reason) {
        failure = reason;
        drop();
    }

    /** Calls the opener with the part of the study behind what is clicked twice. */
    void onOpen(Consumer<Subject> opener) {
        pointer.onOpen(opener);
    }

    /** The chart on show. */
    public Optional<Chart> chart() {
        return Optional.ofNullable(picture).map(ChartPicture::chart);
    }

    Optional<ChartPicture> picture() {
        return Optional.ofNullable(picture);
    }

    /** The part of the chart that is asked for; empty for the whole. */
    public Optional<ChartZoom> zoom() {
        return zoom;
    }

    /** Shows a part of the chart, also when its figures change; empty for the whole. */
    void zoom(Optional<ChartZoom> next) {
        if (!next.equals(zoom)) {
            zoom = next;
            repaint();
        }
    }

    /** Shows notes on charts; those on others wait for them. */
    void note(List<ChartNotes.Noted> next) {
        notes = next;
        repaint();
    }

    /** Notes on charts, on this one and others. */
    List<ChartNotes.Noted> notes() {
        return notes;
    }

    /** A place on the canvas as a place in the picture, which may be scrolled. */
    Point inPicture(int x, int y) {
        return new Point(x, y + scrolling.offset());
    }

    /** Paints the chart anew, since it is looked at otherwise. */
    void repaint() {
        painting.repaint();
    }

    /** True as long as the chart asked for is not on show. */
    public boolean isUnderWay() {
        return painting.isUnderWay();
    }

    ChartZooming zooming() {
        return zooming;
    }

    LegendSwitch legend() {
        return legend;
    }

    /** What is on show, in words. */
    public String textAlternative() {
        String words = picture().map(ChartPicture::words).orElse("");
        return (said() + " " + words).strip();
    }

    private String said() {
        return message.isEmpty() ? failure : message;
    }

    /** Shows a picture; its image is this canvas's to dispose from now on. */
    void publish(ChartPicture next, Image nextImage) {
        disposeImage();
        failure = "";
        picture = next;
        image = nextImage;
        faded = outdated;
        fit();
        redraw();
    }

    private void resized() {
        painting.repaint();
        fit();
    }

    private void fit() {
        scrolling.fit(picture == null ? 0 : picture.height());
    }

    private void disposeImage() {
        if (image != null) {
            image.dispose();
            image = null;
        }
    }

    private void paint(GC gc) {
        painting.seen();
        Rectangle area = getClientArea();
        gc.setBackground(Palette.PAPER.color());
        gc.fillRectangle(area);
        if (image != null) {
            gc.setAlpha(isFaded() ? FADED : 255);
            gc.drawImage(image, 0, -scrolling.offset());
            gc.setAlpha(255);
        }
        zooming.paint(gc);
        if (!said().isEmpty()) {
            paintMessage(gc, area);
        }
        if (isFocusControl()) {
            gc.drawFocus(area.x, area.y, area.width, area.height);
        }
    }

    private void paintMessage(GC gc, Rectangle area) {
        gc.setFont(Fonts.TEXT.font());
        String wrapped = Lines.wrapped(gc, said(), area.width - 32);
        Point size = gc.textExtent(wrapped);
        int x = (area.width - size.x) / 2;
        int y = image == null ? (area.height - size.y) / 2 : 6;
        gc.setBackground(image == null ? Palette.PAPER.color() : Palette.WARNING_WASH.color());
        gc.fillRectangle(x - 8, y - 4, size.x + 16, size.y + 8);
        gc.setForeground(image == null ? Palette.MUTED.color() : Palette.INK.color());
        gc.drawText(wrapped, x, y, true);
    }
}
