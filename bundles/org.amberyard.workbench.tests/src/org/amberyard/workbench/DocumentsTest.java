package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.workbench.documents.DocumentsDialog;
import org.amberyard.workbench.documents.SubmissionDialog;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Writes documents out of the window. */
@ExtendWith(WorkbenchExtension.class)
class DocumentsTest {

    @TempDir
    private Path folder;

    private static Shell open(OpenStudy study, Path into) {
        DocumentsDialog dialog = dialog(study, into);
        dialog.open();
        return dialog.getShell();
    }

    private static DocumentsDialog dialog(OpenStudy study, Path into) {
        study.session().choices().choose(Kind.PLAN, new Chosen("Rebate buses only", 2));
        DocumentsDialog dialog = new DocumentsDialog(OpenStudy.page().getWorkbenchWindow().getShell(), study.result(),
                study.session().study(), Optional.empty(), study.session().choices(), () -> Optional.of(into));
        dialog.setBlockOnOpen(false);
        return dialog;
    }

    private static Button button(Shell shell, String text) {
        return View.all(shell, Button.class).stream().filter(b -> b.getText().replace("&", "").startsWith(text)).findFirst()
                .orElseThrow();
    }

    private static void press(Shell shell, String text) {
        button(shell, text).notifyListeners(SWT.Selection, new Event());
    }

    private static void toggle(Shell shell, String... texts) {
        for (String text : texts) {
            button(shell, text).setSelection(!button(shell, text).getSelection());
            press(shell, text);
        }
    }

    private static boolean says(Shell shell, String text) {
        return View.all(shell, Text.class).stream().anyMatch(l -> l.getText().startsWith(text));
    }

    private List<String> files(Path of) throws IOException {
        try (Stream<Path> list = Files.list(of)) {
            return list.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void documentsOfThePlanOnShowAreWrittenAsChosen(Display display) throws IOException {
        Path into = folder.resolve("documents");
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Shell shell = display.syncCall(() -> {
                Shell opened = open(study, into);
                assertEquals("Rebate buses only", View.all(opened, Combo.class).get(0).getText());
                toggle(opened, "Memo", "Load letter", "Replacement", "Route suitability", "Calendar", "Cash flow", "DOCX", "XLSX", "PDF");
                Table tables = View.all(opened, Table.class).get(0);
                Arrays.stream(tables.getItems()).skip(2).forEach(i -> i.setChecked(false));
                tables.setSelection(1);
                press(opened, "Up");
                press(opened, "Write");
                assertFalse(button(opened, "Write").getEnabled(), "one set at a time");
                return opened;
            });
            study.await(() -> says(shell, "Written: one file into "));
            display.syncExec(shell::close);
        }
        assertEquals(List.of("grant-tables.html"), files(into));
        String page = Files.readString(into.resolve("grant-tables.html"));
        assertTrue(page.contains("Rebate buses only"));
        assertTrue(page.indexOf("T2a. New vehicles") < page.indexOf("T1a. Vehicles replaced"), "in the order chosen");
        assertFalse(page.contains("T3. Ports"));
    }

    @Test
    void whoHearsWhatWasGivenOutHearsWhichProgrammeItIsFor(Display display) throws IOException {
        List<FigureSource> heard = new ArrayList<>();
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Shell shell = display.syncCall(() -> {
                DocumentsDialog dialog = dialog(study, folder.resolve("documents"));
                dialog.onGivenOut((source, figures) -> heard.add(source));
                dialog.open();
                Combo programme = View.all(dialog.getShell(), Combo.class).get(1);
                programme.select(programme.indexOf("Make-ready"));
                toggle(dialog.getShell(), "Memo", "Load letter", "Replacement", "Route suitability", "Calendar", "Cash flow", "DOCX", "XLSX", "PDF");
                press(dialog.getShell(), "Write");
                return dialog.getShell();
            });
            study.await(() -> !heard.isEmpty());
            display.syncExec(shell::close);
        }
        assertEquals(List.of(new FigureSource("Rebate buses only", Optional.of("Make-ready"))), heard);
    }

    @Test
    void aSubmissionIsFrozenIntoANewFolder(Display display) throws IOException {
        Path into = folder.resolve("submission");
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Shell shell = display.syncCall(() -> {
                Shell opened = open(study, into);
                toggle(opened, "Justification", "Load letter", "Replacement", "Route suitability", "Calendar", "Cash flow", "DOCX", "XLSX", "PDF");
                press(opened, "Freeze");
                return opened;
            });
            study.await(() -> says(shell, "Frozen: 6 files"));
            display.syncExec(shell::close);
        }
        assertEquals(List.of("about.txt", "board-memo.html", "figures.json", "inputs.csv", "manifest.sha256", "study.amberyard"),
                files(into));
    }

    @Test
    void theStudyIsComparedWithASubmission(Display display) throws IOException {
        Path into = folder.resolve("none");
        Files.createDirectory(into);
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Shell shell = display.syncCall(() -> {
                SubmissionDialog dialog = new SubmissionDialog(OpenStudy.page().getWorkbenchWindow().getShell(), into,
                        study.session().study(), study.result());
                dialog.setBlockOnOpen(false);
                dialog.open();
                return dialog.getShell();
            });
            study.await(() -> View.all(shell, Text.class).get(1).getText().endsWith(
                    "there is no manifest.sha256: it is no folder of a frozen submission"));
            display.syncExec(() -> {
                View.all(shell, Text.class).get(0).setText("abc");
                press(shell, "Compare");
                assertTrue(says(shell, "The sum must have 64 hexadecimal digits"));
                shell.close();
            });
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void cancelStopsTheWritingAndLeavesNothing(boolean underWay, Display display) throws IOException {
        Path into = folder.resolve("stopped");
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Shell shell = display.syncCall(() -> {
                Shell opened = open(study, into);
                press(opened, "Write");
                return opened;
            });
            if (underWay) {
                study.await(() -> View.all(shell, ProgressBar.class).get(0).getSelection() > 0);
            }
            display.syncExec(() -> press(shell, "Cancel"));
            study.await(() -> says(shell, "Stopped"));
            assertTrue(display.syncCall(() -> button(shell, "Write").getEnabled()), "it can be tried again");
            display.syncExec(shell::close);
        }
        assertTrue(Files.notExists(into) || files(into).isEmpty());
    }

    @Test
    void aDateThatIsNoneIsRefused(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> {
                Shell shell = open(study, folder);
                Text date = View.all(shell, Text.class).get(0);
                date.setText("31 August");
                assertFalse(button(shell, "Write").getEnabled());
                assertTrue(says(shell, "Choose at least one document"));
                date.setText("2026-08-31");
                assertTrue(button(shell, "Write").getEnabled());
                shell.close();
            });
        }
    }

    @Test
    void theCommandLeadsToTheDialog(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.asyncExec(() -> Commands.run("documents"));
            study.await(() -> dialog(display).isPresent());
            display.syncExec(() -> dialog(display).orElseThrow().close());
        }
    }

    private static Optional<Shell> dialog(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals("Documents")).findFirst();
    }
}
