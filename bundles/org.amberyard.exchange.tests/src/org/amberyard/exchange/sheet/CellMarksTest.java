package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Problems find their cells. */
class CellMarksTest {
    @TempDir
    private Path folder;

    @Test
    void problemsLieInCellsInRowsOrNowhere() throws Exception {
        Study study = SampleSheets.example();
        SheetImport made = SheetImport.recognised(SampleSheets.only(new SampleSheets(folder).text("log.csv",
                "Our log,,\nDate,Bus,Odometer\n2026-06-30,B01,95000\nsoon,B02,\"x\"\n")), study).orElseThrow();
        List<ImportProblem> problems = made.preview(study).problems();
        CellMarks marks = new CellMarks(made, problems, study);
        assertEquals(List.of("“soon” must be a date such as 2025-09-04 or 9/4/2025."), marks.at(4, 0));
        assertEquals(List.of("“x” must be a number in mi or km."), marks.at(4, 2));
        assertEquals(List.of(), marks.at(4, 1));
        assertEquals(List.of(), marks.at(3, 0));
        assertEquals(List.of(OptionalInt.of(0), OptionalInt.of(2)), problems.stream().map(marks::place).toList());
        ImportProblem ofRow = new ImportProblem("log.csv", 3, "", "The row is odd.");
        CellMarks whole = new CellMarks(made, List.of(ofRow), study);
        assertEquals(List.of("The row is odd."), whole.at(3, CellMarks.WHOLE_ROW));
        assertEquals(OptionalInt.empty(), whole.place(ofRow));
    }
}
