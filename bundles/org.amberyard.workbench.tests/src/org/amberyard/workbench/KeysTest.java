package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Looks keys up in the list of keys. */
@ExtendWith(WorkbenchExtension.class)
class KeysTest {

    @Test
    void keysAreListedByPurposeAndFoundByWords(Display display) {
        display.asyncExec(() -> Commands.run("keys"));
        OpenStudy.await(display, () -> dialog(display).isPresent());
        Shell dialog = display.syncCall(() -> dialog(display).orElseThrow());
        try {
            List<String> groups = display.syncCall(() -> Arrays.stream(tree(dialog).getItems()).map(TreeItem::getText).toList());
            assertEquals(List.of("In tables: move and select", "In tables: edit", "In the plan grid", "In charts", "In the window"), groups.subList(0, 5));
            Map<String, String> keys = display.syncCall(() -> lines(dialog));
            assertEquals("Why this figure", keys.get("Ctrl+G Y"));
            assertEquals("Fill down", keys.get("Ctrl+D"));
            assertEquals("Units: Metric", keys.get("Ctrl+L I").replace(" units", ""));
            assertTrue(keys.size() > 80, keys.size() + " keys");

            display.syncExec(() -> View.all(dialog, Text.class).get(0).setText("paste spreadsheet"));
            assertEquals(List.of("Ctrl+V"), display.syncCall(() -> List.copyOf(lines(dialog).keySet())));
            display.syncExec(() -> View.all(dialog, Text.class).get(0).setText("quizzaciously"));
            assertEquals("No key has these words.", display.syncCall(() -> tree(dialog).getItem(0).getText()));
        } finally {
            display.syncExec(dialog::close);
        }
    }

    private static Tree tree(Shell dialog) {
        return View.all(dialog, Tree.class).get(0);
    }

    private static Map<String, String> lines(Shell dialog) {
        return Stream.of(tree(dialog).getItems()).flatMap(g -> Stream.of(g.getItems()))
                .collect(Collectors.toMap(i -> i.getText(0), i -> i.getText(1), (one, other) -> one));
    }

    private static Optional<Shell> dialog(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals("Keyboard")).findFirst();
    }
}
