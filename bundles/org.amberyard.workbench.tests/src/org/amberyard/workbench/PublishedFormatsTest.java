package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.gtfs.GtfsChoice;
import org.amberyard.exchange.gtfs.GtfsFeed;
import org.amberyard.exchange.gtfs.GtfsImport;
import org.amberyard.exchange.weather.WeatherImport;
import org.amberyard.exchange.weather.WeatherSource;
import org.amberyard.model.routes.Route;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.handlers.FileReading;
import org.amberyard.workbench.handlers.ScheduleDialog;
import org.amberyard.workbench.handlers.ScheduleLook;
import org.amberyard.workbench.handlers.ScheduleReading;
import org.amberyard.workbench.handlers.UpdateAddition;
import org.amberyard.workbench.handlers.WeatherReading;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Imports weather and a schedule as the commands do, by the classes behind their dialogs. */
@ExtendWith(WorkbenchExtension.class)
class PublishedFormatsTest {

    @TempDir
    private Path folder;

    private static <T, R extends FileReading<T>> T read(R reading) throws InterruptedException {
        reading.schedule();
        reading.join();
        return reading.imported().orElseThrow(() -> new AssertionError(reading.refusal().orElse(null)));
    }

    @Test
    void normalsChangeTheClimateInOneStep(Display display) throws Exception {
        Path file = Files.writeString(folder.resolve("normals.csv"), "month,low_F,high_F,coldest_low_F,coldest_high_F,hottest_F\n"
                + "January,-4,14,-40,-22,32\nFebruary,-2,16,-38,-20,34\n");
        WeatherSource source = read(new WeatherReading(file));
        try (OpenStudy open = OpenStudy.inFolder(display, folder)) {
            Study study = open.study();
            MonthClimate january = study.getSite().getClimate().get(0);
            double before = january.getMeanLowC();
            int notes = january.getSources().size();
            display.syncExec(() -> {
                try {
                    WeatherImport imported = source.load(0, study);
                    UpdateAddition addition = new UpdateAddition(open.session(), imported.update());
                    String words = addition.words(imported.sentences());
                    assertTrue(words.startsWith("Normals of 2 months"), words);
                    assertTrue(words.contains("\n\nChanges:\nmonth climate January, mean daily low: 4 °F → −4 °F\n"), words);
                    addition.add("Import of the climate");
                } catch (ImportException e) {
                    throw new AssertionError(e);
                }
            });
            assertEquals(-20, january.getMeanLowC(), 1e-9);
            assertEquals(notes + 5, january.getSources().size(), "those of other fields stay");
            assertTrue(january.getSources().stream().anyMatch(n -> "normals.csv".equals(n.getCitation())));
            open.show(PageKind.CLIMATE);
            assertTrue(display.syncCall(() -> Tools.has("Import weather...")));
            display.syncExec(() -> open.session().undo());
            assertEquals(before, january.getMeanLowC());
            assertEquals(notes, january.getSources().size());
            assertFalse(display.syncCall(() -> open.editor().isDirty()));
        }
    }

    private Path schedule() throws IOException {
        Path schedule = Files.createDirectory(folder.resolve("vale"));
        Files.writeString(schedule.resolve("agency.txt"), "agency_name\nVale Transit\n");
        Files.writeString(schedule.resolve("routes.txt"), "route_id,route_short_name,route_type\n1,12,3\n2,14,3\n");
        Files.writeString(schedule.resolve("calendar_dates.txt"), "service_id,date,exception_type\nW,20260901,1\nW,20260902,1\nS,20260905,1\n");
        Files.writeString(schedule.resolve("stops.txt"), "stop_id,stop_lat,stop_lon\na,41,-93\nb,41.1,-93\n");
        Files.writeString(schedule.resolve("trips.txt"), "route_id,service_id,trip_id,block_id\n1,W,t1,B1\n2,W,t2,B2\n1,S,t3,B1\n");
        Files.writeString(schedule.resolve("stop_times.txt"), "trip_id,arrival_time,departure_time,stop_id,stop_sequence\n"
                + "t1,6:30:00,6:30:00,a,1\nt1,7:00:00,7:00:00,b,2\nt2,6:30:00,6:30:00,b,1\nt2,7:00:00,7:00:00,a,2\n"
                + "t3,9:30:00,9:30:00,a,1\nt3,10:00:00,10:00:00,b,2\n");
        return schedule.resolve("trips.txt");
    }

    @Test
    void checkedBlocksBecomeRoutesInOneStep(Display display) throws Exception {
        GtfsFeed feed = read(new ScheduleLook(schedule()));
        try (OpenStudy open = OpenStudy.inFolder(display, folder)) {
            int before = open.study().getRoutes().size();
            GtfsChoice choice = display.syncCall(() -> choose(feed));
            assertEquals(Set.of("B2"), choice.blocks());
            GtfsImport imported = read(new ScheduleReading(feed, choice));
            Route added = display.syncCall(() -> {
                UpdateAddition addition = new UpdateAddition(open.session(), imported.update(open.study()));
                String words = addition.words(imported.sentences(open.study()));
                assertTrue(words.contains("Changes:\nservice calendar GTFS Tue+Wed is added, with 2 days\nroute B2 is added, with 1 run"),
                        words);
                addition.add("Import of a schedule");
                return open.study().getRoutes().get(before);
            });
            assertEquals("B2", added.getName());
            open.show(PageKind.ROUTES);
            assertTrue(display.syncCall(() -> Tools.has("Import schedule...")));
            display.syncExec(() -> open.session().undo());
            assertEquals(before, open.study().getRoutes().size());
            assertFalse(display.syncCall(() -> open.editor().isDirty()));
        }
    }

    /** Checks all, then none, then the only block that is left by the filter. */
    private static GtfsChoice choose(GtfsFeed feed) {
        ScheduleDialog dialog = new ScheduleDialog(OpenStudy.page().getWorkbenchWindow().getShell(), feed);
        dialog.setBlockOnOpen(false);
        dialog.open();
        Shell shell = dialog.getShell();
        assertEquals("Tue+Wed, 2 days from 1 Sep 2026 to 2 Sep 2026", View.all(shell, Combo.class).get(0).getText());
        Table blocks = View.all(shell, Table.class).get(0);
        assertEquals(List.of("B1", "B2"), names(blocks));
        Button ok = button(shell, IDialogConstants.OK_LABEL);
        assertFalse(ok.isEnabled());
        press(button(shell, "All shown"));
        assertTrue(ok.isEnabled());
        press(button(shell, "None"));
        assertFalse(ok.isEnabled());
        View.all(shell, Text.class).get(0).setText("14");
        assertEquals(List.of("B2"), names(blocks));
        press(button(shell, "All shown"));
        press(ok);
        return dialog.choice();
    }

    private static List<String> names(Table blocks) {
        return Arrays.stream(blocks.getItems()).map(TableItem::getText).toList();
    }

    private static Button button(Shell shell, String text) {
        return View.all(shell, Button.class).stream().filter(b -> b.getText().equals(text)).findFirst().orElseThrow();
    }

    private static void press(Button button) {
        button.notifyListeners(SWT.Selection, new Event());
    }

    @Test
    void aScheduleThatIsRefusedSaysWhyAndAStoppedReadingHasNoOutcome(Display display) throws Exception {
        Path trips = schedule();
        Files.delete(trips.resolveSibling("stops.txt"));
        GtfsFeed feed = read(new ScheduleLook(trips));
        ScheduleReading reading = new ScheduleReading(feed, new GtfsChoice(feed.kinds().get(0), Set.of("B1")));
        reading.schedule();
        reading.join();
        assertTrue(reading.refusal().orElseThrow().getMessage().startsWith("stops.txt: The file is missing"));
        Files.writeString(trips.resolveSibling("agency.txt"), "agency_name\n" + "A\n".repeat(20_000));
        ScheduleLook stopped = new ScheduleLook(trips);
        stopped.schedule(50);
        stopped.cancel();
        stopped.join();
        assertTrue(stopped.imported().isEmpty() && stopped.refusal().isEmpty());
    }
}
