package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Reads what the window says where a figure or a word of the program would need explaining. */
@ExtendWith(WorkbenchExtension.class)
class PlainWordsTest {

    @TempDir
    private Path folder;

    @Test
    void aYearThatIsLeftToTheBaseYearSaysSo(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid settings = study.goTo(study.study().getSettings(), StudyPackage.Literals.SETTINGS__PRICE_YEAR);
            assertEquals("as the base year", cell(display, settings));
            put(display, settings, "2025");
            assertEquals(2025, study.study().getSettings().getPriceYear());
            put(display, settings, "as the base year");
            assertEquals(0, study.study().getSettings().getPriceYear());
            study.awaitResult();
        }
    }

    private static void put(Display display, Grid grid, String text) {
        display.syncExec(() -> assertDoesNotThrow(() -> grid.model().put(grid.selection().row(), grid.selection().column(),
                List.of(List.of(text)))));
    }

    private static String cell(Display display, Grid grid) {
        return display.syncCall(() -> grid.model().text(grid.selection().row(), grid.selection().column()));
    }

    @Test
    void theTripsSayHowManyNobodyCovers(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.show(PageKind.TRIPS);
            int none = study.result().tripCovers().get(1).uncovered().size();
            int all = study.study().getTrips().size();
            String expected = " – " + (none == 0 ? "all " + all + " are covered (“" : none + " of " + all + " covered by no bus (“");
            Label said = display.syncCall(() -> View.all(OpenStudy.page().getWorkbenchWindow().getShell(), Label.class).stream()
                    .filter(l -> l.getText().contains(expected)).findFirst().orElseThrow());
            study.await(() -> said.getSize().x >= said.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        }
    }

    @Test
    void whatKeepsTheStudyFromBeingEvaluatedComesFirst(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid findings = display.syncCall(() -> {
                try {
                    OpenStudy.page().showView("org.amberyard.workbench.findings");
                } catch (PartInitException e) {
                    throw new AssertionError(e);
                }
                return (Grid) display.getFocusControl();
            });
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study(),
                    StudyPackage.Literals.STUDY__BASELINE, null)));
            study.await(() -> findings.model().rows() > 0 && findings.model().text(0, 0).equals("Error"));
            List<String> kinds = display.syncCall(() -> IntStream.range(0, findings.model().rows())
                    .mapToObj(row -> findings.model().text(row, 0)).distinct().toList());
            assertTrue(List.of("Error", "Warning", "Note").containsAll(kinds), kinds.toString());
            assertEquals(kinds.stream().sorted(Comparator.comparing(List.of("Error", "Warning", "Note")::indexOf)).toList(), kinds);
            display.syncExec(study.session()::undo);
            study.awaitResult();
        }
    }

    @Test
    void closingAsksWhetherToSaveTheStudyInOwnWords(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study(),
                    StudyPackage.Literals.STUDY__DESCRIPTION, "Told anew")));
            display.asyncExec(() -> OpenStudy.page().closeEditor(study.editor(), true));
            study.await(() -> question(display).isPresent());
            display.syncExec(() -> {
                List<Button> buttons = View.all(question(display).orElseThrow(), Button.class);
                assertEquals(List.of("Cancel", "Close without saving", "Save"),
                        buttons.stream().map(b -> b.getText().replace("&", "")).sorted().toList());
                buttons.stream().filter(b -> b.getText().equals("Cancel")).findFirst().orElseThrow()
                        .notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> question(display).isEmpty());
            assertSame(study.editor(), display.syncCall(() -> OpenStudy.page().getActiveEditor()), "it stays open");
            study.awaitResult();
        }
    }

    private static Optional<Shell> question(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals("Save the study?")).findFirst();
    }
}
