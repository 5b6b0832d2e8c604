package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.handlers.FileDrop;
import org.amberyard.workbench.welcome.WelcomePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Closes the last study and goes to others from the page that is then shown. */
@ExtendWith(WorkbenchExtension.class)
class WelcomeTest {

    @TempDir
    private Path folder;

    @Test
    void withoutAStudyThePageOffersTheWaysToOne(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            OpenStudy.await(display, () -> !editors().contains(WelcomePage.ID));
            study.close();
            OpenStudy.await(display, () -> editors().equals(List.of(WelcomePage.ID)));
            List<String> ways = display.syncCall(() -> View.all(shell(), Button.class).stream().filter(Button::isVisible)
                    .map(Button::getText).toList());
            assertTrue(ways.containsAll(List.of("Open the example", "New study…", "Import CSV files…", "Open a study…")), ways.toString());
            List<String> recent = display.syncCall(() -> View.all(shell(), Link.class).stream().map(Link::getText).toList());
            assertTrue(recent.contains("<a>" + OpenStudy.FILE + "</a>"), recent.toString());

            display.asyncExec(() -> button(shell(), "New study…").notifyListeners(SWT.Selection, new Event()));
            OpenStudy.await(display, () -> asking(display).isPresent());
            display.asyncExec(() -> button(asking(display).orElseThrow(), "Begin the study").notifyListeners(SWT.Selection, new Event()));
            OpenStudy.await(display, () -> editors().equals(List.of(StudyEditor.ID)));
            display.syncExec(() -> OpenStudy.page().closeEditor(OpenStudy.page().getActiveEditor(), false));
            OpenStudy.await(display, () -> editors().equals(List.of(WelcomePage.ID)));

            display.syncExec(() -> View.all(shell(), Link.class).stream().filter(l -> l.getText().contains(OpenStudy.FILE))
                    .findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event()));
            OpenStudy.await(display, () -> editors().equals(List.of(StudyEditor.ID)));
            assertEquals(OpenStudy.FILE, display.syncCall(() -> OpenStudy.page().getActiveEditor().getTitle()));
            display.syncExec(() -> OpenStudy.page().closeEditor(OpenStudy.page().getActiveEditor(), false));
        }
    }

    @Test
    void aStudyDroppedOntoTheWindowIsOpened(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Path other = Files.copy(study.file(), folder.resolve("other.amberyard"));
            display.syncExec(() -> {
                assertNotNull(shell().getData(DND.DROP_TARGET_KEY), "the window takes what is dropped");
                new FileDrop(OpenStudy.page()).open(other);
            });
            OpenStudy.await(display, () -> OpenStudy.page().getActiveEditor().getTitle().equals("other.amberyard"));
            display.syncExec(() -> OpenStudy.page().closeEditor(OpenStudy.page().getActiveEditor(), false));
        }
    }

    private static Optional<Shell> asking(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.isVisible() && s.getText().equals("New study")).findFirst();
    }

    private static Button button(Shell shell, String text) {
        return View.all(shell, Button.class).stream().filter(b -> b.getText().equals(text)).findFirst().orElseThrow();
    }

    private static Shell shell() {
        return OpenStudy.page().getWorkbenchWindow().getShell();
    }

    private static List<String> editors() {
        return Arrays.stream(OpenStudy.page().getEditorReferences()).map(IEditorReference::getId).toList();
    }
}
