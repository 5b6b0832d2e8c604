package org.amberyard.workbench.views;

import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/** The answer in words, the sentence about cost set off from those that follow; where it goes on out of sight, it says so. */
final class AnswerText {
    private static final String GOES_ON = " … ";

    private final StyledText text;

    AnswerText(Composite parent) {
        text = new StyledText(parent, SWT.WRAP | SWT.READ_ONLY | SWT.MULTI | SWT.V_SCROLL);
        text.setAlwaysShowScrollBars(false);
        text.setFont(Fonts.SMALL.font());
        text.setForeground(Palette.INK.color());
        text.setCaret(null);
        text.addListener(SWT.Resize, e -> tellCut());
        text.addListener(SWT.Paint, e -> paintCut(e.gc));
    }

    StyledText control() {
        return text;
    }

    /** Shows an answer; the first sentence of it is that about cost. */
    void show(String answer, String first) {
        text.setText(answer);
        StyleRange strong = new StyleRange();
        strong.length = first.length();
        strong.font = Fonts.STRONG.font();
        text.setStyleRange(strong);
        tellCut();
    }

    void clear() {
        text.setText("");
        tellCut();
    }

    /** Lets an answer step back that is not up to date. */
    void setFaded(boolean isFaded) {
        text.setForeground((isFaded ? Palette.FADED : Palette.INK).color());
    }

    /** A tip has what is scrolled out of sight; over what is seen it would only be in the way. */
    private void tellCut() {
        text.setToolTipText(height() > text.getClientArea().height ? text.getText() : null);
    }

    private int height() {
        return text.computeSize(text.getClientArea().width, SWT.DEFAULT).y;
    }

    private void paintCut(GC gc) {
        Rectangle area = text.getClientArea();
        if (text.getTopPixel() + area.height >= height()) {
            return;
        }
        Point size = gc.textExtent(GOES_ON);
        int bottom = wholeLines(area.height);
        gc.setBackground(Palette.PAPER.color());
        gc.setForeground(Palette.NOTICE.color());
        gc.fillRectangle(0, bottom, area.width, area.height - bottom);
        gc.fillRectangle(area.width - size.x, bottom - size.y, size.x, size.y);
        gc.drawText(GOES_ON, area.width - size.x, bottom - size.y);
    }

    /** Where the last line ends that is seen whole: half a line cannot be read. */
    private int wholeLines(int height) {
        int offset = text.getOffsetAtPoint(new Point(text.getLeftMargin(), height - 1));
        if (offset < 0) {
            return height;
        }
        int top = text.getLocationAtOffset(offset).y;
        return top + text.getLineHeight(offset) > height ? top : height;
    }
}
