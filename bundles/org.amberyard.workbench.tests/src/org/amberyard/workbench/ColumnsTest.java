package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.workbench.columns.ArrangedModel;
import org.amberyard.workbench.grid.CellRange;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.views.ResultsView;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.service.prefs.BackingStoreException;

/** Arranges the columns of tables and looks for rows, as people do who live in spreadsheets. */
@ExtendWith(WorkbenchExtension.class)
class ColumnsTest {

    private static final String HIDDEN = "engineModelYear";

    @TempDir
    private Path folder;

    /** The next test, and every other one, finds the columns as they are by themselves. */
    @AfterEach
    void forget() throws BackingStoreException {
        InstanceScope.INSTANCE.getNode("org.amberyard.workbench/columns").clear();
    }

    @Test
    void aColumnHiddenInTheDialogStaysHiddenAndIsSkippedByABlock(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = study.study().getBuses().get(1);
            int engineYear = bus.getEngineModelYear();
            Grid grid = buses(study);
            int columns = display.syncCall(() -> grid.model().columns());

            uncheck(study, HIDDEN);

            assertEquals(columns - 1, display.syncCall(() -> grid.model().columns()));
            Grid again = study.goTo(bus, FleetPackage.Literals.BUS__MODEL_YEAR);
            int at = display.syncCall(() -> again.selection().column());
            Object next = display.syncCall(() -> again.model().text(1, at + 1));
            Tools.copy(display, "2001\t" + next + "\n");
            new Keyboard(display).pressWith(SWT.CTRL, 'v');
            assertEquals(2001, bus.getModelYear());
            assertEquals(engineYear, bus.getEngineModelYear());
        }
        try (OpenStudy study = OpenStudy.opened(display, folder)) {
            Grid grid = buses(study);
            assertFalse(names(display, grid).contains(HIDDEN), "kept for the next time");
            study.goTo(study.study().getBuses().get(1), FleetPackage.Literals.BUS__ENGINE_MODEL_YEAR);
            assertTrue(names(display, grid).contains(HIDDEN), "shown again where its field is gone to");
        }
    }

    @Test
    void aHeaderDraggedToAnotherTakesItsPlace(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = buses(study);
            List<String> before = names(display, grid);

            display.syncExec(() -> {
                header(grid, SWT.MouseDown, 3);
                header(grid, SWT.MouseMove, 1);
                header(grid, SWT.MouseUp, 1);
            });

            List<String> after = names(display, grid);
            assertEquals(before.get(3), after.get(1));
            assertEquals(before.get(1), after.get(2));
            display.syncExec(() -> {
                grid.goTo(0, 1);
                grid.forceFocus();
            });
            Bus bus = study.study().getBuses().get(0);
            Object value = display.syncCall(() -> grid.model().text(0, 1));
            assertEquals(value, display.syncCall(() -> grid.model().fullText(0, 1)), bus.getName());
        }
    }

    @Test
    void resultsHaveTheirColumnsChosenToo(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> ResultsView.show(OpenStudy.page(), "headline"));
            study.await(() -> display.getFocusControl() instanceof Grid grid && grid.model() instanceof ArrangedModel);
            Grid grid = display.syncCall(() -> (Grid) display.getFocusControl());
            int columns = display.syncCall(() -> grid.model().columns());

            uncheck(study, "present_cost");

            assertEquals(columns - 1, display.syncCall(() -> grid.model().columns()));
            assertFalse(names(display, grid).contains("present_cost"));
        }
    }

    @Test
    void rowsAreLookedForByWordsAndComeBackWithEscape(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Grid grid = buses(study);
            int rows = display.syncCall(() -> grid.model().rows());

            execute(display, "filterRows");
            study.await(() -> display.getFocusControl() instanceof Text);
            keys.type("b1");

            study.await(() -> grid.model().rows() < rows);
            assertTrue(display.syncCall(() -> IntStream.range(0, grid.model().rows())
                    .allMatch(r -> grid.model().text(r, 0).startsWith("B1"))));
            assertEquals(grid.model().rows() + " of " + rows + " rows", display.syncCall(() -> count(grid)));

            study.goTo(study.study().getBuses().get(1), FleetPackage.Literals.BUS__MODEL_YEAR);
            assertEquals(rows, display.syncCall(() -> grid.model().rows()), "an element that is gone to is shown");
        }
    }

    /** A row that was chosen stays so wherever a sort puts it, and is in sight; nobody has chosen the first row of a table that begins there. */
    @Test
    void sortedTheChosenRowStaysChosenAndInSight(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = buses(study);
            int rows = display.syncCall(() -> grid.model().rows());
            display.syncExec(() -> grid.goTo(0, 2));
            String first = study.study().getBuses().get(0).getName();

            clickHeader(display, grid, 0);
            clickHeader(display, grid, 0);

            assertEquals(first, display.syncCall(() -> grid.model().text(grid.selection().row(), 0)));
            assertEquals(rows - 1, display.syncCall(() -> grid.selection().row()));
            assertEquals(2, display.syncCall(() -> grid.selection().column()));
            assertInSight(display, grid);

            display.syncExec(() -> grid.selection().select(new CellRange(3, 1, 4, 2)));
            List<String> chosen = List.of(display.syncCall(() -> grid.model().text(3, 0)), display.syncCall(() -> grid.model().text(4, 0)));
            clickHeader(display, grid, 0);
            CellRange block = display.syncCall(() -> grid.selection().range());
            assertEquals(List.of(chosen.get(1), chosen.get(0)), List.of(display.syncCall(() -> grid.model().text(block.top(), 0)),
                    display.syncCall(() -> grid.model().text(block.bottom(), 0))), "rows that still stand below each other");
        }
    }

    @Test
    void aFilterShowsItsFirstRowsOrTheChosenOne(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = buses(study);
            int rows = display.syncCall(() -> grid.model().rows());
            display.syncExec(() -> grid.goTo(rows - 1, 2));
            String last = display.syncCall(() -> grid.model().text(rows - 1, 0));
            execute(display, "filterRows");
            study.await(() -> display.getFocusControl() instanceof Text);
            Text filter = display.syncCall(() -> (Text) display.getFocusControl());

            display.syncExec(() -> filter.setText("b0"));
            assertEquals(0, display.syncCall(() -> grid.selection().row()));
            assertInSight(display, grid);
            display.syncExec(() -> filter.setText(""));
            display.syncExec(() -> grid.goTo(rows - 1, 2));
            display.syncExec(() -> filter.setText("b2"));
            assertEquals(last, display.syncCall(() -> grid.model().text(grid.selection().row(), 0)), "it is among those that are left");
            assertInSight(display, grid);
        }
    }

    private static void clickHeader(Display display, Grid grid, int column) {
        display.syncExec(() -> {
            header(grid, SWT.MouseDown, column);
            header(grid, SWT.MouseUp, column);
        });
    }

    private static void assertInSight(Display display, Grid grid) {
        display.syncExec(() -> {
            Rectangle cell = grid.cellBounds(grid.selection().row(), grid.selection().column());
            assertTrue(grid.getClientArea().contains(cell.x, cell.y + cell.height - 2), cell + " in " + grid.getClientArea());
            assertTrue(grid.headerAt(new Point(cell.x + 1, cell.y)) < 0, "below the headers");
        });
    }

    @Test
    void whatSpreadsheetsHoldIsPasted(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            var type = study.study().getVehicleTypes().get(0);
            study.goTo(type, VehiclesPackage.Literals.VEHICLE_TYPE__PURCHASE_PRICE);
            paste(display, keys, "$312,450");
            assertEquals(312_450, type.getPurchasePrice());
            study.goTo(study.study().getSettings(), StudyPackage.Literals.SETTINGS__DISCOUNT_RATE);
            paste(display, keys, "12%");
            assertEquals(0.12, study.study().getSettings().getDiscountRate(), 1e-12);
            var trip = study.study().getTrips().get(0);
            study.goTo(trip, RoutesPackage.Literals.TRIP__DATE);
            paste(display, keys, "9/4/25");
            assertEquals("2025-09-04", trip.getDate());
            study.goTo(study.study().getSite(), SitePackage.Literals.SITE__ELEVATION_M);
            paste(display, keys, "(150)");
            assertEquals(-150, Unit.METRE.show(study.study().getSite().getElevationM(), UnitSystem.US), 1e-9);
        }
    }

    private static void paste(Display display, Keyboard keys, String text) {
        Tools.copy(display, text);
        keys.pressWith(SWT.CTRL, 'v');
    }

    private static Grid buses(OpenStudy study) {
        return study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__NAME);
    }

    private static String count(Grid grid) {
        return View.all(grid.getParent(), Label.class).stream().map(Label::getText)
                .filter(t -> t.endsWith(" rows")).findFirst().orElseThrow();
    }

    private static List<String> names(Display display, Grid grid) {
        return display.syncCall(() -> IntStream.range(0, grid.model().columns()).mapToObj(grid.model()::columnName).toList());
    }

    private static void header(Grid grid, int type, int column) {
        Rectangle cell = grid.cellBounds(0, column);
        Event event = new Event();
        event.button = type == SWT.MouseMove ? 0 : 1;
        event.x = cell.x + cell.width / 2;
        event.y = 5;
        grid.notifyListeners(type, event);
    }

    private static void execute(Display display, String command) {
        display.asyncExec(() -> Commands.run(command));
    }

    private static void uncheck(OpenStudy study, String column) {
        Display display = study.display();
        execute(display, "columns");
        study.await(() -> dialog(display) != null);
        display.syncExec(() -> {
            Shell shell = dialog(display);
            Table table = View.all(shell, Table.class).get(0);
            Arrays.stream(table.getItems()).filter(i -> column.equals(i.getData())).findFirst().orElseThrow().setChecked(false);
            View.all(shell, Button.class).stream().filter(b -> b.getText().equals("OK")).findFirst().orElseThrow()
                    .notifyListeners(SWT.Selection, new Event());
        });
        study.await(() -> dialog(display) == null);
    }

    private static Shell dialog(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals("Columns")).findFirst().orElse(null);
    }
}
