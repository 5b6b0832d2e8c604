package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;
import org.amberyard.model.io.FileSum;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.workbench.handlers.StudyOpener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Whoever is asked about unsaved changes must know of which study they are. */
@ExtendWith(WorkbenchExtension.class)
class RecoveryQuestionTest {

    @TempDir
    private Path folder;

    @Test
    void theQuestionNamesStudyFolderAndDays(Display display) throws Exception {
        Path file = folder.resolve(OpenStudy.FILE);
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            RecoveryFile.write(study.study(), file, FileSum.of(file));
        }
        Files.setLastModifiedTime(RecoveryFile.of(file), FileTime.from(LocalDateTime.of(2026, 3, 7, 14, 5).atZone(ZoneId.systemDefault()).toInstant()));
        Files.setLastModifiedTime(file, FileTime.from(LocalDateTime.of(2025, 2, 6, 9, 0).atZone(ZoneId.systemDefault()).toInstant()));
        display.asyncExec(() -> new StudyOpener(OpenStudy.page()).open(file));
        OpenStudy.await(display, () -> question(display).isPresent());
        Shell question = display.syncCall(() -> question(display).orElseThrow());
        String asked = display.syncCall(() -> String.join("\n", View.all(question, Label.class).stream().map(Label::getText).toList()));
        press(display, question, "Discard");
        OpenStudy.await(display, () -> OpenStudy.page().getActiveEditor() != null);
        display.syncExec(() -> {
            IEditorPart opened = OpenStudy.page().getActiveEditor();
            OpenStudy.page().closeEditor(opened, false);
        });

        assertTrue(asked.contains("“Ostrick Vale goes electric?”"), asked);
        assertTrue(asked.contains("File: " + OpenStudy.FILE) && asked.contains("Folder: " + folder), asked);
        assertTrue(asked.contains("2026") && asked.contains("2025") && asked.contains(":05"), asked);
        assertFalse(Files.exists(RecoveryFile.of(file)), "it was declined");
    }

    private static void press(Display display, Shell dialog, String text) {
        display.syncExec(() -> {
            Button button = View.all(dialog, Button.class).stream().filter(b -> b.getText().equals(text)).findFirst().orElseThrow();
            assertEquals(text, button.getText());
            button.notifyListeners(SWT.Selection, new Event());
        });
    }

    private static Optional<Shell> question(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals("Unsaved changes")).findFirst();
    }
}
