package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.model.common.Quality;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.study.InputSource;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.session.StepWords;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Picks buses by what programmes ask for, and clears cells. */
@ExtendWith(WorkbenchExtension.class)
class FleetFactsTest {
    @TempDir
    private Path folder;

    private static String text(Display display, Grid grid) {
        return display.syncCall(() -> grid.model().text(grid.selection().row(), grid.selection().column()));
    }

    private static CellLook look(Display display, Grid grid) {
        return display.syncCall(() -> grid.model().look(grid.selection().row(), grid.selection().column()));
    }

    private static String step(Display display, OpenStudy study) {
        return display.syncCall(() -> StepWords.brief(study.session().history().undoable().orElseThrow()));
    }

    /** Each word or condition leaves the buses that an application may have. */
    @Test
    void busesArePickedByWhatProgrammesAskFor(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = study.goTo(study.study().getBuses().get(0), Literals.BUS__NAME);
            display.syncCall(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(
                    "org.amberyard.workbench.filterRows", null));
            study.await(() -> display.getFocusControl() instanceof Text);
            Text filter = display.syncCall(() -> (Text) display.getFocusControl());
            assertEquals(List.of("B01", "B02", "B03", "B04", "B15", "B19", "B20", "B23", "B24"), picked(display, grid, filter, "engine<=2009"));
            assertEquals(List.of("B16", "B18", "B24"), picked(display, grid, filter, "gasoline"));
            assertEquals(List.of("B15", "B16", "B17", "B18", "B24"), picked(display, grid, filter, "gvwr<=14,500"));
            assertEquals(List.of("B14", "B18"), picked(display, grid, filter, "leased"));
            assertEquals(List.of("B19", "B20", "B23"), picked(display, grid, filter, "week<4"), "what is not told is no figure");
            assertEquals(List.of("B01", "B02", "B03", "B04"), picked(display, grid, filter, "engine<=2009 diesel gvwr>14,501 week>=5 owned"));
            display.syncExec(() -> filter.setText(""));
        }
    }

    private static List<String> picked(Display display, Grid grid, Text filter, String words) {
        display.syncExec(() -> filter.setText(words));
        return display.syncCall(() -> IntStream.range(0, grid.model().rows()).mapToObj(r -> grid.model().text(r, 0)).filter(t -> !t.isEmpty()).toList());
    }

    /** The default comes back as one that stands in: grey, with its source, and the step says so. */
    @Test
    void aClearedFigureIsTheDefaultAndSaysSo(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = study.study().getBuses().get(18);
            Grid grid = study.goTo(bus, Literals.BUS__OTHER_KM_PER_YEAR);
            assertEquals(CellLook.PLAIN, look(display, grid));
            display.syncExec(grid::clear);
            assertEquals("0", text(display, grid));
            assertEquals(CellLook.DEFAULT, look(display, grid));
            assertEquals("Other distance per year: back to the default 0 mi", display.syncCall(() -> study.session().history().undoable().orElseThrow()
                    .label()));
            assertTrue(step(display, study).endsWith("Other distance per year 2,893 mi → the default 0 mi"), step(display, study));
            assertEquals(InputSource.CLEARED, SourceNotes.find(bus, "otherKmPerYear").orElseThrow().getCitation());
            assertEquals(Quality.ASSUMED, SourceNotes.find(bus, "otherKmPerYear").orElseThrow().getQuality());
            display.syncExec(() -> study.session().undo());
            assertEquals("2,893", text(display, grid));
            assertEquals(CellLook.PLAIN, look(display, grid));
            assertTrue(SourceNotes.find(bus, "otherKmPerYear").isEmpty());
        }
    }

    /** The note on a default goes with it. */
    @Test
    void aFigureThatIsTypedAfterItWasClearedIsNoDefault(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = study.study().getBuses().get(18);
            Grid grid = study.goTo(bus, Literals.BUS__OTHER_KM_PER_YEAR);
            display.syncExec(grid::clear);
            put(display, grid, "1,200");
            assertTrue(SourceNotes.find(bus, "otherKmPerYear").isEmpty());
            assertEquals(CellLook.PLAIN, look(display, grid));
            display.syncExec(() -> study.session().undo());
            assertEquals(InputSource.CLEARED, SourceNotes.find(bus, "otherKmPerYear").orElseThrow().getCitation());
            put(display, grid, "0.0");
            assertTrue(SourceNotes.find(bus, "otherKmPerYear").isEmpty(), "the same figure, but somebody has typed it");
            assertEquals("Change of Other distance per year", display.syncCall(() -> study.session().history().undoable().orElseThrow().label()));
        }
    }

    private static void put(Display display, Grid grid, String text) {
        display.syncExec(() -> assertDoesNotThrow(() -> grid.model().put(grid.selection().row(), grid.selection().column(), List.of(List.of(text)))));
    }

    /** Only a number can be a default of the program; what becomes empty has no source. */
    @Test
    void aClearedTextHasNoSource(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = study.study().getBuses().get(1);
            assertTrue(SourceNotes.find(bus, SourceNotes.EVERY_FIELD).isPresent());
            for (EStructuralFeature field : List.of(Literals.BUS__ENGINE_FAMILY, Literals.BUS__ROUTE, Literals.BUS__SEATS)) {
                Grid grid = study.goTo(bus, field);
                display.syncExec(grid::clear);
                assertTrue(SourceNotes.find(bus, field.getName()).isEmpty(), field.getName());
            }
        }
    }

    /** What may be missing is empty, not zero. */
    @Test
    void aClearedFigureThatMayBeMissingIsEmpty(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = study.study().getBuses().get(0);
            Grid grid = study.goTo(bus, Literals.BUS__SEATS);
            display.syncExec(grid::clear);
            assertEquals("", text(display, grid));
            assertNull(bus.getSeats());
            assertEquals("Seats: emptied", display.syncCall(() -> study.session().history().undoable().orElseThrow().label()));
            Grid measured = study.goTo(bus, Literals.BUS__MEASURED_KM_PER_L);
            display.syncExec(measured::clear);
            assertEquals("", text(display, measured));
            assertEquals(0, bus.getMeasuredKmPerL());
            assertTrue(SourceNotes.find(bus, "measuredKmPerL").filter(n -> n.getQuality() == Quality.MEASURED).isEmpty(),
                    "the log that told it is no source of nothing");
            assertEquals("", display.syncCall(() -> {
                Grid health = study.goTo(bus, Literals.BUS__MEASURED_HEALTH);
                return health.model().text(health.selection().row(), health.selection().column());
            }), "of a diesel bus nobody has measured a pack");
        }
    }

    @Test
    void tipsSayWhatDelDoes(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = study.goTo(study.study().getBuses().get(0), Literals.BUS__SEATS);
            assertTrue(
                    display.syncCall(() -> grid.model().headerTip(grid.selection().column())).endsWith("Del empties the field: not told, which is not zero."));
            Grid types = study.goTo(study.study().getVehicleTypes().get(0), VehiclesPackage.Literals.VEHICLE_TYPE__CURB_MASS_KG);
            assertTrue(display.syncCall(() -> types.model().headerTip(types.selection().column())
                    + types.model().tip(types.selection().row(), 0)).contains("Del brings the default back"));
        }
    }
}
