package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The page of what came of years that are over. */
@ExtendWith(WorkbenchExtension.class)
class ActualsPageTest {
    /** Years that somebody enters at once must be in sight together. */
    private static final int YEARS = 3;

    @TempDir
    private Path folder;

    @Test
    void foreseenStandsBesideActualAndSeveralYearsAreInSight(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.show(PageKind.ACTUALS);
            display.syncExec(() -> {
                Grid grid = Tools.table("Years that are over: what meters, bills and books say").grid();
                List<String> headers = IntStream.range(0, grid.model().columns()).mapToObj(c -> grid.model().header(c).replaceAll(
                        "\\s*\\(.*", "")).toList();
                assertEquals(List.of("Year", "Electricity for charging", "Electricity, foreseen", "Electric bills for charging",
                        "Electric bills, foreseen", "Fuel", "Fuel, foreseen", "Fuel cost", "Fuel cost, foreseen", "Upkeep cost",
                        "Upkeep cost, foreseen", "Foreseen by plan"), headers.subList(0, 12));
                Rectangle row = grid.cellBounds(0, 0);
                assertTrue(grid.getClientArea().height >= row.y + YEARS * row.height, grid.getClientArea() + " for rows like " + row);
            });
        }
    }
}
