package org.amberyard.workbench.handlers;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;

/** Asks which of several things in a file is meant; where there is one, it is that. */
final class NameChoice {
    private NameChoice() {
    }

    /** Place of the chosen name; empty when none is wanted. */
    static OptionalInt ask(Shell shell, String title, String question, List<String> names) {
        if (names.size() == 1) {
            return OptionalInt.of(0);
        }
        ElementListSelectionDialog dialog = new ElementListSelectionDialog(shell, LabelProvider.createTextProvider(
                place -> names.get((Integer) place)));
        dialog.setTitle(title);
        dialog.setMessage(question);
        dialog.setMultipleSelection(false);
        dialog.setElements(IntStream.range(0, names.size()).boxed().toArray());
        return dialog.open() == Window.OK && dialog.getFirstResult() instanceof Integer place ? OptionalInt.of(place)
                : OptionalInt.empty();
    }
}
