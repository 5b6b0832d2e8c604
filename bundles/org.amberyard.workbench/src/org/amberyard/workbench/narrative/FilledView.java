package org.amberyard.workbench.narrative;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.report.papers.NarrativeFilling;
import org.amberyard.study.NarrativeText;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;

/** A narrative as it will be read: its figures stand out, and so does what is missing. */
final class FilledView {
    private final StyledText text;

    FilledView(Composite parent) {
        text = NarrativeField.of(parent, SWT.READ_ONLY, Palette.BAND);
        text.setCaret(null);
    }

    StyledText control() {
        return text;
    }

    /** As long as there are no results, the text stands as it was typed. */
    void show(String typed) {
        text.setText(typed);
    }

    /**
     * Shows a text with its figures.
     *
     * @param caret place in the text as it was typed that is to be in sight
     */
    void show(NarrativeFilling filling, int caret) {
        int typed = 0;
        int inSight = 0;
        StringBuilder words = new StringBuilder();
        List<StyleRange> styles = new ArrayList<>();
        for (NarrativeText.Part part : filling.text().parts()) {
            String printed = new NarrativeText(List.of(part)).filled(filling::printed);
            if (!(part instanceof NarrativeText.Words)) {
                boolean whole = new NarrativeFilling(new NarrativeText(List.of(part)), filling.figures()).faults().isEmpty();
                StyleRange style = new StyleRange(words.length(), printed.length(), whole ? null : Palette.ERROR.color(), (whole
                        ? Palette.AMBER_WASH : Palette.ERROR_WASH).color());
                styles.add(style);
            }
            if (typed < caret) {
                inSight = words.length() + Math.min(printed.length(), caret - typed);
            }
            typed += part.raw().length();
            words.append(printed);
        }
        text.setText(words.toString());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
        text.setSelection(inSight);
        text.showSelection();
    }
}
