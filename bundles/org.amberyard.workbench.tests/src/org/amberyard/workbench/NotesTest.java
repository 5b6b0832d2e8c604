package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.report.InputRegister;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Writes notes and finds them again. */
@ExtendWith(WorkbenchExtension.class)
class NotesTest {

    @TempDir
    private Path folder;

    @Test
    void aNoteIsWrittenByKeyMarkedListedSavedAndTakenBack(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Bus bus = study.study().getBuses().get(4);
            String before = bus.getNote() == null ? "" : bus.getNote();
            Grid grid = study.goTo(bus, FleetPackage.Literals.BUS__MODEL_YEAR);

            new Keyboard(display).hold(SWT.CTRL, SWT.SHIFT, 'n');
            study.await(() -> dialog(display).isPresent());
            display.syncExec(() -> {
                Shell shell = dialog(display).orElseThrow();
                View.all(shell, Text.class).get(0).setText("gearbox overhauled in May");
                View.all(shell, Combo.class).get(0).select(Quality.MEASURED.ordinal() + 1);
                View.all(shell, Text.class).get(1).setText("title");
                View.all(shell, Text.class).get(2).setText("9/4/25");
                View.all(shell, Button.class).stream().filter(b -> b.getText().equals("OK")).findFirst().orElseThrow()
                        .notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> dialog(display).isEmpty());

            assertEquals("gearbox overhauled in May", bus.getNote());
            SourceNote source = SourceNotes.find(bus, "modelYear").orElseThrow();
            assertEquals(Quality.MEASURED + " title 2025-09-04", source.getQuality() + " " + source.getCitation() + " " + source.getDate());
            assertEquals("Source: measured: title, 2025-09-04", display.syncCall(() -> grid.model().tip(4, grid.selection().column())));
            assertEquals(bus.getNote(), display.syncCall(() -> grid.model().note(4, 0)));
            Grid notes = view(display);
            assertTrue(display.syncCall(() -> IntStream.range(0, notes.model().rows())
                    .anyMatch(r -> notes.model().text(r, 1).equals(bus.getNote()) && notes.model().text(r, 0).contains(bus.getName()))));
            assertTrue(display.syncCall(() -> InputRegister.of(study.study()).rows().stream()
                    .anyMatch(r -> bus.getNote().equals(r.get(2)))));
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            assertEquals(bus.getNote(), StudyFile.load(study.file()).getBuses().get(4).getNote());

            display.syncExec(study.session()::undo);
            assertEquals(before, bus.getNote() == null ? "" : bus.getNote());
            assertTrue(SourceNotes.find(bus, "modelYear").isEmpty());
        }
    }

    private static Grid view(Display display) {
        return display.syncCall(() -> {
            try {
                OpenStudy.page().showView("org.amberyard.workbench.notes");
            } catch (PartInitException e) {
                throw new AssertionError(e);
            }
            return (Grid) display.getFocusControl();
        });
    }

    private static Optional<Shell> dialog(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().startsWith("Note on ")).findFirst();
    }
}
