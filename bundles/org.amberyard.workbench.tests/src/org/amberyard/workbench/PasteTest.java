package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.site.SitePackage;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Pastes blocks of which the study does not take every cell. */
@ExtendWith(WorkbenchExtension.class)
class PasteTest {

    @TempDir
    private Path folder;

    private static Optional<Shell> list(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.isVisible() && s.getText().equals("Refused cells")).findFirst();
    }

    private static String told(Shell shell) {
        return View.all(shell, Label.class).get(0).getText();
    }

    private static List<String> column(Shell shell, int column) {
        Grid grid = View.all(shell, Grid.class).get(0);
        return IntStream.range(0, grid.model().rows()).mapToObj(row -> grid.model().text(row, column)).toList();
    }

    private static Button button(Shell shell, String text) {
        return View.all(shell, Button.class).stream().filter(b -> b.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
    }

    private static void press(Shell shell, String text) {
        button(shell, text).notifyListeners(SWT.Selection, new Event());
    }

    /** As in a spreadsheet what can be taken is taken, in one step; each cell that is refused is listed with its reason, and leads there. */
    @Test
    void whatCanBeTakenIsTakenAndTheRestIsListed(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            List<Bus> buses = study.study().getBuses();
            int engineYear = buses.get(2).getEngineModelYear();
            int firstYear = buses.get(1).getModelYear();
            Grid grid = study.goTo(buses.get(1), FleetPackage.Literals.BUS__MODEL_YEAR);
            int at = display.syncCall(() -> grid.selection().column());
            Tools.copy(display, "2001\t2000\n2003\tsoon\nlate\t2004\n");

            keys.pressWith(SWT.CTRL, 'v');

            study.await(() -> list(display).isPresent());
            assertEquals(List.of(2001, 2003, 2004), List.of(buses.get(1).getModelYear(), buses.get(2).getModelYear(), buses.get(3).getEngineModelYear()));
            assertEquals(engineYear, buses.get(2).getEngineModelYear());
            display.syncExec(() -> {
                Shell shell = list(display).orElseThrow();
                assertTrue(told(shell).startsWith("4 of 6 cells were entered. 2 were refused and keep what they had"), told(shell));
                assertEquals(List.of("3  " + buses.get(2).getName(), "4  " + buses.get(3).getName()), column(shell, 0));
                assertEquals(List.of("soon", "late"), column(shell, 2));
                assertEquals("Engine model year is “soon”; it must be a number such as 1,234.5.", column(shell, 3).get(0));
                press(shell, "Copy list");
            });
            String copied = Tools.copied(display);
            assertTrue(copied.startsWith("Row\tColumn\tEntered\t"), copied);
            assertEquals(3, copied.lines().count());
            display.syncExec(() -> press(list(display).orElseThrow(), "Go to the cell"));
            assertEquals(List.of(2, at + 1), display.syncCall(() -> List.of(grid.selection().row(), grid.selection().column())));

            display.syncExec(() -> list(display).orElseThrow().close());
            display.syncExec(study.session()::undo);
            assertEquals(firstYear, buses.get(1).getModelYear());
            assertFalse(display.syncCall(() -> study.editor().isDirty()), "one step");
        }
    }

    @Test
    void aSingleTextIsRefusedAtItsCell(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Grid grid = study.goTo(study.study().getBuses().get(1), FleetPackage.Literals.BUS__MODEL_YEAR);
            Tools.copy(display, "soon");

            keys.pressWith(SWT.CTRL, 'v');

            assertEquals("Chassis model year is “soon”; it must be a number such as 1,234.5.", display.syncCall(grid::refusal));
            assertTrue(display.syncCall(() -> list(display)).isEmpty());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
            keys.press(SWT.ARROW_DOWN);
            assertEquals("", display.syncCall(grid::refusal));
        }
    }

    /** A block that is copied with columns that are computed comes back without a word about them; blank lines add nothing. */
    @Test
    void aBlockComesBackWithWhatIsComputedAndBlankLinesAddNothing(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Trip trip = study.study().getTrips().get(0);
            int trips = study.study().getTrips().size();
            Grid grid = study.goTo(trip, RoutesPackage.Literals.TRIP__NAME);
            keys.pressWith(SWT.SHIFT, SWT.END);
            keys.pressWith(SWT.CTRL, 'c');
            keys.pressWith(SWT.CTRL, 'v');
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
            assertTrue(display.syncCall(() -> list(display)).isEmpty());

            display.syncExec(() -> grid.goTo(trips, 0));
            Tools.copy(display, "T063\tchoir\n\t\nT064\tband\n");
            keys.pressWith(SWT.CTRL, 'v');
            assertEquals(List.of("T063", "T064"), study.study().getTrips().subList(trips, trips + 2).stream().map(Trip::getName).toList());
            assertEquals(trips + 2, study.study().getTrips().size());
        }
    }

    /** A line that is blank or wholly refused adds no row: what is refused further down counts without it, and is led to. */
    @Test
    void refusedCellsOfNewRowsAreListedUnderTheRowsThatCameToBe(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            List<Bus> buses = study.study().getBuses();
            int before = buses.size();
            Grid grid = study.goTo(buses.get(0), FleetPackage.Literals.BUS__MODEL_YEAR);
            int at = display.syncCall(() -> grid.selection().column());
            display.syncExec(() -> grid.goTo(before, at));
            Tools.copy(display, "soon\tlate\n\t\n2001\tnever\n2003\t2004\n");

            keys.pressWith(SWT.CTRL, 'v');

            study.await(() -> list(display).isPresent());
            assertEquals(List.of(2001, 2003), buses.subList(before, buses.size()).stream().map(Bus::getModelYear).toList());
            assertEquals(List.of(before, before + 1), rows(display, grid));
            display.syncExec(() -> {
                Shell shell = list(display).orElseThrow();
                assertEquals("3 of 6 cells were entered. One was refused and keeps what it had. 2 were refused in lines of which nothing was "
                        + "taken; no rows were added for them. Undo takes the whole entry back.", told(shell));
                assertEquals(List.of("Line 1 of the block", "Line 1 of the block", before + 1 + "  " + buses.get(before).getName()), column(shell, 0));
                assertEquals(List.of("soon", "late", "never"), column(shell, 2));
                assertFalse(button(shell, "Go to the cell").isEnabled(), "there is no cell");
                View.all(shell, Grid.class).get(0).goTo(2, 0);
                assertTrue(button(shell, "Go to the cell").isEnabled());
                press(shell, "Go to the cell");
            });
            assertEquals(List.of(before, at + 1), display.syncCall(() -> List.of(grid.selection().row(), grid.selection().column())));
        }
    }

    /** The list stays when the editor shows another page: its lines lead back to the page of the table. */
    @Test
    void aRefusedCellIsFoundFromAnotherPage(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = study.goTo(study.study().getBuses().get(1), FleetPackage.Literals.BUS__MODEL_YEAR);
            Tools.copy(display, "2001\t2000\n2003\tsoon\n");
            new Keyboard(display).pressWith(SWT.CTRL, 'v');
            study.await(() -> list(display).isPresent());
            int column = display.syncCall(() -> grid.selection().column());
            study.show(PageKind.STUDY);
            assertFalse(display.syncCall(grid::isVisible));

            display.syncExec(() -> press(list(display).orElseThrow(), "Go to the cell"));

            assertTrue(display.syncCall(grid::isVisible));
            study.await(grid::isFocusControl);
            assertEquals(List.of(2, column + 1), display.syncCall(() -> List.of(grid.selection().row(), grid.selection().column())));
        }
    }

    /** A text that is null is none: its cell stays, whatever the table. */
    @Test
    void cellsWithoutATextStayAsTheyAre(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid site = study.goTo(study.study().getSite(), SitePackage.Literals.SITE__ELEVATION_M);
            Grid plan = PlanGridTest.show(study);
            for (Grid grid : List.of(site, plan)) {
                int column = grid == plan ? grid.model().columns() - 2 : 1;
                List<String> before = display.syncCall(() -> List.of(grid.model().text(0, column), grid.model().text(1, column)));
                List<List<String>> block = List.of(Arrays.asList((String) null), Arrays.asList((String) null));
                display.syncExec(() -> assertEquals(List.of(), assertDoesNotThrow(() -> grid.model().put(0, column, block))));
                assertEquals(before, display.syncCall(() -> List.of(grid.model().text(0, column), grid.model().text(1, column))));
            }
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    /** Nothing stands for what is typed into one cell of the empty row and refused, but the cell. */
    @Test
    void aBlockOfWhichNothingIsTakenAddsNoRow(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            int before = study.study().getBuses().size();
            Grid grid = study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__MODEL_YEAR);
            int at = display.syncCall(() -> grid.selection().column());
            display.syncExec(() -> grid.goTo(before, at));
            Tools.copy(display, "soon");
            keys.pressWith(SWT.CTRL, 'v');
            assertTrue(display.syncCall(grid::refusal).startsWith("Chassis model year is “soon”"));

            Tools.copy(display, "soon\n\n");
            keys.pressWith(SWT.CTRL, 'v');

            study.await(() -> list(display).isPresent());
            assertEquals("No cell was entered. One was refused in a line of which nothing was taken; no row was added for it.",
                    display.syncCall(() -> told(list(display).orElseThrow())));
            assertEquals(List.of(before), rows(display, grid));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    /** The selection that is left is filled down next: it reaches over the rows that there are. */
    @Test
    void rowsThatCameToBeAreSelectedAndNoOthers(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            int before = study.study().getBuses().size();
            Grid grid = study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__NAME);
            display.syncExec(() -> grid.goTo(before, 0));
            Tools.copy(display, "B51\n\n\n\nB52\n");
            keys.pressWith(SWT.CTRL, 'v');
            assertEquals(before + 2, study.study().getBuses().size());
            assertEquals(List.of(before, before + 1), rows(display, grid));

            keys.pressWith(SWT.CTRL, 'd');

            assertEquals(before + 2, study.study().getBuses().size());
        }
    }

    private static List<Integer> rows(Display display, Grid grid) {
        return display.syncCall(() -> IntStream.rangeClosed(grid.selection().range().top(), grid.selection().range().bottom()).boxed().toList());
    }
}
