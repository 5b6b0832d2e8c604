package org.amberyard.workbench.charts;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.amberyard.charts.Chart;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;

/** Shows a chart, or says why there is none. The last picture stays until the next one has been painted. */
public final class ChartCanvas extends Canvas {

    private static final int FADED = 110;

    private final ChartPainting painting = new ChartPainting(this);
    private ChartPicture picture;
    private Image image;
    private String message = "";

    /** An empty canvas. */
    public ChartCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND | SWT.V_SCROLL);
        getVerticalBar().setVisible(false);
        getVerticalBar().addListener(SWT.Selection, e -> redraw());
        addListener(SWT.Paint, e -> paint(e.gc));
        addListener(SWT.Resize, e -> resized());
        addListener(SWT.MouseMove, this::tell);
        addListener(SWT.Dispose, e -> disposeImage());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = textAlternative();
            }
        });
    }

    /** Shows a chart, which is made and painted in the background. */
    public void show(Supplier<Chart> source) {
        painting.show(source);
    }

    /** Says something above the chart, which fades, or in place of one; blank for nothing. */
    public void say(String text) {
        if (!text.equals(message)) {
            message = text;
            redraw();
        }
    }

    /** Takes the chart away. */
    public void clear() {
        painting.forget();
        disposeImage();
        picture = null;
        redraw();
    }

    /** The chart on show. */
    public Optional<Chart> chart() {
        return Optional.ofNullable(picture).map(ChartPicture::chart);
    }

    Optional<ChartPicture> picture() {
        return Optional.ofNullable(picture);
    }

    /** What is on show, in words. */
    public String textAlternative() {
        String words = chart().map(Chart::textAlternative).orElse("");
        return message.isEmpty() ? words : message + " " + words;
    }

    /** Shows a picture; its image is this canvas's to dispose from now on. */
    void publish(ChartPicture next, Image nextImage) {
        disposeImage();
        picture = next;
        image = nextImage;
        fitScrollBar();
        redraw();
    }

    private void resized() {
        painting.resize();
        fitScrollBar();
    }

    private void fitScrollBar() {
        int content = picture == null ? 0 : picture.height();
        int shown = getClientArea().height;
        ScrollBar bar = getVerticalBar();
        bar.setVisible(content > shown && shown > 0);
        bar.setMaximum(Math.max(1, content));
        bar.setThumb(Math.max(1, Math.min(shown, content)));
        bar.setIncrement(20);
        bar.setPageIncrement(Math.max(1, shown));
    }

    private int scrolled() {
        return getVerticalBar().isVisible() ? getVerticalBar().getSelection() : 0;
    }

    private void disposeImage() {
        if (image != null) {
            image.dispose();
            image = null;
        }
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(Palette.PAPER.color());
        gc.fillRectangle(area);
        if (image != null) {
            gc.setAlpha(message.isEmpty() ? 255 : FADED);
            gc.drawImage(image, 0, -scrolled());
            gc.setAlpha(255);
        }
        if (!message.isEmpty()) {
            paintMessage(gc, area);
        }
    }

    private void paintMessage(GC gc, Rectangle area) {
        gc.setFont(Fonts.TEXT.font());
        String wrapped = Lines.wrapped(gc, message, area.width - 32);
        Point size = gc.textExtent(wrapped);
        int x = (area.width - size.x) / 2;
        int y = image == null ? (area.height - size.y) / 2 : 6;
        gc.setBackground(image == null ? Palette.PAPER.color() : Palette.WARNING_WASH.color());
        gc.fillRectangle(x - 8, y - 4, size.x + 16, size.y + 8);
        gc.setForeground(image == null ? Palette.MUTED.color() : Palette.INK.color());
        gc.drawText(wrapped, x, y, true);
    }

    private void tell(Event event) {
        String tip = picture == null ? null : picture.tip(event.x, event.y + scrolled());
        if (!Objects.equals(tip, getToolTipText())) {
            setToolTipText(tip);
        }
    }
}
