package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.charts.Figures;
import org.amberyard.charts.WhatIfChart;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifPackage;
import org.amberyard.workbench.charts.ChartCanvas;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.grid.CellRefusal;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.handlers.ExportedWhatIf;
import org.amberyard.workbench.session.WhatIfWork.Phase;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.HTMLTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Varies a field by pointing at it, runs the what-if, stops it, goes on, and opens the study again. */
@ExtendWith(WorkbenchExtension.class)
class WhatIfTest {
    private static final int DRAWS = 500;

    @TempDir
    private Path folder;

    private static Composite open(OpenStudy study) {
        return study.display().syncCall(() -> {
            try {
                OpenStudy.page().showView("org.amberyard.workbench.whatIf");
            } catch (PartInitException e) {
                throw new AssertionError(e);
            }
            return study.display().getFocusControl().getParent();
        });
    }

    private static ChartCanvas canvas(Composite view) {
        return View.all(view, ChartCanvas.class).get(0);
    }

    /** It is labelled as one of an earlier version of the study, since which the price of diesel has been edited. */
    private static boolean tellsOfDiesel(Composite view) {
        return canvas(view).textAlternative().matches("(?s)This is of an earlier version of the study\\. Changed since: "
                + "fuel price diesel: Price [0-9.]{1,6} USD/gal → 7\\.5708 USD/gal\\..*");
    }

    private static Button button(Composite view) {
        return View.all(view, Button.class).get(0);
    }

    private static void press(OpenStudy study, Composite view) {
        study.await(() -> button(view).isEnabled());
        study.display().syncExec(() -> button(view).notifyListeners(SWT.Selection, new Event()));
    }

    private static void set(OpenStudy study, int draws) {
        study.display().syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                study.study().getWhatIf(), WhatifPackage.Literals.WHAT_IF__DRAWS, draws)));
        study.awaitResult();
    }

    /** Runs until there are some of 300 000 draws, stops, and tells how many. */
    private static int runInPart(OpenStudy study, Composite view) {
        set(study, 300_000);
        press(study, view);
        study.await(() -> study.session().whatIf().results().flatMap(r -> r.all()).isPresent());
        List<String> atOnce = study.display().syncCall(() -> {
            button(view).notifyListeners(SWT.Selection, new Event());
            return View.all(view, Label.class).stream().map(Label::getText).toList();
        });
        assertTrue(atOnce.stream().anyMatch(text -> text.startsWith("Stopping…")), atOnce.toString());
        study.await(() -> study.session().whatIf().phase() == Phase.STOPPED);
        int done = study.session().whatIf().results().orElseThrow().all().orElseThrow().end().draws();
        study.await(() -> canvas(view).textAlternative().startsWith("Stopped at " + Figures.whole(done) + " of 300,000 draws"));
        return done;
    }

    private static void vary(OpenStudy study, Grid grid) {
        study.display().syncExec(() -> {
            MenuItem vary = List.of(grid.getMenu().getItems()).stream().filter(i -> i.getText().contains("Vary this")).findFirst()
                    .orElseThrow();
            vary.notifyListeners(SWT.Selection, new Event());
        });
    }

    @Test
    void inputsNameKindsAndFieldsByTheirLabels(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            UncertainInput input = study.study().getWhatIf().getInputs().stream().filter(i -> i.getKind().equals("FuelPrice")).findFirst()
                    .orElseThrow();
            Grid grid = study.goTo(input, WhatifPackage.Literals.UNCERTAIN_INPUT__KIND);
            Point cell = display.syncCall(() -> new Point(grid.selection().column(), grid.selection().row()));
            assertEquals("Fuel price", display.syncCall(() -> grid.model().text(cell.y, cell.x)));
            study.goTo(input, WhatifPackage.Literals.UNCERTAIN_INPUT__FIELD);
            int field = display.syncCall(() -> grid.selection().column());
            assertEquals("Price", display.syncCall(() -> grid.model().text(cell.y, field)));
            assertTrue(display.syncCall(() -> grid.model().choices(cell.y, field)).contains("Rise per year"));

            List<String> kinds = display.syncCall(() -> grid.model().choices(cell.y, cell.x));
            assertTrue(kinds.containsAll(List.of("Fuel price", "Depot", "Settings", "Electric bus type", "Vehicle type")), kinds.toString());
            assertTrue(List.of("Chart note", "Change", "Uncertain input", "Source note", "Narrative", "Study", "Element").stream()
                    .noneMatch(kinds::contains), kinds.toString());
            study.goTo(input, WhatifPackage.Literals.UNCERTAIN_INPUT__ELEMENT);
            int element = display.syncCall(() -> grid.selection().column());
            assertEquals(List.of("* (every one)", "diesel"), display.syncCall(() -> grid.model().choices(cell.y, element)).subList(0, 2));
            assertEquals(List.of(), display.syncCall(() -> Stream.of(cell.x, element, field)
                    .flatMap(c -> grid.model().commonChoices(c).stream()).toList()), "a table is not as wide as what one of its rows may take");
            display.syncExec(() -> assertDoesNotThrow(() -> grid.model().put(cell.y, element, List.of(List.of("* (every one)")))));
            assertEquals("*", input.getElement());
            assertEquals("* (every one)", display.syncCall(() -> grid.model().text(cell.y, element)));
            display.syncExec(study.session()::undo);

            display.syncExec(() -> assertDoesNotThrow(() -> grid.model().put(cell.y, field, List.of(List.of("rise per year")))));
            assertEquals("escalationPerYear", input.getField());
            display.syncExec(() -> assertThrows(CellRefusal.class, () -> grid.model().put(cell.y, field, List.of(List.of("Battery")))));
            display.syncExec(() -> assertDoesNotThrow(() -> grid.model().put(cell.y, cell.x, List.of(List.of("battery pack price")))));
            assertEquals("PackPrice", input.getKind());
            display.syncExec(study.session()::undo);
            study.awaitResult();
        }
    }

    /** Puts a text into the cell of a field of the what-if. */
    private static void put(OpenStudy study, EStructuralFeature field, String text) {
        Grid grid = study.goTo(study.study().getWhatIf(), field);
        study.display().syncExec(() -> assertDoesNotThrow(() -> grid.model().put(grid.selection().row(), 1, List.of(List.of(text)))));
    }

    /** Shows one of the charts of the view, which remembers it. */
    private static void show(Display display, Composite view, WhatIfChart chart) {
        display.syncExec(() -> {
            Combo kinds = View.all(view, Combo.class).get(0);
            kinds.select(chart.ordinal());
            kinds.notifyListeners(SWT.Selection, new Event());
        });
    }

    /** The inputs of the grid are chosen by name, refused where there is none, marked where they are the same, which takes the grid alone away, and undone. */
    @Test
    void theGridIsOfTheInputsThatAreChosen(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            set(study, 20);
            WhatIf whatIf = study.study().getWhatIf();
            Grid grid = study.goTo(whatIf, WhatifPackage.Literals.WHAT_IF__GRID_ACROSS);
            List<String> choices = display.syncCall(() -> grid.model().choices(grid.selection().row(), 1));
            assertEquals(List.of("", "Diesel price"), choices.subList(0, 2));
            display.syncExec(() -> assertThrows(CellRefusal.class, () -> grid.model().put(grid.selection().row(), 1, List.of(List.of("Bread")))));
            put(study, WhatifPackage.Literals.WHAT_IF__GRID_ACROSS, "diesel price");
            put(study, WhatifPackage.Literals.WHAT_IF__GRID_UPWARD, "Diesel price");
            study.await(() -> study.session().evaluation().findings().stream()
                    .anyMatch(f -> f.feature() == WhatifPackage.Literals.WHAT_IF__GRID_UPWARD && f.message().contains("runs across the grid already")));
            study.awaitResult();
            Composite view = open(study);
            press(study, view);
            study.await(() -> study.session().whatIf().phase() == Phase.DONE);
            show(display, view, WhatIfChart.GRID);
            study.await(() -> canvas(view).textAlternative().contains("“Diesel price” is chosen to run both across and upward"));
            display.syncExec(study.session()::undo);
            assertNull(whatIf.getGridUpward());
            put(study, WhatifPackage.Literals.WHAT_IF__GRID_UPWARD, "Electricity rise");
            put(study, WhatifPackage.Literals.WHAT_IF__GRID_COLUMNS, "25");
            study.awaitResult();

            study.await(() -> study.session().whatIf().isOutdated());
            press(study, view);
            study.await(() -> study.session().whatIf().phase() == Phase.DONE && !study.session().whatIf().isOutdated());
            TwoTogether found = study.session().whatIf().upToDate().orElseThrow().grid().orElseThrow();
            assertEquals(List.of(0, 2, 25, 11), List.of(found.first(), found.second(), found.grid().columns(), found.grid().rows()));
            AllTogether drawn = study.session().whatIf().results().orElseThrow().all().orElseThrow();

            put(study, WhatifPackage.Literals.WHAT_IF__GRID_COLUMNS, "5");
            study.awaitResult();
            study.await(() -> study.session().whatIf().isOutdated());
            press(study, view);
            study.await(() -> study.session().whatIf().phase() == Phase.DONE && !study.session().whatIf().isOutdated());
            WhatIfResults again = study.session().whatIf().upToDate().orElseThrow();
            assertEquals(5, again.grid().orElseThrow().grid().columns());
            assertArrayEquals(drawn.presentCosts(1), again.all().orElseThrow().presentCosts(1), 0);

            show(display, view, WhatIfChart.GRID);
            study.await(() -> canvas(view).textAlternative().contains("Across: Diesel price; upward: Electricity rise."));
            display.syncExec(() -> Stream.of(canvas(view).getMenu().getItems()).filter(i -> i.getText().equals("Copy d&ata")).findFirst().orElseThrow()
                    .notifyListeners(SWT.Selection, new Event()));
            String[] copied = display.syncCall(() -> {
                Clipboard clipboard = new Clipboard(display);
                try {
                    return new String[] {(String) clipboard.getContents(TextTransfer.getInstance()),
                        (String) clipboard.getContents(HTMLTransfer.getInstance())};
                } finally {
                    clipboard.dispose();
                }
            });
            assertEquals(12, copied[0].lines().count());
            assertTrue(copied[0].startsWith("Saving (USD): Electricity rise down, Diesel price across\t0."), copied[0]);
            assertEquals(12, copied[1].split("<tr>").length - 1);
        }
    }

    private static FuelPrice diesel(Study study) {
        return study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast).findFirst().orElseThrow();
    }

    @Test
    void aFieldIsVariedByPointingAtIt(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study(),
                    StudyPackage.Literals.STUDY__WHAT_IF, null)));
            Grid prices = study.goTo(diesel(study.study()), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L);
            vary(study, prices);

            UncertainInput input = study.study().getWhatIf().getInputs().get(0);
            assertEquals("FuelPrice", input.getKind());
            assertEquals("diesel", input.getElement());
            assertEquals("pricePerL", input.getField());
            assertTrue(display.syncCall(() -> FeatureTable.inFocus().filter(t -> t.selected() == input).isPresent()),
                    "the new input is in focus");

            display.syncExec(study.session()::undo);
            assertNull(study.study().getWhatIf(), "one edit takes the input and the what-if back");
        }
    }

    @Test
    void itRunsAndShowsItsCharts(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = open(study);
            study.await(() -> canvas(view).textAlternative().startsWith("Not run yet."));
            show(display, view, WhatIfChart.TORNADO);
            set(study, DRAWS);
            press(study, view);
            study.await(() -> study.session().whatIf().phase() == Phase.DONE);
            study.await(() -> canvas(view).textAlternative().contains("with all inputs as they are. All low together add"));
            assertEquals(DRAWS, study.session().whatIf().results().orElseThrow().all().orElseThrow().end().draws());
            exported(study, "now", "What the what-if has found is in the folder what-if in it.");
            assertFalse(Files.exists(folder.resolve("now/what-if/what_if_changed_since.csv")));
            assertTrue(Files.exists(folder.resolve("now/what-if/what_if_tornado.png")));
            assertTrue(Files.readString(folder.resolve("now/what-if/what_if_summary.csv")).startsWith("Plan,Draws,Seed,"));

            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), diesel(study.study()),
                    PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 2.0)));
            study.await(() -> tellsOfDiesel(view));
            exported(study, "later", "It is of an earlier version of the study");
            assertTrue(Files.readString(folder.resolve("later/what-if/what_if_changed_since.csv")).contains("fuel price diesel,Price,"));
            display.syncExec(study.session()::undo);
            study.await(() -> !canvas(view).textAlternative().startsWith("This is of an earlier"));
        }
    }

    /** Nobody expects it to begin after another edit. */
    @Test
    void aRunThatWaitsForResultsIsForgottenWhenTheStudyIsEdited(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            int draws = study.study().getWhatIf().getDraws();
            display.syncExec(() -> {
                study.session().whatIf().runWith(DRAWS);
                study.session().undo();
            });
            assertEquals(draws, study.study().getWhatIf().getDraws());
            study.awaitResult();
            assertEquals(Phase.NONE, display.syncCall(() -> study.session().whatIf().phase()));
            display.syncExec(() -> study.session().whatIf().runWith(DRAWS));
            study.await(() -> study.session().whatIf().phase() == Phase.DONE);
        }
    }

    /** Whoever asks how long it takes hears that there is no answer, as well. */
    @Test
    void anEstimateEndsInAnyCase(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = open(study);
            study.await(() -> button(view).isEnabled());
            List<String> told = display.syncCall(() -> {
                List<String> heard = new ArrayList<>();
                study.session()
                        .execute(SetCommand.create(study.session().domain(), diesel(study.study()), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 2.0));
                study.session().whatIf().estimate(e -> heard.add("estimate"), () -> heard.add("ended"));
                return heard;
            });
            assertEquals(List.of("ended"), told);
            study.awaitResult();
            study.await(() -> button(view).isEnabled());
            display.syncExec(() -> study.session().whatIf().estimate(e -> told.add("estimate"), () -> told.add("ended")));
            study.await(() -> told.size() > 1 && told.get(told.size() - 1).equals("estimate"));
            assertEquals(List.of("ended", "ended", "estimate"), told);
        }
    }

    /** Writes the what-if that is on show as the export of the results does. */
    private void exported(OpenStudy study, String name, String said) throws IOException {
        String words = study.display().syncCall(() -> ExportedWhatIf.of(study.session())).orElseThrow().write(UnitSystem.US, folder.resolve(name));
        assertTrue(words.contains(said), words);
    }

    @Test
    void whatIsDoneWhenItIsStoppedIsKeptAndOpenedAgain(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = open(study);
            int done = runInPart(study, view);
            assertTrue(done > 0 && done < 300_000, done + " draws");
            assertEquals("Go on", display.syncCall(() -> button(view).getText()).replace("&", ""));
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            study.await(() -> Files.exists(WhatIfFile.beside(study.file())));
        }
        try (OpenStudy again = OpenStudy.opened(display, folder)) {
            again.await(() -> again.session().whatIf().results().flatMap(r -> r.all()).isPresent());
            assertTrue(again.session().whatIf().results().orElseThrow().single().isPresent());
            assertFalse(display.syncCall(again.session().whatIf()::isOutdated));
        }
    }

    /** A run that is kept stays on show when its study has been changed and saved, and no document takes it for its own. */
    @Test
    void aKeptRunOfAnEarlierVersionIsShownAsSuch(Display display) throws IOException {
        int done;
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = open(study);
            done = runInPart(study, view);
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), diesel(study.study()),
                    PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 2.0)));
            study.awaitResult();
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            study.await(() -> Files.exists(WhatIfFile.beside(study.file())));
        }
        try (OpenStudy again = OpenStudy.opened(display, folder)) {
            Composite view = open(again);
            again.await(() -> tellsOfDiesel(view));
            assertEquals(done, again.session().whatIf().results().orElseThrow().all().orElseThrow().end().draws());
            assertTrue(display.syncCall(() -> again.session().whatIf().upToDate().isEmpty()));
            assertEquals("Run what if", display.syncCall(() -> button(view).getText()).replace("&", ""));
        }
    }

    @Test
    void thePageHasInputsDrawsAndScenarios(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.show(PageKind.WHAT_IF);
            Grid inputs = display.syncCall(() -> Tools.table("Uncertain inputs").grid());
            assertEquals("Diesel price", display.syncCall(() -> inputs.model().text(0, 0)));
            assertEquals("Diesel at 5 dollars a gallon",
                    display.syncCall(() -> Tools.table("Scenarios").grid().model().text(0, 0)));
        }
    }
}
