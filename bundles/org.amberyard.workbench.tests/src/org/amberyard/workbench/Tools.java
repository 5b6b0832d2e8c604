package org.amberyard.workbench;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** The tables of pages by their titles, and the commands beside these. */
final class Tools {
    private Tools() {
    }

    /** Presses the command of a text, wherever in the window it is. */
    static void press(String text) {
        ToolItem item = items(OpenStudy.page().getWorkbenchWindow().getShell()).filter(i -> i.getText().strip().equals(text))
                .findFirst().orElseThrow();
        item.notifyListeners(SWT.Selection, new Event());
    }

    /** True when a title or command of a text is in sight. */
    static boolean has(String text) {
        return items(OpenStudy.page().getWorkbenchWindow().getShell())
                .anyMatch(i -> i.getParent().isVisible() && i.getText().strip().equals(text));
    }

    /** The table of a title, be it behind another. */
    static FeatureTable table(String title) {
        return View.all(OpenStudy.page().getWorkbenchWindow().getShell(), Grid.class).stream()
                .flatMap(g -> FeatureTable.of(g).stream()).filter(t -> t.title().equals(title)).findFirst().orElseThrow();
    }

    /** Puts a text on the clipboard. */
    static void copy(Display display, String text) {
        display.syncExec(() -> {
            Clipboard clipboard = new Clipboard(display);
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
        });
    }

    /** The text on the clipboard; null for none. */
    static String copied(Display display) {
        return display.syncCall(() -> {
            Clipboard clipboard = new Clipboard(display);
            try {
                return (String) clipboard.getContents(TextTransfer.getInstance());
            } finally {
                clipboard.dispose();
            }
        });
    }

    private static Stream<ToolItem> items(Control control) {
        if (control instanceof ToolBar bar) {
            return Arrays.stream(bar.getItems());
        }
        return Optional.of(control).filter(Composite.class::isInstance).map(Composite.class::cast).stream()
                .flatMap(c -> Arrays.stream(c.getChildren())).flatMap(Tools::items);
    }
}
