package org.amberyard.workbench.views;

import org.amberyard.workbench.look.Fonts;
import org.eclipse.swt.custom.StyleRange;

/** Sets the sentence about cost off from those that follow. */
final class HeadlineStyle {

    private HeadlineStyle() {
    }

    static StyleRange strong(String first) {
        StyleRange range = new StyleRange();
        range.start = 0;
        range.length = first.length();
        range.font = Fonts.STRONG.font();
        return range;
    }
}
