package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.model.fleet.Bus;
import org.amberyard.workbench.handlers.SheetReading;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.sheets.TableDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Imports tables through the dialog, as a user does. */
@ExtendWith(WorkbenchExtension.class)
class TableImportTest {
    private static final long TIMEOUT_MS = 30_000;
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";

    @TempDir
    private Path folder;

    /** The dialog over the window, driven on the thread of the display. */
    private record Open(Display display, TableDialog dialog) implements AutoCloseable {

        static Open on(OpenStudy study, Path file) throws InterruptedException {
            SheetReading reading = new SheetReading(file);
            reading.schedule();
            reading.join();
            List<Sheet> sheets = reading.imported().orElseThrow();
            TableDialog dialog = study.display().syncCall(() -> {
                TableDialog made = new TableDialog(OpenStudy.page().getWorkbenchWindow().getShell(), study.session(), sheets);
                made.setBlockOnOpen(false);
                made.open();
                return made;
            });
            return new Open(study.display(), dialog);
        }

        <T extends Control> List<T> all(Class<T> kind) {
            return within(dialog.getShell()).filter(kind::isInstance).map(kind::cast).toList();
        }

        private static Stream<Control> within(Control control) {
            return control instanceof Composite area ? Stream.concat(Stream.of(control), Arrays.stream(area.getChildren()).flatMap(Open::within))
                    : Stream.of(control);
        }

        String tab(int place) {
            return display.syncCall(() -> all(TabFolder.class).get(1).getItem(place).getText());
        }

        Button button() {
            return all(Button.class).stream().filter(b -> b.getText().equals("Import")).findFirst().orElseThrow();
        }

        boolean importable() {
            return display.syncCall(() -> button().isEnabled());
        }

        void await(BooleanSupplier condition) throws InterruptedException {
            long until = System.currentTimeMillis() + TIMEOUT_MS;
            while (!condition.getAsBoolean()) {
                assertTrue(System.currentTimeMillis() < until, () -> "still " + tab(0) + ", " + tab(1) + ", " + tab(2));
                Thread.sleep(20);
            }
        }

        /** The first row of a tab's table. */
        List<String> row(int tab, int row) {
            return display.syncCall(() -> {
                Table table = all(Table.class).get(2 + tab);
                return IntStream.range(0, table.getColumnCount()).mapToObj(c -> table.getItem(row).getText(c)).toList();
            });
        }

        /** The table of the cells of the sheet. */
        Table cells() {
            return all(Table.class).get(1);
        }

        /** Picks a problem as a click does. */
        void pick(int problem) {
            display.syncExec(() -> {
                Table problems = all(Table.class).get(2);
                problems.setSelection(problem);
                Event event = new Event();
                event.item = problems.getItem(problem);
                problems.notifyListeners(SWT.Selection, event);
            });
        }

        /** Says of a column that it is not used, by the choice in its cell. */
        void useNothingOf(int place) {
            display.syncExec(() -> {
                Table columns = all(Table.class).get(0);
                columns.setSelection(place);
                Event click = new Event();
                click.button = 1;
                click.count = 1;
                click.x = columns.getItem(place).getBounds(2).x + 4;
                click.y = columns.getItem(place).getBounds(2).y + 4;
                columns.notifyListeners(SWT.MouseDown, click);
                CCombo words = all(CCombo.class).get(0);
                words.select(0);
                words.notifyListeners(SWT.Selection, new Event());
                words.notifyListeners(SWT.DefaultSelection, new Event());
            });
        }

        /** The line that says what has become of the rows. */
        String rows() {
            return display.syncCall(() -> all(Label.class).stream().map(Label::getText).filter(t -> t.startsWith("Rows read")).findFirst().orElse(""));
        }

        /** Types a text over the cell that the cursor is on. */
        void mend(String text) {
            display.syncExec(() -> {
                TableCursor cursor = all(TableCursor.class).get(0);
                cursor.notifyListeners(SWT.DefaultSelection, new Event());
                Text entry = Arrays.stream(cells().getChildren()).filter(Text.class::isInstance).map(Text.class::cast).findFirst().orElseThrow();
                assertTrue(entry.isVisible() && entry.getSize().x > 0);
                entry.setText(text);
                entry.notifyListeners(SWT.DefaultSelection, new Event());
            });
        }

        /** Chooses from the menu of the cell that the cursor is on. */
        void choose(int item) {
            display.syncExec(() -> {
                Menu menu = all(TableCursor.class).get(0).getMenu();
                menu.notifyListeners(SWT.Show, new Event());
                menu.getItem(item).notifyListeners(SWT.Selection, new Event());
            });
        }

        @Override
        public void close() {
            display.syncExec(dialog::close);
        }
    }

    @Test
    void aListOfBusesIsImportedAsOneEditAndUndone(Display display) throws Exception {
        Path list = Files.writeString(folder.resolve("fleet.csv"), "Unit,Role,Body,Fuel,Year,Engine MY,In service,Odometer (mi)\n"
                + "B01,route,C,diesel,2008,2007,2008,123456\nZ99,spare,C,diesel,2012,2011,2012,150000\n");
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            int before = study.study().getBuses().size();
            double odometer = study.study().getBuses().get(0).getOdometerKm();
            int told;
            try (Open open = Open.on(study, list)) {
                open.await(open::importable);
                assertEquals("Problems (0)", open.tab(0));
                assertEquals(List.of("2", "bus B01"), open.row(1, 0).subList(0, 2));
                told = Integer.parseInt(open.tab(1).replaceAll("\\D", ""));
                List<List<String>> rows = IntStream.range(0, display.syncCall(() -> open.all(Table.class).get(3).getItemCount()))
                        .mapToObj(r -> open.row(1, r)).toList();
                assertTrue(rows.contains(List.of("3", "bus Z99", "", "new")), rows.toString());
                assertTrue(rows.contains(List.of("3", "bus Z99", "150000", "Odometer: 150,000 mi")), rows.toString());
                display.syncExec(() -> open.button().notifyListeners(SWT.Selection, new Event()));
            }
            assertEquals(told, display.syncCall(() -> study.session().history().undoable().orElseThrow().count()),
                    () -> "as many as the tab has told, not: " + study.session().history().undoable().orElseThrow());
            Bus added = study.study().getBuses().get(before);
            assertEquals("Z99", added.getName());
            assertEquals(123_456 * 1.609344, study.study().getBuses().get(0).getOdometerKm(), 1e-6);
            display.syncExec(() -> study.session().undo());
            assertEquals(before, study.study().getBuses().size());
            assertEquals(odometer, study.study().getBuses().get(0).getOdometerKm());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    /** The cell has a colour, a sign and the message; its problem leads to it. */
    @Test
    void cellsWithProblemsAreMarkedAndFound(Display display) throws Exception {
        Path list = Files.writeString(folder.resolve("odd.csv"), "Our buses\nBus,Date,Odometer\nB01,2026-06-30,200000\nB01,soon,\"2,5\"\n");
        try (OpenStudy study = OpenStudy.inFolder(display, folder); Open open = Open.on(study, list)) {
            open.await(() -> open.tab(0).equals("Problems (1)"));
            assertEquals(0, display.syncCall(() -> open.all(TabFolder.class).get(0).getSelectionIndex()));
            open.pick(0);
            assertEquals(1, display.syncCall(() -> open.all(TabFolder.class).get(0).getSelectionIndex()));
            display.syncExec(() -> {
                TableItem row = open.cells().getItem(open.cells().getSelectionIndex());
                assertEquals(List.of("4", "B01", "\u26a0 soon", "2,5"), IntStream.range(0, 4).mapToObj(row::getText).toList());
                assertEquals(Palette.ERROR_WASH.color(), row.getBackground(2));
                Event move = new Event();
                move.x = row.getBounds(2).x + 2;
                move.y = row.getBounds(2).y + 2;
                open.cells().notifyListeners(SWT.MouseMove, move);
                assertEquals("“soon” must be a date such as 2025-09-04 or 9/4/2025.", open.cells().getToolTipText());
            });
        }
    }

    /** The cell is mended in the preview, the trial is done again; the step and the source say so, and the file is as it was. */
    @Test
    void aRejectedCellIsMendedInThePreview(Display display) throws Exception {
        String text = "Unit,Role,Odometer (mi)\nB01,route,150000\nB02,rute,160000\nB03,spare,x\nTotal,,310000\n";
        Path list = Files.writeString(folder.resolve("fleet.csv"), text);
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            try (Open open = Open.on(study, list)) {
                open.await(() -> open.tab(0).equals("Problems (2)"));
                assertEquals("Rows read: 4. Taken in: 1. Left out: 1 (a total: row 5). With problems: 2.", open.rows());
                open.pick(0);
                open.mend("route");
                open.await(() -> open.tab(0).equals("Problems (1)"));
                display.syncExec(() -> {
                    assertEquals("\u270e route", open.cells().getItem(2).getText(2));
                    assertEquals(Palette.AMBER_WASH.color(), open.cells().getItem(2).getBackground(2));
                });
                open.pick(0);
                open.choose(2);
                open.await(open::importable);
                assertEquals("Rows read: 4. Taken in: 2. Left out: 2 (by hand: row 4; a total: row 5). With problems: 0.", open.rows());
                display.syncExec(() -> open.button().notifyListeners(SWT.Selection, new Event()));
            }
            Bus mended = study.study().getBuses().get(1);
            assertEquals(160_000 * 1.609344, mended.getOdometerKm(), 1e-6);
            assertTrue(mended.getSources().stream().anyMatch(s -> s.getCitation().equals(
                    "fleet.csv, row 3 amended by hand: Role “route” in place of “rute”")));
            assertTrue(display.syncCall(() -> study.session().history().undoable().orElseThrow().label()).contains("cells amended by hand: 1"),
                    () -> study.session().history().undoable().orElseThrow().toString());
            assertEquals(text, Files.readString(list));
        }
    }

    /** What was mended by mistake is as in the file again. */
    @Test
    void aMendedCellCanBeAsInTheFileAgain(Display display) throws Exception {
        Path list = Files.writeString(folder.resolve("fleet.csv"), "Unit,Role,Odometer (mi)\nB01,route,150000\nB02,rute,160000\n");
        try (OpenStudy study = OpenStudy.inFolder(display, folder); Open open = Open.on(study, list)) {
            open.await(() -> open.tab(0).equals("Problems (1)"));
            open.pick(0);
            open.mend("route");
            open.await(open::importable);
            open.choose(1);
            open.await(() -> open.tab(0).equals("Problems (1)"));
            display.syncExec(() -> assertEquals("\u26a0 rute", open.cells().getItem(2).getText(2)));
        }
    }

    /** What was said of columns lasts, though the dialog was left without an import. */
    @Test
    void correctedColumnsAreRememberedWithoutAnImport(Display display) throws Exception {
        Path list = Files.writeString(folder.resolve("odd.csv"), "Bus,Date,Odometer,Zustand" + System.nanoTime() + "\nB01,2026-06-30,200000,1\n");
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            for (String holds : List.of("Odometer", "(not used)")) {
                try (Open open = Open.on(study, list)) {
                    open.await(() -> display.syncCall(() -> open.all(Combo.class).get(1).isEnabled()));
                    Table columns = display.syncCall(() -> open.all(Table.class).get(0));
                    assertEquals(holds, display.syncCall(() -> columns.getItem(2).getText(2)));
                    open.useNothingOf(2);
                }
            }
        }
    }

    @Test
    void aTableWithProblemsIsKeptOutAndAnotherKindCanBeChosen(Display display) throws Exception {
        Path list = Files.writeString(folder.resolve("odd.csv"), "Our buses\nBus,Date,Odometer\nB01,2026-06-30,200000\nB77,2026-06-30,1\n");
        try (OpenStudy study = OpenStudy.inFolder(display, folder); Open open = Open.on(study, list)) {
            open.await(() -> open.tab(0).equals("Problems (1)"));
            assertFalse(open.importable());
            assertEquals(List.of("4", "Bus"), open.row(0, 0).subList(0, 2));
            assertTrue(open.row(0, 0).get(2).startsWith("“B77” is no bus of the study"), open.row(0, 0).toString());
            Combo kinds = display.syncCall(() -> open.all(Combo.class).get(1));
            assertEquals("Odometer readings", display.syncCall(kinds::getText));
            display.syncExec(() -> {
                kinds.select(0);
                kinds.notifyListeners(SWT.Selection, new Event());
            });
            assertEquals("List of buses", display.syncCall(kinds::getText));
            open.await(() -> open.row(0, 0).contains("Bus B77: vehicle type is missing; choose one."));
            assertFalse(open.importable());
        }
    }

    /** A workbook with a sheet for each name, of cells as texts. */
    private Path book(Map<String, String> sheets) throws IOException {
        Path file = folder.resolve("routes.xlsx");
        StringBuilder names = new StringBuilder();
        StringBuilder links = new StringBuilder();
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            int number = 0;
            for (Map.Entry<String, String> sheet : sheets.entrySet()) {
                number++;
                names.append("<sheet name='%s' sheetId='%d' r:id='r%d'/>".formatted(sheet.getKey(), number, number));
                links.append("<Relationship Id='r%d' Type='%s/worksheet' Target='worksheets/sheet%d.xml'/>".formatted(number, OFFICE, number));
                entry(out, "xl/worksheets/sheet" + number + ".xml", "<worksheet xmlns='" + MAIN + "'><sheetData>" + sheet.getValue().lines().map(
                        l -> "<row>" + Arrays.stream(l.split(",")).map(c -> "<c t='inlineStr'><is><t>" + c + "</t></is></c>").collect(
                                Collectors.joining()) + "</row>")
                        .collect(Collectors.joining()) + "</sheetData></worksheet>");
            }
            entry(out, "xl/workbook.xml", "<workbook xmlns='" + MAIN + "' xmlns:r='" + OFFICE + "'><sheets>" + names + "</sheets></workbook>");
            entry(out, "xl/_rels/workbook.xml.rels", "<Relationships xmlns='" + PACKAGE + "'>" + links + "</Relationships>");
            entry(out, "_rels/.rels", "<Relationships xmlns='" + PACKAGE + "'><Relationship Id='r1' Type='" + OFFICE
                    + "/officeDocument' Target='xl/workbook.xml'/></Relationships>");
            String type = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
            entry(out, "[Content_Types].xml", "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'>"
                    + "<Default Extension='rels' ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
                    + "<Default Extension='xml' ContentType='" + type + "worksheet+xml'/><Override PartName='/xl/workbook.xml' ContentType='"
                    + type + "sheet.main+xml'/></Types>");
        }
        return file;
    }

    private static void entry(ZipOutputStream out, String name, String text) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        out.write(("<?xml version='1.0' encoding='UTF-8'?>" + text).getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
    }

    @Test
    void sheetsOfTheMorningAndTheAfternoonAreReadInOneGo(Display display) throws Exception {
        Map<String, String> sheets = new LinkedHashMap<>();
        sheets.put("AM routes", "Route,Depart,Return,Miles\nR77,6:35,7:45,20\n");
        sheets.put("PM routes", "Route,Depart,Return,Miles\nR77,14:20,14:10,25\n");
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            try (Open open = Open.on(study, book(sheets))) {
                open.await(() -> open.tab(0).equals("Problems (1)"));
                assertEquals(List.of("PM routes 2", "Return"), open.row(0, 0).subList(0, 2));
                assertFalse(open.importable());
                open.pick(0);
                assertEquals("PM routes", display.syncCall(() -> open.all(Combo.class).get(0).getText()), "it leads to the sheet");
                assertTrue(display.syncCall(() -> open.cells().getItem(1).getText(3)).contains("14:10"));
            }
            sheets.put("PM routes", "Route,Depart,Return,Miles\nR77,14:20,15:10,25\n");
            try (Open open = Open.on(study, book(sheets))) {
                open.await(open::importable);
                display.syncExec(() -> open.button().notifyListeners(SWT.Selection, new Event()));
            }
            assertEquals(List.of("AM", "PM"), study.study().getRoutes().stream().filter(r -> r.getName().equals("R77")).findFirst().orElseThrow()
                    .getRuns().stream().map(r -> r.getName()).toList());
            display.syncExec(() -> study.session().undo());
            assertTrue(study.study().getRoutes().stream().noneMatch(r -> r.getName().equals("R77")), "it was one edit");
        }
    }
}
