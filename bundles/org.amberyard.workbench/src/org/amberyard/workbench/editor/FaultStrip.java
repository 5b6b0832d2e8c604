package org.amberyard.workbench.editor;

import java.util.List;
import java.util.function.Consumer;
import org.amberyard.model.validation.Finding;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.CutText;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

/**
 * A line at the foot of the editor: the first error that keeps the study from being evaluated, on the page or else elsewhere, and the way to
 * it. It always has its room, so that nothing moves under the pointer when an error comes or goes.
 */
final class FaultStrip {
    private static final int HEIGHT = 22;

    private final Composite strip;
    private final CutText words;
    private final Link open;
    private List<Finding> here = List.of();
    private List<Finding> elsewhere = List.of();

    /**
     * A line that says that there are no errors.
     *
     * @param parent a grid of one column
     * @param opener goes to the place of a finding
     */
    FaultStrip(Composite parent, Consumer<Finding> opener) {
        strip = new Composite(parent, SWT.NONE);
        strip.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 0).spacing(12, 0).applyTo(strip);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, HEIGHT).applyTo(strip);
        words = new CutText(strip, Fonts.SMALL);
        GridDataFactory.fillDefaults().grab(true, true).align(SWT.FILL, SWT.FILL).hint(100, SWT.DEFAULT).applyTo(words);
        open = new Link(strip, SWT.NONE);
        open.setFont(Fonts.SMALL.font());
        open.setLinkForeground(Palette.NOTICE.color());
        open.setText("<a>" + Messages.Fault_open + "</a>");
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(open);
        open.addListener(SWT.Selection, e -> opener.accept(here.isEmpty() ? elsewhere.get(0) : here.get(0)));
        say();
    }

    /** Shows the errors of the page and those of other pages. */
    void show(List<Finding> ofPage, List<Finding> ofOthers) {
        if (!ofPage.equals(here) || !ofOthers.equals(elsewhere)) {
            here = List.copyOf(ofPage);
            elsewhere = List.copyOf(ofOthers);
            say();
        }
    }

    private void say() {
        boolean none = here.isEmpty() && elsewhere.isEmpty();
        words.show(none ? Messages.Fault_none : here.isEmpty() ? others() : first(here), none ? Palette.MUTED : Palette.ERROR);
        open.setVisible(!none);
        strip.setBackground((here.isEmpty() ? Palette.PAPER : Palette.ERROR_WASH).color());
    }

    private String others() {
        return NLS.bind(Messages.Fault_elsewhere, PageKind.of(elsewhere.get(0).element()).title(), first(elsewhere));
    }

    private static String first(List<Finding> errors) {
        String first = Words.say(errors.get(0).message());
        return errors.size() == 1 ? first : NLS.bind(Messages.Fault_more, first, errors.size() - 1);
    }
}
