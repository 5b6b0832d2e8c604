package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.exchange.TraceImport;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.routes.Run;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.handlers.TraceAddition;
import org.amberyard.workbench.handlers.TraceReading;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Imports drives as the command does, by the classes behind its dialogs. */
@ExtendWith(WorkbenchExtension.class)
class TraceImportTest {
    private static final Path SCHEDULE = Path.of(System.getProperty("basedir", "."))
            .resolve("../../examples/drive-schedules/epa_hd_udds.csv").normalize();

    @TempDir
    private Path folder;

    private static TraceReading read(Path file) throws InterruptedException {
        TraceReading reading = new TraceReading(file);
        reading.schedule();
        reading.join();
        return reading;
    }

    @Test
    void anImportedScheduleIsShownDrivenAndUndone(Display display) throws Exception {
        TraceImport imported = read(SCHEDULE).imported().orElseThrow();
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            TraceAddition addition = new TraceAddition(study.session(), imported);
            String words = display.syncCall(addition::words);
            assertTrue(words.startsWith("1,061 points were read.\n"), words);
            assertTrue(words.contains("\n\nThe drive is 5.55 mi long and takes 17.7 min: mean 18.9 mph"), words);

            int before = study.study().getTraces().size();
            DriveTrace trace = display.syncCall(addition::add);
            assertTrue(display.syncCall(() -> study.editor().isDirty()));

            Grid grid = study.goTo(trace, RoutesPackage.Literals.DRIVE_TRACE__NAME);
            assertEquals(List.of("Name", "Comes from", "Note", "Length (mi)", "Duration (min)", "Mean speed (mph)", "Stops",
                    "Climb (ft)"), display.syncCall(() -> headers(grid)));
            int row = display.syncCall(() -> grid.selection().row());
            assertEquals(List.of("epa_hd_udds", "epa_hd_udds.csv", "", "5.55", "17.7", "18.9", "14", "0"),
                    display.syncCall(() -> texts(grid, row)));
            assertFalse(display.syncCall(() -> grid.model().isEditable(row, 3)));

            Run run = study.study().getRoutes().get(0).getRuns().get(0);
            var earlier = study.result();
            display.syncExec(() -> study.session().execute(
                    SetCommand.create(study.session().domain(), run, RoutesPackage.Literals.RUN__TRACE, trace)));
            assertTrue(study.awaitResultAfter(earlier).input().duty().routes().get(0).runs().get(0).trace().isPresent());

            display.syncExec(() -> study.session().undo());
            display.syncExec(() -> study.session().undo());
            assertEquals(before, study.study().getTraces().size());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    private static List<String> headers(Grid grid) {
        return IntStream.range(0, grid.model().columns()).mapToObj(grid.model()::header).toList();
    }

    private static List<String> texts(Grid grid, int row) {
        return IntStream.range(0, grid.model().columns()).mapToObj(c -> grid.model().text(row, c)).toList();
    }

    @Test
    void aFileThatIsRefusedSaysWhy(Display display) throws IOException, InterruptedException {
        TraceReading reading = read(Files.writeString(folder.resolve("log.csv"), "time_s,speed_mps\n0,0\n1,fast\n"));
        assertTrue(reading.imported().isEmpty());
        assertEquals("log.csv, row 3, column “speed_mps”: “fast” must be a number, 0 to 100 m/s.",
                reading.refusal().orElseThrow().getMessage());
    }
}
