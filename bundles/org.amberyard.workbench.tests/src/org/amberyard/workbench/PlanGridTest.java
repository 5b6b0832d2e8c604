package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.Replacement;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.CellRange;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.plan.PlanActions;
import org.eclipse.jface.action.StatusLineManager;
import org.eclipse.jface.action.SubStatusLineManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Paints, drags, types and fills the example's electric plan as a user does; rows are B01 to B24. */
@ExtendWith(WorkbenchExtension.class)
class PlanGridTest {

    private static final int FIRST_YEAR_COLUMN = 5;

    @TempDir
    private Path folder;

    private static int column(int year) {
        return year - 2026 + FIRST_YEAR_COLUMN;
    }

    static Plan plan(OpenStudy study) {
        return study.study().getPlans().get(1);
    }

    /** Year and type of each step of a bus, such as “2027 Electric C 150”. */
    private static List<String> steps(OpenStudy study, String bus) {
        return plan(study).getReplacements().stream().filter(r -> r.getBus().getName().equals(bus))
                .sorted((a, b) -> a.getYear() - b.getYear())
                .map(r -> r.getYear() + " " + (r.getNewType() == null ? "retired" : r.getNewType().getName())).toList();
    }

    /** Shows the page and answers its grid, focused. */
    static Grid show(OpenStudy study) {
        study.show(PageKind.PLAN_GRID);
        return study.display().syncCall(() -> {
            Shell shell = OpenStudy.page().getWorkbenchWindow().getShell();
            shell.forceActive();
            Grid grid = all(shell, Grid.class).filter(g -> g.isVisible() && g.model().columns() > FIRST_YEAR_COLUMN
                    && g.model().header(FIRST_YEAR_COLUMN).equals("2026")).findFirst().orElseThrow();
            grid.forceFocus();
            return grid;
        });
    }

    static void take(OpenStudy study, String brush) {
        study.display().syncExec(() -> {
            ToolItem item = all(OpenStudy.page().getWorkbenchWindow().getShell(), ToolBar.class)
                    .flatMap(b -> Arrays.stream(b.getItems())).filter(i -> i.getText().equals(brush)).findFirst().orElseThrow();
            item.setSelection(true);
            item.notifyListeners(SWT.Selection, new Event());
        });
    }

    private static String text(OpenStudy study, Grid grid, int row, int year) {
        return study.display().syncCall(() -> grid.model().text(row, column(year)));
    }

    private static void goTo(OpenStudy study, Grid grid, int row, int year) {
        study.display().syncExec(() -> grid.goTo(row, column(year)));
    }

    @Test
    void cellsTellWhatStandsThereAndHowItHasCome(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            assertEquals(List.of("Bus", "Role", "Route", "Type", "Age (yr)", "2026", "2027"), display.syncCall(
                    () -> IntStream.range(0, 7).mapToObj(grid.model()::header).toList()));
            assertEquals("DC 05-09", text(study, grid, 0, 2026));
            assertEquals("● EC 150", text(study, grid, 0, 2027));
            assertEquals("EC 150", text(study, grid, 0, 2028));
            String first = display.syncCall(() -> grid.words(0, column(2027)));
            assertTrue(first.matches("B01, 2027: Electric C 150 is bought, a step of the plan; Clean Fleet Fund pays USD [0-9,]+"),
                    first);
            assertEquals("B20, 2029: Diesel C 2010-2015 moves here from the place of B06",
                    display.syncCall(() -> grid.words(19, column(2029))));
            assertTrue(text(study, grid, 19, 2029).startsWith("↳ DC "));
            assertEquals("Bus: B20", display.syncCall(() -> grid.words(19, 0)));
            assertEquals("2027: 4 bought; electric buses: 4 of 24.",
                    display.syncCall(() -> grid.model().headerTip(column(2027))));
        }
    }

    @Test
    void aTypePaintedOverBusesIsOneStepToUndo(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            StudyResult earlier = study.result();
            Grid grid = show(study);
            take(study, "EC 226");

            new Mouse(display, grid).drag(0, column(2030), 2, column(2030));

            List.of("B01", "B02", "B03").forEach(bus -> assertEquals(List.of("2030 Electric C 226"), steps(study, bus)));
            assertEquals("Gone: B01 2027 Electric C 150, B02 2027 Electric C 150, B03 2027 Electric C 150. Ctrl+Z takes it back; "
                    + "with Ctrl held, a stroke leaves other steps as they are.", status(study));
            assertEquals("Steps for 3 buses", display.syncCall(() -> study.session().history().undoable().orElseThrow().label()));
            study.awaitResultAfter(earlier);
            assertEquals("● EC 226", text(study, grid, 0, 2030));
            assertEquals("EC 226", text(study, grid, 0, 2040));

            assertTrue(display.syncCall(grid::isFocusControl), "keys reach the grid");
            new Keyboard(display).pressWith(SWT.CTRL, 'z');

            assertEquals(List.of("2027 Electric C 150"), steps(study, "B01"));
            assertEquals("● EC 150", text(study, grid, 0, 2027));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    /** What the editor says in the status line. */
    private static String status(OpenStudy study) {
        return study.display().syncCall(() -> ((SubStatusLineManager) study.editor().getEditorSite().getActionBars()
                .getStatusLineManager()).getParent() instanceof StatusLineManager line
                        ? all(line.getControl(), CLabel.class).map(CLabel::getText).findFirst().orElse("") : "");
    }

    @Test
    void aStrokeIsShownBeforeItIsDoneAndEscGivesItUp(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            take(study, "Retire");
            Mouse mouse = new Mouse(display, grid);
            mouse.press(0, column(2031));
            mouse.dragTo(1, column(2031));
            assertEquals("×", text(study, grid, 1, 2031));
            assertEquals(List.of("2027 Electric C 150"), steps(study, "B02"));

            new Keyboard(display).press(SWT.ESC);
            mouse.release();

            assertEquals(List.of("2027 Electric C 150"), steps(study, "B02"));
            assertEquals("EC 150", text(study, grid, 1, 2031));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void theRuleDecidesAboutBusesWhoseStepsArePaintedAway(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            StudyResult earlier = study.result();
            Grid grid = show(study);
            take(study, "Rule decides");

            new Mouse(display, grid).click(3, column(2030));

            assertEquals(List.of(), steps(study, "B04"));
            study.awaitResultAfter(earlier);
            assertTrue(IntStream.rangeClosed(2026, 2040).anyMatch(y -> text(study, grid, 3, y).equals("○ DC new")));
        }
    }

    /** B15 drives a route for type A buses; its neighbours are painted, it stays. */
    @Test
    void aBusThatTheTypeDoesNotSuitIsLeftOut(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            display.syncExec(() -> grid.goTo(16, column(2027)));
            take(study, "EC 150");
            List<String> before = steps(study, "B15");

            new Mouse(display, grid).drag(13, column(2028), 14, column(2028));

            assertEquals(List.of("2028 Electric C 150"), steps(study, "B14"));
            assertEquals(before, steps(study, "B15"));
        }
    }

    @Test
    void aStepIsDraggedToAnotherYearWithAllThatBelongsToIt(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            Replacement step = plan(study).getReplacements().stream().filter(r -> r.getBus().getName().equals("B06"))
                    .findFirst().orElseThrow();

            new Mouse(display, grid).drag(5, column(2029), 5, column(2031));

            assertEquals(2031, step.getYear());
            assertEquals("B20", step.getCascadeTo().getName());
            assertEquals(List.of("2031 Electric C 226"), steps(study, "B06"));
            assertEquals(column(2031), display.syncCall(() -> grid.selection().column()));
            assertEquals("● EC 226", text(study, grid, 5, 2031));

            display.syncExec(() -> study.session().undo());

            assertEquals(2029, step.getYear());
        }
    }

    @Test
    void keysMoveTheStepsOfABlock(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            Keyboard keys = new Keyboard(display);
            new Mouse(display, grid).drag(0, column(2026), 4, column(2028));

            keys.pressWith(SWT.ALT, SWT.ARROW_RIGHT);
            keys.pressWith(SWT.ALT, SWT.ARROW_RIGHT);

            assertEquals(List.of("2029 Electric C 150"), steps(study, "B03"));
            assertEquals(List.of("2030 Electric C 150"), steps(study, "B05"));

            keys.pressWith(SWT.ALT, SWT.ARROW_LEFT);

            assertEquals(List.of("2028 Electric C 150"), steps(study, "B03"));
        }
    }

    @Test
    void aLetterOrEnterOpensTheTypesAndDeleteTakesTheStepAway(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            goTo(study, grid, 0, 2035);

            enter(display, grid, "226");

            assertEquals(List.of("2027 Electric C 150", "2035 Electric C 226"), steps(study, "B01"));

            new Mouse(display, grid).click(0, column(2035));
            assertTrue(display.syncCall(grid::getToolTipText).startsWith("B01, 2035: "));
            display.syncExec(() -> press(grid, SWT.CR, '\r'));
            assertNull(display.syncCall(grid::getToolTipText), "no tip covers what is typed");
            assertEquals("Electric C 226", display.syncCall(() -> grid.entry().typed()));
            display.syncExec(() -> grid.entry().cancel());
            new Keyboard(display).press(SWT.DEL);

            assertEquals(List.of("2027 Electric C 150"), steps(study, "B01"));

            goTo(study, grid, 0, 2030);
            enter(display, grid, "zeppelin");
            assertTrue(display.syncCall(() -> grid.entry().refusal()).startsWith("“zeppelin” is no vehicle type of the study"));
            display.syncExec(() -> grid.entry().cancel());
        }
    }

    /** Types a letter into a cell, the rest into the entry that it opens, and Enter: a list of choices is on show meanwhile. */
    private static void enter(Display display, Grid grid, String text) {
        display.syncExec(() -> {
            press(grid, text.charAt(0), text.charAt(0));
            StyledText entry = (StyledText) display.getFocusControl();
            entry.append(text.substring(1));
            Event enter = new Event();
            enter.detail = SWT.TRAVERSE_RETURN;
            entry.notifyListeners(SWT.Traverse, enter);
        });
    }

    private static void press(Grid grid, int keyCode, char character) {
        Event event = new Event();
        event.keyCode = keyCode;
        event.character = character;
        grid.notifyListeners(SWT.KeyDown, event);
    }

    @Test
    void aRowIsCopiedAsTextAndPastedOntoAnotherBus(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            Keyboard keys = new Keyboard(display);
            goTo(study, grid, 0, 2026);
            display.syncExec(() -> {
                grid.selection().select(new CellRange(0, 0, 0, column(2040)));
                grid.copy();
                grid.goTo(9, 0);
            });
            assertEquals(List.of("2031 Diesel C new"), steps(study, "B10"));

            keys.pressWith(SWT.CTRL, 'v');

            assertEquals(List.of("2027 Electric C 150"), steps(study, "B10"));
            assertEquals("Steps for bus B10", display.syncCall(() -> study.session().history().undoable().orElseThrow().label()));

            display.syncExec(() -> grid.goTo(14, 0));
            keys.pressWith(SWT.CTRL, 'v');

            assertTrue(steps(study, "B15").get(0).endsWith("Electric A 118"), "a type that does not suit is refused whole");
        }
    }

    @Test
    void aPlanIsCopiedLookedAtAndDeleted(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = show(study);
            PlanActions actions = new PlanActions(study.session());

            Plan copy = display.syncCall(() -> actions.copy(plan(study), "Second try"));

            assertEquals(copy, study.study().getPlans().get(2));
            assertTrue(display.syncCall(() -> combos(grid)).contains("Second try"));
            take(study, "GA new");
            new Mouse(display, grid).click(15, column(2033));
            display.syncExec(() -> actions.delete(copy));

            assertFalse(study.study().getPlans().contains(copy));
            assertEquals("Electric in stages", display.syncCall(() -> combos(grid)).get(0), "the plan that was copied");
            assertEquals(List.of("2028 Electric A 118"), steps(study, "B16"), "the plan copied is as it was");
            assertFalse(display.syncCall(() -> actions.canDelete(study.study().getBaseline())));
        }
    }

    private static List<String> combos(Grid grid) {
        return all(grid.getParent(), Combo.class).map(Combo::getText).toList();
    }

    /** A control and all within it that are of a kind. */
    static <T> Stream<T> all(Control control, Class<T> kind) {
        Stream<T> self = kind.isInstance(control) ? Stream.of(kind.cast(control)) : Stream.empty();
        return control instanceof Composite parent && !(control instanceof Combo)
                ? Stream.concat(self, Arrays.stream(parent.getChildren()).flatMap(c -> all(c, kind))) : self;
    }
}
