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
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.WhatifPackage;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.StatusText;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
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

    /** By its key the text of the status bar is selected; copied, it is what the bar says; Escape leads back. */
    @Test
    void theTextOfTheStatusBarIsCopied(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid settings = study.goTo(study.study().getSettings(), StudyPackage.Literals.SETTINGS__PRICE_YEAR);
            StatusText status = display.syncCall(() -> StatusText.of(OpenStudy.page().getWorkbenchWindow().getShell()).orElseThrow());
            display.syncExec(status::select);
            Text text = display.syncCall(() -> (Text) display.getFocusControl());
            String said = display.syncCall(text::getText);
            assertTrue(said.startsWith("Fiscal year in whose money"), said);
            assertEquals(said, display.syncCall(text::getSelectionText));
            display.syncExec(text::copy);
            assertEquals(said, Tools.copied(display));
            display.syncExec(() -> {
                Event escape = new Event();
                escape.keyCode = SWT.ESC;
                text.notifyListeners(SWT.KeyDown, escape);
            });
            study.await(text::isDisposed);
            assertTrue(display.syncCall(settings::isFocusControl));
        }
    }

    /** Diesel at 5 dollars a gallon is that, whatever the study stores; a change typed as a line is read in the unit of its own field. */
    @Test
    void aScenarioSaysItsNumbersInTheUnitsOfTheStudy(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Scenario scenario = study.study().getWhatIf().getScenarios().get(0);
            ScenarioChange diesel = scenario.getChanges().get(0);
            Grid changes = study.goTo(diesel, WhatifPackage.Literals.SCENARIO_CHANGE__NUMBER);
            assertEquals("5 USD/gal", cell(display, changes));
            put(display, changes, "6");
            assertEquals(6 / 3.785411784, diesel.getNumber(), 1e-12);
            assertEquals("6 USD/gal", cell(display, changes));
            display.syncExec(() -> assertDoesNotThrow(() -> changes.model().put(1, 0, List.of(List.of("Cost index", "electric energy", "Rise per year",
                    "plus", "2.5")))));
            assertEquals(0.025, scenario.getChanges().get(1).getNumber(), 1e-12);
            display.syncExec(study.session()::undo);
            display.syncExec(study.session()::undo);
            assertEquals("5 USD/gal", cell(display, changes));
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
