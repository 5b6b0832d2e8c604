package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.study.begin.BeginStudy;
import org.amberyard.workbench.begin.NewStudyDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Begins studies by answering what the dialog asks. */
@ExtendWith(WorkbenchExtension.class)
class NewStudyTest {
    private static final int TYPE_A = 3;
    private static final int BUSES_ON_ROUTES = 5;
    private static final int DAY = 13;
    private static final int COLDEST = 18;
    private static final int ENGINE_A = 22;

    private static NewStudyDialog open() {
        NewStudyDialog dialog = new NewStudyDialog(OpenStudy.page().getWorkbenchWindow().getShell());
        dialog.setBlockOnOpen(false);
        dialog.open();
        return dialog;
    }

    private static Text text(NewStudyDialog dialog, int place) {
        List<Text> fields = View.all(dialog.getShell(), Text.class).stream().filter(t -> (t.getStyle() & SWT.READ_ONLY) == 0).toList();
        return fields.get(place);
    }

    private static Button begin(NewStudyDialog dialog) {
        return button(dialog, "Begin the study");
    }

    private static Button button(NewStudyDialog dialog, String label) {
        return View.all(dialog.getShell(), Button.class).stream().filter(b -> b.getText().equals(label)).findFirst().orElseThrow();
    }

    @Test
    void answersMakeAStudyInTheUnitsChosen(Display display) {
        display.syncExec(() -> {
            NewStudyDialog dialog = open();
            text(dialog, 0).setText("Ashcombe");
            text(dialog, BUSES_ON_ROUTES).setText("5");
            Combo units = View.all(dialog.getShell(), Combo.class).get(0);
            units.select(1);
            units.notifyListeners(SWT.Selection, new Event());
            assertEquals("96.6", text(dialog, DAY).getText());
            text(dialog, DAY).setText("90");
            begin(dialog).notifyListeners(SWT.Selection, new Event());
            Study study = BeginStudy.of(dialog.answers().orElseThrow());
            assertEquals("Ashcombe", study.getName());
            assertEquals(UnitChoice.METRIC, study.getSettings().getUnits());
            assertEquals(7, study.getBuses().size());
            assertEquals(45, study.getRoutes().get(0).getRuns().get(0).getDistanceKm(), 1e-12);
        });
    }

    /** A fleet of small and large buses; the price of a body type is asked for where there are such buses. */
    @Test
    void aMixedFleetIsBegunWithTypesOfEachBody(Display display) {
        display.syncExec(() -> {
            NewStudyDialog dialog = open();
            assertFalse(text(dialog, ENGINE_A).isEnabled());
            text(dialog, TYPE_A).setText("3");
            assertTrue(text(dialog, ENGINE_A).isEnabled());
            text(dialog, BUSES_ON_ROUTES).setText("5");
            text(dialog, ENGINE_A).setText("99000");
            begin(dialog).notifyListeners(SWT.Selection, new Event());
            Study study = BeginStudy.of(dialog.answers().orElseThrow());
            assertEquals(List.of("Diesel A", "Electric A", "Diesel C", "Electric C"), study.getVehicleTypes().stream().map(t -> t.getName()).toList());
            assertEquals(99_000, study.getVehicleTypes().get(0).getPurchasePrice(), 1e-9);
            assertEquals(10, study.getBuses().size());
        });
    }

    @Test
    void whatIsTypedAtOnceIsTheName(Display display) {
        NewStudyDialog dialog = display.syncCall(NewStudyTest::open);
        OpenStudy.await(display, () -> display.getFocusControl() == text(dialog, 0));
        assertEquals(display.syncCall(() -> text(dialog, 0).getText()), display.syncCall(() -> text(dialog, 0).getSelectionText()));
        display.syncExec(dialog::close);
    }

    @Test
    void whatIsNotAllowedIsSaidAndTheStudyNotBegun(Display display) {
        display.syncExec(() -> {
            NewStudyDialog dialog = open();
            text(dialog, BUSES_ON_ROUTES).setText("many");
            assertEquals("Buses on routes, by body type, C is “many”; it must be a number from 1 to 2,000.", dialog.getErrorMessage());
            assertFalse(begin(dialog).isEnabled());
            text(dialog, BUSES_ON_ROUTES).setText("20");
            text(dialog, COLDEST).setText("70");
            assertEquals("Temperatures, coldest day is “70”; it must be a number from -67 to 23 °F.", dialog.getErrorMessage());
            text(dialog, COLDEST).setText("-10");
            assertNull(dialog.getErrorMessage());
            assertTrue(begin(dialog).isEnabled());
            button(dialog, "Cancel").notifyListeners(SWT.Selection, new Event());
            assertTrue(dialog.answers().isEmpty() && !dialog.withoutAnswers());
        });
    }

    @Test
    void withoutAnswersItHasOnlyDefaults(Display display) {
        display.syncExec(() -> {
            NewStudyDialog dialog = open();
            button(dialog, "Without answers").notifyListeners(SWT.Selection, new Event());
            assertTrue(dialog.answers().isEmpty() && dialog.withoutAnswers());
        });
    }
}
