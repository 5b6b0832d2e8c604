package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.plan.EngineVersion;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.testsupport.SampleDistrict;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultFolderTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());

    @TempDir
    Path folder;

    private List<Path> files(Path of) throws IOException {
        try (Stream<Path> list = Files.list(of)) {
            return list.sorted().toList();
        }
    }

    @Test
    void writesEverythingTwiceTheSameAndLeavesOtherFilesAlone() throws IOException {
        ResultTable inputs = InputRegister.of(StudyDefaults.create());
        Path first = folder.resolve("new/first");
        Path second = Files.createDirectories(folder.resolve("second"));
        Files.writeString(second.resolve("notes.txt"), "mine");
        Files.writeString(second.resolve("results.json"), "old");
        List<Path> written = ResultFolder.write(result, inputs, UnitSystem.US, first);
        ResultFolder.write(result, inputs, UnitSystem.US, second);
        int tables = ResultTables.of(result, UnitSystem.US).size();
        assertEquals(1 + tables + 1 + 22 * 3, written.size(), "json, tables, inputs, and each chart as SVG, PNG and data");
        assertEquals(written.stream().sorted().toList(), files(first));
        for (Path file : written) {
            assertTrue(Files.size(file) > 0);
            assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(second.resolve(file.getFileName())));
        }
        assertEquals("mine", Files.readString(second.resolve("notes.txt")));
    }

    @Test
    void chartsOfOneRouteAreThoseOfTheFirstElectricRoute() throws IOException {
        ResultFolder.write(result, InputRegister.of(StudyDefaults.create()), UnitSystem.US, folder);
        assertTrue(Files.readString(folder.resolve("energy_by_cause.txt")).startsWith("Route R01 with E150, "));
        assertTrue(Files.readString(folder.resolve("consumption_by_temperature.txt")).startsWith("What route R01 takes "));
        assertTrue(Files.readString(folder.resolve("charge_through_day.txt"))
                .startsWith("Bus B01, E150, coldest day of January 2035: lowest "));
        assertTrue(Files.readString(folder.resolve("range_by_month.txt")).contains("Worst is R03 in "));
    }

    @Test
    void chartsThatHaveNothingToShowAreLeftOut() throws IOException {
        ResultTable inputs = InputRegister.of(StudyDefaults.create());
        Path bare = folder.resolve("bare");
        ResultFolder.write(SampleDistrict.evaluated(SampleDistrict.withoutRoutes()), inputs, UnitSystem.US, bare);
        assertTrue(Files.exists(bare.resolve("range_by_month.svg")));
        assertFalse(Files.exists(bare.resolve("energy_by_cause.svg")));
        Path engines = folder.resolve("engines");
        ResultFolder.write(SampleDistrict.evaluated(SampleDistrict.baselineOnly()), inputs, UnitSystem.US, engines);
        assertTrue(Files.exists(engines.resolve("energy_by_cause.svg")));
        assertFalse(Files.exists(engines.resolve("charge_through_day.svg")));
    }

    @Test
    void aFailureLeavesThePreviousResultsAndNoTemporaryFiles() throws IOException {
        Files.writeString(folder.resolve("results.json"), "old");
        assertThrows(IOException.class, () -> {
            try (StagedFiles staged = new StagedFiles(folder)) {
                Files.writeString(staged.add("results.json"), "half");
                throw new IOException("The disk is full");
            }
        });
        assertEquals(List.of(folder.resolve("results.json")), files(folder));
        assertEquals("old", Files.readString(folder.resolve("results.json")));
    }

    @Test
    void csvReadsBackWithAnotherReader() throws IOException {
        for (ResultTable table : ResultTables.of(result, UnitSystem.US)) {
            List<List<String>> lines = read(CsvTables.document(table));
            assertEquals(table.columns().stream().map(ResultColumn::header).toList(), lines.get(0));
            assertEquals(table.rows().size() + 1, lines.size());
            for (int row = 0; row < table.rows().size(); row++) {
                for (int column = 0; column < table.columns().size(); column++) {
                    checkCell(table.rows().get(row).get(column), lines.get(row + 1).get(column),
                            table.columns().get(column).type());
                }
            }
        }
    }

    private static List<List<String>> read(String text) throws IOException {
        try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
            return parser.getRecords().stream().map(CSVRecord::toList).toList();
        }
    }

    private static void checkCell(Object expected, String read, ResultColumn.Type type) {
        if (expected instanceof Number number) {
            double allowed = type == ResultColumn.Type.MONEY ? 0.0050001 : Math.abs(number.doubleValue()) * 1e-8;
            assertEquals(number.doubleValue(), Double.parseDouble(read), allowed);
        } else {
            assertEquals(expected == null ? "" : expected, read);
        }
    }

    @Test
    void aNameThatLooksLikeAFormulaIsDisarmed() {
        ResultColumn name = new ResultColumn("name", "Name", "", ResultColumn.Type.TEXT, "A name.");
        ResultColumn money = new ResultColumn("cost", "Cost", "USD", ResultColumn.Type.MONEY, "A cost.");
        ResultTable table = new ResultTable("t", "T", List.of(name, money), List.of(List.of("=1+1", -2.345678)));
        assertEquals("Name,Cost (USD)\r\n'=1+1,-2.35\r\n", CsvTables.document(table));
    }

    @Test
    void theEngineVersionIsThatOfTheBundle() throws IOException {
        Path manifest = Path.of(System.getProperty("basedir", ".")).resolve("../org.amberyard.report/META-INF/MANIFEST.MF");
        assertTrue(Files.readString(manifest, StandardCharsets.UTF_8)
                .contains("Bundle-Version: " + EngineVersion.VALUE + ".qualifier"));
    }
}
