package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.CutText;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.Evaluation;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What is said of errors and cells must not move what the user points at, nor stay behind. */
@ExtendWith(WorkbenchExtension.class)
class StillnessTest {

    @TempDir
    private Path folder;

    @Test
    void anErrorMovesNothingAndIsToldAtTheFootOfEveryPage(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid plans = study.goTo(study.study().getPlans().get(0), PlansPackage.Literals.PLAN__YEARLY_CAP);
            CutText line = display.syncCall(() -> View.all(plans.getShell(), CutText.class).get(0));
            assertEquals("No errors in the study", display.syncCall(line::text));
            Rectangle before = onScreen(display, plans);

            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study(),
                    StudyPackage.Literals.STUDY__BASELINE, null)));
            study.await(() -> study.session().evaluation().phase() == Evaluation.Phase.STALE);
            assertEquals(before, onScreen(display, plans));
            assertTrue(display.syncCall(line::text).startsWith("Page Study: "), display.syncCall(line::text));

            study.show(PageKind.STUDY);
            assertTrue(!display.syncCall(line::text).startsWith("Page ") && display.syncCall(line::text).contains("aseline"), display.syncCall(line::text));
            display.syncExec(study.session()::undo);
            study.awaitResult();
            assertEquals("No errors in the study", display.syncCall(line::text));
        }
    }

    private static Rectangle onScreen(Display display, Grid grid) {
        return display.syncCall(() -> display.map(grid, null, grid.getClientArea()));
    }

    /** Neighbours have the same source; the tip of one is not that of the other, and a key takes it away until the pointer is elsewhere. */
    @Test
    void aTipGoesWithItsCellAndWithKeys(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid settings = study.goTo(study.study().getSettings(), StudyPackage.Literals.SETTINGS__GENERAL_INFLATION);
            display.syncExec(() -> {
                settings.notifyListeners(SWT.MouseEnter, new Event());
                pointAt(settings, 7);
            });
            String tip = display.syncCall(settings::getToolTipText);
            assertNotNull(tip);
            display.syncExec(() -> pointAt(settings, 8));
            assertNull(display.syncCall(settings::getToolTipText), "it goes first");
            study.await(() -> tip.equals(settings.getToolTipText()));
            new Keyboard(display).press(SWT.ARROW_DOWN);
            assertNull(display.syncCall(settings::getToolTipText));
            display.syncExec(() -> pointAt(settings, 8));
            OpenStudy.pause(300);
            assertNull(display.syncCall(settings::getToolTipText), "the pointer is where it was");
            display.syncExec(() -> pointAt(settings, 7));
            assertEquals(tip, display.syncCall(settings::getToolTipText));
            display.syncExec(() -> settings.notifyListeners(SWT.MouseExit, new Event()));
            assertNull(display.syncCall(settings::getToolTipText));
        }
    }

    private static void pointAt(Grid grid, int row) {
        Rectangle cell = grid.cellBounds(row, 1);
        Event move = new Event();
        move.x = cell.x + cell.width / 2;
        move.y = cell.y + cell.height / 2;
        grid.notifyListeners(SWT.MouseMove, move);
    }

    @Test
    void aLineThatIsCutEndsWithAnEllipsisAndHasATip(Display display) {
        List<String> seen = display.syncCall(() -> {
            Shell shell = new Shell(display);
            CutText line = new CutText(shell, Fonts.TEXT);
            line.setSize(120, 20);
            line.show("Short", Palette.INK);
            String shortTip = String.valueOf(line.getToolTipText());
            line.show("A sentence that has no room in so few pixels", Palette.ERROR);
            List<String> all = List.of(shortTip, line.shown(), line.getToolTipText());
            shell.dispose();
            return all;
        });
        assertEquals("null", seen.get(0));
        assertTrue(seen.get(1).startsWith("A sent") && seen.get(1).endsWith("…"), seen.get(1));
        assertEquals("A sentence that has no room in so few pixels", seen.get(2));
    }
}
