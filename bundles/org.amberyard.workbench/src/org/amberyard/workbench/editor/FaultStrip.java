package org.amberyard.workbench.editor;

import java.util.List;
import java.util.function.Consumer;
import org.amberyard.model.validation.Finding;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A strip of a page, there only while errors keep the study from being evaluated: the first of the page, and the way to it. */
final class FaultStrip {
    private static final int MOST_SHOWN = 260;

    private final Composite strip;
    private final Label words;
    private List<Finding> shown = List.of();

    /**
     * A strip that takes no room yet.
     *
     * @param parent a grid of one column
     * @param opener goes to the place of a finding
     */
    FaultStrip(Composite parent, Consumer<Finding> opener) {
        strip = new Composite(parent, SWT.NONE);
        strip.setBackground(Palette.ERROR_WASH.color());
        strip.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 3).spacing(8, 0).applyTo(strip);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(strip);
        strip.setVisible(false);
        words = new Label(strip, SWT.WRAP);
        words.setForeground(Palette.ERROR.color());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(100, SWT.DEFAULT).applyTo(words);
        Button open = new Button(strip, SWT.PUSH);
        open.setText(Messages.Fault_open);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(open);
        open.addListener(SWT.Selection, e -> opener.accept(shown.get(0)));
    }

    /** Shows the errors of a page; none takes the strip away. */
    void show(List<Finding> errors) {
        if (errors.equals(shown)) {
            return;
        }
        shown = List.copyOf(errors);
        if (!shown.isEmpty()) {
            String first = Words.say(shown.get(0).message());
            String text = shown.size() == 1 ? first : NLS.bind(Messages.Fault_more, first, shown.size() - 1);
            words.setToolTipText(text);
            words.setText((text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN).strip() + "…" : text).replace("&", "&&"));
        }
        strip.setVisible(!shown.isEmpty());
        ((GridData) strip.getLayoutData()).exclude = shown.isEmpty();
        strip.getParent().layout(true, true);
    }
}
