package org.amberyard.workbench.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** A line of text of the height of its font; where it is wider than its place it ends with an ellipsis, and a tip has all of it. */
public final class CutText extends Canvas {
    private static final String ELLIPSIS = "…";

    private final Font font;
    private String text = "";
    private Palette ink = Palette.INK;

    /** An empty line. */
    public CutText(Composite parent, Fonts font) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.font = font.font();
        addListener(SWT.Paint, e -> paint(e.gc));
        addListener(SWT.Resize, e -> tell());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = text;
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_LABEL;
            }
        });
    }

    /** Shows a text in a colour. */
    public void show(String words, Palette colour) {
        if (words.equals(text) && colour == ink) {
            return;
        }
        text = words.replace('\n', ' ');
        ink = colour;
        tell();
        getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
        redraw();
    }

    /** The whole text. */
    public String text() {
        return text;
    }

    private void tell() {
        setToolTipText(shown().equals(text) ? null : text);
    }

    /** As much of the text as has room. */
    public String shown() {
        GC gc = new GC(this);
        gc.setFont(font);
        String shown = cut(gc);
        gc.dispose();
        return shown;
    }

    private String cut(GC gc) {
        int room = getClientArea().width;
        if (gc.textExtent(text).x <= room) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (gc.textExtent(text.substring(0, middle) + ELLIPSIS).x <= room) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return text.substring(0, low).strip() + ELLIPSIS;
    }

    private void paint(GC gc) {
        gc.setFont(font);
        gc.setForeground(ink.color());
        String shown = cut(gc);
        gc.drawText(shown, 0, Math.max(0, (getClientArea().height - gc.textExtent(shown).y) / 2), SWT.DRAW_TRANSPARENT);
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        GC gc = new GC(this);
        gc.setFont(font);
        Point size = gc.textExtent(text.isEmpty() ? ELLIPSIS : text);
        gc.dispose();
        return new Point(widthHint == SWT.DEFAULT ? size.x : widthHint, heightHint == SWT.DEFAULT ? size.y : heightHint);
    }
}
