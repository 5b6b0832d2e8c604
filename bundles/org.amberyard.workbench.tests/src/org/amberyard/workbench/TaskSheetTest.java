package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.report.TaskSheet;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.shop.TaskSheetDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Takes the task sheet of an electric bus out of the window. */
@ExtendWith(WorkbenchExtension.class)
class TaskSheetTest {

    @TempDir
    private Path folder;

    @Test
    void theSheetOfTheBusOnShowIsSavedWithItsCautions(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Path file = folder.resolve("sheet.html");
            display.syncExec(() -> {
                study.session().choices().choose(Kind.PLAN, new Chosen("Electric in stages", 1));
                study.session().choices().choose(Kind.BUS, new Chosen("B01", 0));
                study.session().choices().choose(Kind.YEAR, new Chosen("2040", 14));
                TaskSheetDialog dialog = new TaskSheetDialog(OpenStudy.page().getWorkbenchWindow().getShell(), study.result(),
                        study.session().choices(), name -> Optional.of(file));
                dialog.setBlockOnOpen(false);
                dialog.open();
                Shell shell = dialog.getShell();
                assertEquals(List.of("Electric in stages", "B01", "2040"),
                        all(shell, Combo.class).map(Combo::getText).toList());
                String words = all(shell, Text.class).findFirst().orElseThrow().getText();
                assertTrue(words.startsWith("Bus B01-2, 2040") && words.contains(TaskSheet.CAUTIONS.get(0)), words);
                press(button(shell, "Save as…"));
                dialog.close();
            });
            String page = Files.readString(file);
            assertTrue(page.contains("High-voltage inspection") && page.contains("high-voltage technician"), page);
            assertTrue(TaskSheet.CAUTIONS.stream().allMatch(page::contains), page);
        }
    }

    @Test
    void theCommandAndTheShopsChartsLeadToTheSheet(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.asyncExec(TaskSheetTest::execute);
            closeSheet(study);
            display.syncExec(() -> {
                try {
                    OpenStudy.page().showView("org.amberyard.workbench.shopHours");
                } catch (PartInitException e) {
                    throw new AssertionError(e);
                }
            });
            display.asyncExec(() -> item().notifyListeners(SWT.Selection, new Event()));
            closeSheet(study);
        }
    }

    private static void execute() {
        Commands.run("taskSheet");
    }

    private static void closeSheet(OpenStudy study) {
        study.await(() -> sheet(study.display()).isPresent());
        study.display().syncExec(() -> sheet(study.display()).orElseThrow().close());
        assertFalse(study.display().syncCall(() -> sheet(study.display()).isPresent()));
    }

    private static Optional<Shell> sheet(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals("Task sheet")).findFirst();
    }

    private static MenuItem item() {
        IViewPart view = OpenStudy.page().findView("org.amberyard.workbench.shopHours");
        return all(view.getSite().getShell(), Control.class).filter(c -> c.getMenu() != null)
                .flatMap(c -> Arrays.stream(c.getMenu().getItems())).filter(i -> i.getText().startsWith("&Task sheet"))
                .findFirst().orElseThrow();
    }

    private static Button button(Shell shell, String text) {
        return all(shell, Button.class).filter(b -> b.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
    }

    private static void press(Button button) {
        button.notifyListeners(SWT.Selection, new Event());
    }

    private static <T> Stream<T> all(Composite parent, Class<T> kind) {
        return Arrays.stream(parent.getChildren()).flatMap(c -> Stream.concat(
                kind.isInstance(c) ? Stream.of(kind.cast(c)) : Stream.empty(),
                c instanceof Composite inner && !(c instanceof Combo) ? all(inner, kind) : Stream.empty()));
    }
}
