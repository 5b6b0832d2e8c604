package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.narrative.GiveOut;
import org.amberyard.workbench.session.Change;
import org.amberyard.workbench.session.HistoryStep;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Goes back and forth in the edits of a session. */
@ExtendWith(WorkbenchExtension.class)
class HistoryTest {

    private static final int BLOCK = 20;

    @TempDir
    private Path folder;

    @Test
    void anEditIsToldInWordsAndGoneBackToAndForward(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Bus bus = study.study().getBuses().get(1);
            int opened = bus.getModelYear();
            Grid history = history(display);
            for (String year : List.of("2011", "2012", "2013")) {
                study.goTo(bus, FleetPackage.Literals.BUS__MODEL_YEAR);
                keys.type(year);
                keys.press(SWT.CR);
            }

            assertEquals("bus " + bus.getName() + "|Chassis model year|2011|2012", line(display, history, 1));
            assertEquals(4, display.syncCall(() -> history.model().rows()));

            open(display, history, 3, keys);
            assertEquals(opened, bus.getModelYear());
            assertFalse(display.syncCall(() -> study.editor().isDirty()), "as it was opened");
            assertEquals(4, display.syncCall(() -> history.model().rows()), "what was taken back is still told");

            open(display, history, 1, keys);
            assertEquals(2012, bus.getModelYear());
            open(display, history, 0, keys);
            assertEquals(2013, bus.getModelYear());
            study.awaitResult();
        }
    }

    @Test
    void aNewEditReplacesThoseThatWereTakenBack(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Bus bus = study.study().getBuses().get(1);
            for (String year : List.of("2011", "2012")) {
                study.goTo(bus, FleetPackage.Literals.BUS__MODEL_YEAR);
                keys.type(year);
                keys.press(SWT.CR);
            }
            display.syncExec(() -> study.session().history().goTo(1));
            study.goTo(bus, FleetPackage.Literals.BUS__MODEL_YEAR);
            keys.type("2015");
            keys.press(SWT.CR);

            List<HistoryStep> steps = display.syncCall(() -> study.session().history().steps());
            assertEquals(2, steps.size());
            assertEquals("2015", steps.get(1).changes().get(0).after());
        }
    }

    @Test
    void aBlockIsOneLineWithAllItsChanges(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__MODEL_YEAR);
            Tools.copy(display, "1999\n".repeat(BLOCK));
            new Keyboard(display).pressWith(SWT.CTRL, 'v');

            HistoryStep step = display.syncCall(() -> study.session().history().steps()).get(0);
            assertEquals(BLOCK, step.count());
            assertTrue(step.changes().stream().map(Change::after).allMatch("1999"::equals));

            int years = study.study().getBuses().get(0).getModelYear();
            display.syncExec(study.session()::undo);
            assertEquals(1999, years);
            assertEquals(0, display.syncCall(() -> study.session().history().done()));
        }
    }

    @Test
    void whatAnEditAddsGoesByTheNameThatTheEditGivesIt(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = FleetFactory.eINSTANCE.createBus();
            display.syncExec(() -> {
                CompoundCommand paste = new CompoundCommand("Paste");
                paste.append(AddCommand.create(study.session().domain(), study.study(), StudyPackage.Literals.STUDY__BUSES, bus));
                paste.append(SetCommand.create(study.session().domain(), bus, FleetPackage.Literals.BUS__NAME, "B51"));
                study.session().execute(paste);
            });
            List<Change> changes = display.syncCall(() -> study.session().history().steps().get(0).changes());
            assertEquals(List.of(new Change("bus B51", "", "", "B51")), changes);
        }
    }

    @Test
    void theMenuSaysWhatUndoTakesBackAndRedoMakesAgain(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = study.study().getBuses().get(1);
            String edit = "bus " + bus.getName() + ": Chassis model year " + bus.getModelYear() + " \u2192 2011";
            study.goTo(bus, FleetPackage.Literals.BUS__MODEL_YEAR);
            Keyboard keys = new Keyboard(display);
            keys.type("2011");
            keys.press(SWT.CR);

            assertEquals("Undo: " + edit, menuItem(display, 0));
            assertEquals("Redo", menuItem(display, 1));
            display.syncExec(study.session()::undo);
            assertEquals("Undo", menuItem(display, 0));
            assertEquals("Redo: " + edit, menuItem(display, 1));
        }
    }

    /** What was kept stands among the edits, stays there whatever is taken back, and is no place to go to. */
    @Test
    void whatIsNoEditStandsBetweenTheEdits(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Bus bus = study.study().getBuses().get(1);
            int opened = bus.getModelYear();
            Grid history = history(display);
            study.goTo(bus, FleetPackage.Literals.BUS__MODEL_YEAR);
            keys.type("2011");
            keys.press(SWT.CR);
            Narrative need = study.study().getNarratives().get(0);
            display.syncExec(() -> GiveOut.keep(study.session(), List.of(new GiveOut.Given(need, Map.of("buses in the fleet", "24"))),
                    new FigureSource("Like for like", Optional.empty()), LocalDate.of(2026, 9, 15)));
            String kept = "“" + need.getName() + "” was given out; its figures are kept";
            assertEquals(List.of(kept, "Change of Chassis model year", "The study as it was opened"), edits(display, history));

            open(display, history, 0, keys);
            assertEquals(2011, bus.getModelYear(), "there is nothing to go to");
            open(display, history, 2, keys);
            assertEquals(opened, bus.getModelYear());
            assertEquals(kept, edits(display, history).get(0));
            assertEquals("24", need.getGivenOut().get(0).getPrinted());
            study.awaitResult();
        }
    }

    /** Every edit says what it is: the field that it sets, the rows that it adds. */
    @Test
    void editsAreCalledByWhatTheyDo(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid history = history(display);
            Keyboard keys = new Keyboard(display);
            display.syncExec(() -> study.session().set(study.study().getNarratives().get(0), StudyPackage.Literals.NARRATIVE__TEXT, "Short."));
            Grid grid = study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__NAME);
            display.syncExec(() -> grid.goTo(study.study().getBuses().size(), 0));
            keys.type("b51");
            keys.press(SWT.CR);
            Tools.copy(display, "B52\nB53\n");
            keys.pressWith(SWT.CTRL, 'v');
            display.syncExec(() -> study.session().set(study.study().getSettings(), StudyPackage.Literals.SETTINGS__UNITS, UnitChoice.METRIC));
            study.await(() -> history.model().rows() == 5);
            assertEquals(List.of("Change of Units", "Add 2 rows", "Add Bus", "Change of Text", "The study as it was opened"), edits(display, history));
            assertTrue(line(display, history, 3).startsWith("narrative Need|Text|"), line(display, history, 3));
            assertTrue(line(display, history, 0).endsWith("|Units|US customary|metric"), line(display, history, 0));
            assertTrue(display.syncCall(() -> View.all(history.getParent(), Label.class).get(0).getText()).startsWith("4 edits"));
        }
    }

    private static List<String> edits(Display display, Grid history) {
        return display.syncCall(() -> IntStream.range(0, history.model().rows()).mapToObj(row -> history.model().text(row, 1)).toList());
    }

    private static String menuItem(Display display, int place) {
        return display.syncCall(() -> {
            Menu edit = OpenStudy.page().getWorkbenchWindow().getShell().getMenuBar().getItem(1).getMenu();
            edit.notifyListeners(SWT.Show, new Event());
            String text = edit.getItem(place).getText();
            edit.notifyListeners(SWT.Hide, new Event());
            return text.replaceFirst("\t.*", "").replace("&", "");
        });
    }

    private static Grid history(Display display) {
        return display.syncCall(() -> {
            try {
                OpenStudy.page().showView("org.amberyard.workbench.history");
            } catch (PartInitException e) {
                throw new AssertionError(e);
            }
            return (Grid) display.getFocusControl();
        });
    }

    private static String line(Display display, Grid history, int row) {
        return display.syncCall(() -> String.join("|", history.model().text(row, 2), history.model().text(row, 3),
                history.model().text(row, 4), history.model().text(row, 5)));
    }

    private static void open(Display display, Grid history, int row, Keyboard keys) {
        display.syncExec(() -> {
            history.forceFocus();
            history.goTo(row, 1);
        });
        keys.press(SWT.CR);
    }
}
