package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.study.CurveLogs;
import org.amberyard.study.whatif.StudyFingerprint;
import org.amberyard.workbench.charts.ChartCanvas;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.measurements.FitCurveDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Fits the curve of the example's demonstration bus in the dialog, accepts it and takes it back. */
@ExtendWith(WorkbenchExtension.class)
class FitCurveTest {

    @TempDir
    private Path folder;

    @Test
    void anAcceptedCurveIsOneStepThatCanBeUndone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ElectricType type = CurveLogs.typesWithLogs(study.study()).get(0);
            int notes = type.getSources().size();
            FitCurveDialog dialog = open(study, type);
            study.await(() -> accept(dialog).isEnabled());
            assertTrue(display.syncCall(() -> texts(dialog).stream().anyMatch(t -> t.startsWith("Good fit"))));
            study.await(() -> canvas(dialog).textAlternative().startsWith("Electric C 150, 15 logs; curves at their mean speed of "));
            Grid changes = display.syncCall(() -> grids(dialog).get(0));
            Grid residuals = display.syncCall(() -> grids(dialog).get(1));
            assertEquals(List.of("Curve: base use", "0 kWh/mi"), display.syncCall(() -> List.of(changes.model().text(0, 0), changes.model().text(0, 1))));
            assertTrue(display.syncCall(() -> changes.model().text(0, 2)).matches("1\\.\\d+ kWh/mi"), display.syncCall(() -> changes.model().text(0, 2)));
            assertEquals(15, display.syncCall(() -> residuals.model().rows()));
            assertEquals(List.of(false, true, true), display.syncCall(() -> IntStream.range(0, 3).mapToObj(c -> changes.model().isFigure(0, c)).toList()));
            assertTrue(display.syncCall(() -> IntStream.range(1, 8).allMatch(c -> residuals.model().isFigure(0, c))));
            assertEquals("Curve: rise in the cold", display.syncCall(() -> changes.model().text(1, 0)), "the temperatures stay as they are");

            display.syncExec(() -> press(accept(dialog)));

            assertTrue(type.getCurveBaseKwhPerKm() > 0.7);
            assertTrue(display.syncCall(() -> study.session().history().undoable().orElseThrow().label())
                    .equals("Consumption curve of Electric C 150"));

            display.syncExec(() -> study.session().undo());

            assertEquals(0, type.getCurveBaseKwhPerKm());
            assertEquals(notes, type.getSources().size());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));

            display.syncExec(() -> study.session().redo());

            assertTrue(type.getCurveHeatKwPerK() > 0);
        }
    }

    /** Rejected, the study is as it was to the last byte, and nothing can be undone. */
    @Test
    void aRejectedCurveChangesNothing(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ElectricType type = CurveLogs.typesWithLogs(study.study()).get(0);
            String before = StudyFingerprint.of(study.study());
            FitCurveDialog dialog = open(study, type);
            study.await(() -> accept(dialog).isEnabled());
            display.syncExec(() -> press(button(dialog, IDialogConstants.CANCEL_ID)));
            assertTrue(display.syncCall(() -> dialog.getShell() == null));
            assertEquals(before, StudyFingerprint.of(study.study()));
            assertFalse(display.syncCall(() -> study.session().history().undoable().isPresent()));
        }
    }

    @Test
    void aFigureThatIsNoneIsRefusedAndNothingCanBeAccepted(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ElectricType type = CurveLogs.typesWithLogs(study.study()).get(0);
            FitCurveDialog dialog = open(study, type);
            study.await(() -> accept(dialog).isEnabled());

            display.syncExec(() -> entries(dialog).get(0).setText("steep"));

            assertFalse(display.syncCall(() -> accept(dialog).isEnabled()));
            assertTrue(display.syncCall(() -> texts(dialog).stream()
                    .anyMatch(t -> t.startsWith("Curve: rise in the cold is “steep”; it must be a number"))));

            display.syncExec(() -> {
                entries(dialog).get(0).setText("");
                entries(dialog).get(1).setText("75");
            });

            assertFalse(display.syncCall(() -> accept(dialog).isEnabled()));
            assertTrue(display.syncCall(() -> texts(dialog).stream().anyMatch(t -> t.startsWith("Cooling must not start"))));
            display.syncExec(dialog::close);
            assertEquals(0, type.getCurveBaseKwhPerKm());
        }
    }

    /** The curve and the routes that go by it are one step, which says so; logs of days that nobody told are left aside. */
    @Test
    void aCurveIsPutToUseInTheSameStep(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ElectricType type = CurveLogs.typesWithLogs(study.study()).get(0);
            FitCurveDialog dialog = open(study, type);
            study.await(() -> accept(dialog).isEnabled());
            Button use = display.syncCall(() -> controls(dialog.getShell()).stream().filter(Button.class::isInstance).map(Button.class::cast)
                    .filter(b -> (b.getStyle() & SWT.CHECK) != 0).findFirst().orElseThrow());
            display.syncExec(() -> {
                use.setSelection(true);
                press(use);
                press(accept(dialog));
            });
            long routes = study.study().getRoutes().stream().filter(r -> r.getEnergyModel() == EnergyModel.CURVE).count();
            assertTrue(routes > 0);
            assertEquals("Consumption curve of Electric C 150, used for " + routes + " routes",
                    display.syncCall(() -> study.session().history().undoable().orElseThrow().label()));

            display.syncExec(() -> study.session().undo());

            assertTrue(study.study().getRoutes().stream().noneMatch(r -> r.getEnergyModel() == EnergyModel.CURVE));
            assertEquals(0, type.getCurveBaseKwhPerKm());
        }
    }

    @Test
    void logsAreChosenByTheirDays(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ElectricType type = CurveLogs.typesWithLogs(study.study()).get(0);
            FitCurveDialog dialog = open(study, type);
            study.await(() -> accept(dialog).isEnabled());
            display.syncExec(() -> entries(dialog).get(3).setText("in spring"));
            assertTrue(display.syncCall(() -> texts(dialog).stream().anyMatch(t -> t.startsWith("“in spring” is no day of the calendar"))));
            display.syncExec(() -> entries(dialog).get(3).setText("2025-01-01"));
            study.await(() -> texts(dialog).stream().anyMatch(t -> t.contains("Logs of the type that were not chosen: ")));
            display.syncExec(dialog::close);
        }
    }

    private static FitCurveDialog open(OpenStudy study, ElectricType type) {
        return study.display().syncCall(() -> {
            FitCurveDialog dialog = new FitCurveDialog(OpenStudy.page().getWorkbenchWindow().getShell(), study.session(),
                    List.of(type));
            dialog.setBlockOnOpen(false);
            dialog.open();
            return dialog;
        });
    }

    private static ChartCanvas canvas(FitCurveDialog dialog) {
        return controls(dialog.getShell()).stream().filter(ChartCanvas.class::isInstance).map(ChartCanvas.class::cast).findFirst().orElseThrow();
    }

    private static List<Grid> grids(FitCurveDialog dialog) {
        return controls(dialog.getShell()).stream().filter(Grid.class::isInstance).map(Grid.class::cast).toList();
    }

    private static Button accept(FitCurveDialog dialog) {
        return button(dialog, IDialogConstants.OK_ID);
    }

    private static Button button(FitCurveDialog dialog, int id) {
        return controls(dialog.getShell()).stream().filter(Button.class::isInstance).map(Button.class::cast)
                .filter(b -> Integer.valueOf(id).equals(b.getData())).findFirst().orElseThrow();
    }

    private static void press(Button button) {
        button.notifyListeners(SWT.Selection, null);
    }

    private static List<Text> entries(FitCurveDialog dialog) {
        return controls(dialog.getShell()).stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
    }

    private static List<String> texts(FitCurveDialog dialog) {
        return entries(dialog).stream().map(Text::getText).toList();
    }

    private static List<Control> controls(Composite parent) {
        List<Control> all = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            all.add(child);
            if (child instanceof Composite composite) {
                all.addAll(controls(composite));
            }
        }
        return all;
    }
}
