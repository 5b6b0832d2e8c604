package org.amberyard.workbench.narrative;

import java.util.Objects;
import java.util.Optional;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.study.NarrativeText;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;

/** Takes the text of a narrative: names of figures are coloured, unknown ones marked; a pause in typing enters it. */
final class NarrativeEntry {
    private static final int PAUSE_MS = 700;

    private final StudySession session;
    private final Runnable typed;
    private final StyledText text;
    private final Runnable pause = this::enter;
    private Optional<Narrative> narrative = Optional.empty();
    /** The text as the study had it when it was last shown or entered. */
    private String known = "";

    /** @param typed is run whenever the text on show is another */
    NarrativeEntry(Composite parent, StudySession session, Runnable typed) {
        this.session = session;
        this.typed = typed;
        text = NarrativeField.of(parent, SWT.NONE, Palette.PAPER);
        text.addListener(SWT.Modify, e -> modified());
        text.addListener(SWT.FocusOut, e -> enter());
        text.addListener(SWT.Paint, e -> sayWhyNone(e.gc));
    }

    /** Without a heading there is nothing to write into, and that is said where it would be written. */
    private void sayWhyNone(GC gc) {
        if (narrative.isEmpty()) {
            gc.setForeground(Palette.MUTED.color());
            gc.drawText(Messages.Narrative_none, text.getLeftMargin(), text.getTopMargin(), true);
        }
    }

    StyledText control() {
        return text;
    }

    /** The text as it stands in the field. */
    String typed() {
        return text.getText();
    }

    /** Shows a narrative, or what has become of it; what was typed into another is entered before. */
    void show(Optional<Narrative> next) {
        if (!next.equals(narrative)) {
            enter();
            narrative = next;
            load();
        } else if (!known.equals(stored())) {
            load();
        }
        text.setEnabled(narrative.isPresent());
        text.setBackground((narrative.isPresent() ? Palette.PAPER : Palette.BAND).color());
        text.redraw();
    }

    /** Goes to the end of the text; false when there is none to write. */
    boolean goToEnd() {
        if (narrative.isPresent()) {
            text.setSelection(text.getCharCount());
            text.setFocus();
        }
        return narrative.isPresent();
    }

    private void load() {
        known = stored();
        text.setText(known);
    }

    private String stored() {
        return narrative.map(Narrative::getText).filter(Objects::nonNull).orElse("").replace("\r\n", "\n");
    }

    private void modified() {
        colour();
        text.getDisplay().timerExec(PAUSE_MS, pause);
        typed.run();
    }

    private void colour() {
        int at = 0;
        text.setStyleRanges(new StyleRange[0]);
        for (NarrativeText.Part part : NarrativeText.of(text.getText()).parts()) {
            if (!(part instanceof NarrativeText.Words)) {
                boolean known = part instanceof NarrativeText.Named named && named.figure().isPresent();
                text.setStyleRange(new StyleRange(at, part.raw().length(), (known ? Palette.NOTICE : Palette.ERROR).color(), known ? null
                        : Palette.ERROR_WASH.color()));
            }
            at += part.raw().length();
        }
    }

    /** Enters what was typed into the study, as one edit; nothing where it is as it was. */
    void enter() {
        if (text.isDisposed()) {
            return;
        }
        String now = text.getText().replace("\r\n", "\n");
        boolean there = narrative.filter(n -> n.eContainer() == session.study()).isPresent();
        if (there && !now.equals(known)) {
            known = now;
            session.set(narrative.orElseThrow(), StudyPackage.Literals.NARRATIVE__TEXT, now);
        }
    }

    /** Puts words at the caret, in place of what is selected. */
    void insert(String words) {
        if (narrative.isPresent()) {
            int from = text.getSelection().x;
            text.insert(words);
            text.setSelection(from + words.length());
            text.setFocus();
        }
    }
}
