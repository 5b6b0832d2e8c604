package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers near the ends of what a double holds, in each column of each kind of table: they are read or refused in words. */
class ExtremeNumbersTest {
    private static final List<String> EXTREMES = List.of("1e308", "-1e308", "1e-320", "99999999999999999999", "1e300");

    @TempDir
    private Path folder;

    static Stream<SheetKind> kinds() {
        return SheetKind.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyColumnStandsThem(SheetKind kind) throws Exception {
        Study study = SampleSheets.example();
        List<SheetColumn> columns = kind.columns(study);
        for (SheetColumn attacked : columns) {
            List<String> lines = new ArrayList<>(List.of(line(columns.stream().map(c -> c.header(UnitSystem.US, "USD")).toList())));
            for (int i = 0; i < EXTREMES.size(); i++) {
                int row = i;
                lines.add(line(columns.stream().map(c -> c == attacked ? EXTREMES.get(row) : cell(kind.example(c), row)).toList()));
            }
            Sheet sheet = SampleSheets.only(new SampleSheets(folder).text("extreme.csv", String.join("\n", lines) + "\n"));
            assertDoesNotThrow(() -> SheetImport.of(kind, sheet, study).preview(study), () -> kind.id() + ", " + attacked.id());
        }
    }

    /** Each figure can be held, but not what follows from them. */
    @Test
    void whatFollowsFromThemIsToldToo() throws Exception {
        Study study = SampleSheets.example();
        int base = study.getSettings().getBaseYear();
        SampleSheets samples = new SampleSheets(folder);
        String end = " comes to a number beyond all that can be held; check the figures from which it follows.";
        SheetImport.Preview prices =
                SampleSheets.preview(samples.text("prices.csv", "Fiscal year,Diesel\n" + base + ",1e-300\n" + (base + 1) + ",1e300\n"), study);
        assertEquals(List.of("prices.csv, row 3: Factor of price point " + (base + 1) + " of fuel price diesel" + end),
                prices.problems().stream().map(ImportProblem::toString).toList());
        assertTrue(prices.remarks().contains("Row 3: “Diesel” goes from 1E-300 in " + base + " (row 2) to 1E+300 in " + (base + 1)
                + "; is one a ratio or share, or in another unit?"), prices.remarks().toString());
        SheetImport.Preview buses = SampleSheets.preview(samples.text("buses.csv", "Bus,Annual distance,Upkeep per year\nB01,1e-320,1e300\n"), study);
        assertEquals(List.of("buses.csv, row 2: Measured upkeep of bus B01" + end), buses.problems().stream().map(ImportProblem::toString).toList());
    }

    /** Rows of their own, so that none is refused because it says what another one says. */
    private static String cell(String example, int row) {
        return example.matches("[BRT]\\d+|\\d{4}") ? example.substring(0, example.length() - 1) + (row + 1) : example;
    }

    private static String line(List<String> cells) {
        return String.join(",", cells.stream().map(c -> "\"" + c + "\"").toList());
    }
}
