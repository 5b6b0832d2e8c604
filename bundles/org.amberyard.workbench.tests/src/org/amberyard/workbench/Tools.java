package org.amberyard.workbench;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** The commands beside the titles of tables. */
final class Tools {
    private Tools() {
    }

    /** Presses the command of a text, wherever in the window it is. */
    static void press(String text) {
        ToolItem item = items(OpenStudy.page().getWorkbenchWindow().getShell()).filter(i -> i.getText().equals(text))
                .findFirst().orElseThrow();
        item.notifyListeners(SWT.Selection, new Event());
    }

    private static Stream<ToolItem> items(Control control) {
        if (control instanceof ToolBar bar) {
            return Arrays.stream(bar.getItems());
        }
        return Optional.of(control).filter(Composite.class::isInstance).map(Composite.class::cast).stream()
                .flatMap(c -> Arrays.stream(c.getChildren())).flatMap(Tools::items);
    }
}
