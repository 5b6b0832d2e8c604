package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells that are mended in the preview, and what has become of every row. */
class SheetAmendmentsTest {
    private static final String LIST = """
            Our buses
            Bus,Role,Model year,Odometer (mi)
            B01,route,2008,90000
            B02,rute,2009,93000
            Bus,Role,Model year,Odometer (mi)
            B03,route,2009,x
            Total,,,183000
            """;

    @TempDir
    Path folder;
    private Study study;
    private Path file;
    private SheetImport made;

    @BeforeEach
    void recognise() throws Exception {
        study = SampleSheets.example();
        file = new SampleSheets(folder).text("fleet.csv", LIST);
        made = SheetImport.recognised(SampleSheets.only(file), study).orElseThrow();
    }

    private Bus bus(String name) {
        return study.getBuses().stream().filter(b -> b.getName().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void everyRowIsTakenInLeftOutOrRejected() {
        RowTally rows = made.preview(study).rows();
        assertEquals("Rows read: 5; taken in: 1; left out: 2 (the headers again: row 5; a total: row 7); with problems: 2.", rows.words());
        assertEquals(rows.read(), rows.taken() + rows.rejected() + rows.leftOut().size());
    }

    @Test
    void aMendedCellIsReadAndTheFileStaysAsItIs() throws Exception {
        SheetAmendments mended = SheetAmendments.NONE.with(made.sheet(), 4, 1, "route").with(made.sheet(), 6, 3, "103500");
        SheetImport.Preview preview = made.amended(mended).preview(study);
        assertEquals(List.of(), preview.problems());
        assertEquals(3, preview.rows().taken());
        assertTrue(preview.remarks().contains("Row 4 was amended by hand: Role “route” in place of “rute”. The file stays as it is."),
                preview.remarks().toString());
        preview.into(study);
        assertEquals(103_500 * 1.609344, bus("B03").getOdometerKm(), 1e-6);
        assertEquals(LIST, Files.readString(file));
    }

    /** An auditor sees which figures were not those of the file. */
    @Test
    void theSourceOfWhatAMendedRowToldSaysSo() throws Exception {
        SheetAmendments mended = SheetAmendments.NONE.with(made.sheet(), 4, 1, "route").with(made.sheet(), 6, 3, "103500");
        made.amended(mended).into(study);
        assertEquals("fleet.csv, row 6 amended by hand: Odometer (mi) “103500” in place of “x”",
                SourceNotes.find(bus("B03"), "odometerKm").orElseThrow().getCitation());
        assertEquals("fleet.csv", SourceNotes.find(bus("B01"), "odometerKm").orElseThrow().getCitation());
    }

    @Test
    void aRowCanBeLeftOutByHandAndIsTold() {
        SheetAmendments mended = SheetAmendments.NONE.leaving(4, true).with(made.sheet(), 6, 3, "");
        SheetImport.Preview preview = made.amended(mended).preview(study);
        assertEquals(List.of(), preview.problems());
        assertEquals("Rows read: 5; taken in: 2; left out: 3 (by hand: row 4; the headers again: row 5; a total: row 7); with problems: 0.",
                preview.rows().words());
        assertTrue(preview.remarks().contains("Row 4 is left out by hand."));
        RowTally again = made.amended(mended.leaving(4, false)).preview(study).rows();
        assertEquals(1, again.rejected(), "taken in again it is rejected as before");
    }

    @Test
    void aRowThatIsEmptiedCellByCellIsLeftOut() {
        SheetAmendments mended = SheetAmendments.NONE;
        for (int row : List.of(4, 6)) {
            for (int place = 0; place < 4; place++) {
                mended = mended.with(made.sheet(), row, place, "");
            }
        }
        RowTally rows = made.amended(mended).preview(study).rows();
        assertEquals("Rows read: 5; taken in: 1; left out: 4 (by hand: row 4, 6; the headers again: row 5; a total: row 7); with problems: 0.",
                rows.words());
    }

    @Test
    void whatTheFileHasIsNoAmendment() {
        SheetAmendments there = SheetAmendments.NONE.with(made.sheet(), 4, 1, "route");
        assertEquals(1, there.count());
        assertTrue(there.with(made.sheet(), 4, 1, "rute").isNone());
        assertEquals("route", there.text(4, 1).orElseThrow());
        assertTrue(there.text(4, 2).isEmpty());
    }

    @Test
    void aCellBeyondTheEndOfItsRowCanBeFilled() {
        Sheet sheet = SheetAmendments.NONE.with(made.sheet(), 1, 2, "a note").on(made.sheet());
        assertEquals(List.of("Our buses", "", "a note"), sheet.rows().get(0).cells().stream().map(SheetCell::text).toList());
    }

    @Test
    void amendmentsOutlastAnotherChoiceOfColumns() throws IOException {
        SheetAmendments mended = SheetAmendments.NONE.with(made.sheet(), 4, 1, "route");
        assertEquals(mended, made.amended(mended).with(made.mapping()).amended());
    }
}
