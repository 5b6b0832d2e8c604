package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.Run;
import org.amberyard.model.study.Study;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Morning and afternoon on sheets of their own, read in one go. */
class SheetsTogetherTest {
    private static final String HEADERS = "Route|Depart|Return|Miles";

    @TempDir
    private Path folder;
    private Study study;

    @BeforeEach
    void prepare() throws Exception {
        study = SampleSheets.example();
    }

    private List<Sheet> sheets(String[] morning, String[] afternoon) throws Exception {
        return SheetReader.read(new SampleSheets(folder).workbook("routes.xlsx", book -> {
            fill(book.createSheet("Notes"), new String[] {"Routes of the autumn"});
            fill(book.createSheet("AM routes"), morning);
            fill(book.createSheet("PM routes"), afternoon);
        }), ReadingProgress.NONE);
    }

    private static void fill(XSSFSheet sheet, String[] lines) {
        for (int row = 0; row < lines.length; row++) {
            var line = sheet.createRow(row);
            String[] cells = lines[row].split("\\|");
            for (int place = 0; place < cells.length; place++) {
                line.createCell(place).setCellValue(cells[place]);
            }
        }
    }

    private SheetsTogether together(String[] morning, String[] afternoon) throws Exception {
        return SheetsTogether.of(sheets(morning, afternoon), study).orElseThrow();
    }

    private Route route(String name) {
        return study.getRoutes().stream().filter(r -> r.getName().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void bothSheetsMakeOneRoute() throws Exception {
        SheetsTogether together = together(new String[] {HEADERS, "R77|6:35|7:45|20", "R01|6:36|7:39|15"},
                new String[] {HEADERS, "R77|14:20|15:25|25"});
        assertEquals("AM routes, PM routes", together.names());
        SheetImport.Preview preview = together.preview(study, ReadingProgress.NONE);
        assertEquals(List.of(), preview.problems());
        assertTrue(preview.changes().stream().map(c -> c.sheet() + ", row " + c.row() + ": " + c.words()).toList().contains(
                "PM routes, row 2: run PM of route R77 is new"), preview.changes().toString());
        preview.into(study);
        assertEquals(List.of("AM", "PM"), route("R77").getRuns().stream().map(Run::getName).toList());
        assertEquals(List.of(), together.preview(study, ReadingProgress.NONE).changes(), "once more changes nothing");
        assertEquals(List.of("Sheet “AM routes”: Row 3: the afternoon run of R01 is not on the sheet and stays as it is."),
                together.preview(study, ReadingProgress.NONE).remarks().stream().filter(r -> r.contains("stays as it is")).toList());
    }

    @Test
    void aProblemOfOneSheetKeepsBothOut() throws Exception {
        Study before = EcoreUtil.copy(study);
        SheetsTogether together = together(new String[] {HEADERS, "R77|6:35|7:45|20", "R78|6:35|6:15|20"},
                new String[] {HEADERS, "R77|6:20|7:25|25"});
        SheetImport.Preview preview = together.preview(study, ReadingProgress.NONE);
        assertEquals(List.of(
                "routes.xlsx, sheet “AM routes”, row 3, column “Return”: R78 returns at 6:15, not after its departure at 6:35; mend one of the two.",
                "routes.xlsx, sheet “PM routes”, row 2, column “Depart”: R77 departs at 6:20 on its afternoon run; is that before or after noon? "
                        + "Write it as 6:35 am, or move it to the column of its run."),
                preview.problems().stream().map(ImportProblem::toString).toList());
        assertThrows(ImportException.class, () -> preview.into(study));
        assertTrue(EcoreUtil.equals(before, study));
    }

    @Test
    void sheetsThatTellOnePartOfTheDayAreNotTakenTogether() throws Exception {
        assertTrue(SheetsTogether.of(sheets(new String[] {HEADERS, "R77|6:35|7:45|20"}, new String[] {"Remarks"}), study).isEmpty());
    }
}
