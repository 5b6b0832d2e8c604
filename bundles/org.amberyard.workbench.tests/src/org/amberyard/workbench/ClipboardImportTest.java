package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.amberyard.model.fleet.Bus;
import org.amberyard.workbench.sheets.TableDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Imports a table that was copied in a spreadsheet, by the command of the menu. */
@ExtendWith(WorkbenchExtension.class)
class ClipboardImportTest {

    @TempDir
    private Path folder;

    private static Optional<Shell> dialog(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getData() instanceof TableDialog).findFirst();
    }

    private static Button button(Display display) {
        return View.all(dialog(display).orElseThrow(), Button.class).stream().filter(b -> b.getText().equals("Import")).findFirst().orElseThrow();
    }

    /** Cells of a spreadsheet come as text with tabs; they are read beside the window, which goes on meanwhile. */
    @Test
    void aTableOnTheClipboardIsImportedAsThatOfAFile(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Tools.copy(display, "Unit\tRole\tOdometer (mi)\r\nB01\troute\t123456\r\n");
            boolean atOnce = display.syncCall(() -> {
                OpenStudy.page().activate(study.editor());
                Commands.run("importClipboard");
                return dialog(display).isPresent();
            });
            assertFalse(atOnce, "the command does not wait for what is read");
            study.await(() -> dialog(display).isPresent());
            study.await(() -> button(display).isEnabled());
            display.syncExec(() -> button(display).notifyListeners(SWT.Selection, new Event()));
            Bus bus = study.study().getBuses().get(0);
            study.await(() -> Math.abs(bus.getOdometerKm() - 123_456 * 1.609344) < 1e-6);
            assertTrue(bus.getSources().stream().anyMatch(s -> s.getCitation().equals("clipboard")));
            study.await(() -> dialog(display).isEmpty());
        }
    }
}
