package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.ChartNote;
import org.amberyard.workbench.charts.ChartCanvas;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Notes things on charts. */
@ExtendWith(WorkbenchExtension.class)
class ChartNotesTest {

    @TempDir
    private Path folder;

    @Test
    void aNoteIsMadeWhereTheMenuWasOpenedKeptChangedAndDeleted(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View bill = View.of(study, "electricBill");
            ChartCanvas canvas = display.syncCall(bill::canvas);
            study.await(() -> canvas.chart().isPresent());
            display.syncExec(() -> canvas.notifyListeners(SWT.MenuDetect, at(canvas)));
            display.asyncExec(() -> notes(canvas, "&Note here").notifyListeners(SWT.Selection, new Event()));
            answer(study, "summer rate from June");
            study.await(() -> canvas.textAlternative().endsWith("Note: summer rate from June"));

            ChartNote note = study.study().getChartNotes().get(0);
            assertEquals("electric_bill", note.getChart());
            assertTrue(note.getAcross() > 0 && note.getUpward() > 0, note.toString());
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            assertEquals("summer rate from June", StudyFile.load(study.file()).getChartNotes().get(0).getNote());

            display.asyncExec(() -> notes(canvas, "Change").notifyListeners(SWT.Selection, new Event()));
            answer(study, "winter rate");
            study.await(() -> canvas.textAlternative().endsWith("Note: winter rate"));
            display.syncExec(() -> notes(canvas, "Delete").notifyListeners(SWT.Selection, new Event()));
            study.await(() -> !canvas.textAlternative().contains("Note:"));
            display.syncExec(study.session()::undo);
            study.await(() -> canvas.textAlternative().endsWith("Note: winter rate"));
        }
    }

    @Test
    void theKeyNotesAndOnlyWhatIsChosenHasTheNote(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View budget = View.of(study, "budgetByYear");
            ChartCanvas canvas = display.syncCall(budget::canvas);
            study.await(() -> canvas.chart().isPresent());
            display.syncExec(canvas::forceFocus);
            new Keyboard(display).type("n");
            answer(study, "bond vote");
            study.await(() -> canvas.textAlternative().endsWith("Note: bond vote"));
            String plan = study.study().getChartNotes().get(0).getShown();
            assertEquals(budget.chosen(0), plan);

            budget.choose(0, study.study().getPlans().stream().map(p -> p.getName()).filter(n -> !n.equals(plan)).findFirst().orElseThrow());
            study.await(() -> !canvas.isFaded() && !canvas.textAlternative().contains("Note:"));
            assertFalse(study.study().getChartNotes().isEmpty());
        }
    }

    private static void answer(OpenStudy study, String text) {
        study.await(() -> dialog(study.display()).isPresent());
        study.display().syncExec(() -> {
            Shell shell = dialog(study.display()).orElseThrow();
            View.all(shell, Text.class).get(0).setText(text);
            View.all(shell, Button.class).stream().filter(b -> b.getText().equals("OK")).findFirst().orElseThrow()
                    .notifyListeners(SWT.Selection, new Event());
        });
        study.await(() -> dialog(study.display()).isEmpty());
    }

    private static Optional<Shell> dialog(Display display) {
        return display.syncCall(() -> Arrays.stream(display.getShells()).filter(s -> s.isVisible() && s.getText().equals("Note on the chart"))
                .findFirst());
    }

    private static Event at(ChartCanvas canvas) {
        Point size = canvas.getSize();
        Point place = canvas.toDisplay(size.x / 2, size.y / 2);
        Event event = new Event();
        event.x = place.x;
        event.y = place.y;
        event.detail = SWT.MENU_MOUSE;
        return event;
    }

    private static MenuItem notes(ChartCanvas canvas, String text) {
        Menu notes = item(canvas.getMenu(), "&Notes").getMenu();
        notes.notifyListeners(SWT.Show, new Event());
        return item(notes, text);
    }

    private static MenuItem item(Menu menu, String text) {
        return Arrays.stream(menu.getItems()).filter(i -> i.getText().startsWith(text)).findFirst().orElseThrow();
    }
}
