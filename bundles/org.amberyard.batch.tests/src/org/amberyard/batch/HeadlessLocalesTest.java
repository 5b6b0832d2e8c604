package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What commands print and write is the same to the byte in every locale, and what they read means the same. Documents and what is
 * frozen of them: {@code LocalesTest} of the documents.
 */
class HeadlessLocalesTest {
    private static final Locale OWN = Locale.getDefault();
    private static final String PLAN = "Electric in stages";
    private static final Path DRIVE = Path.of(System.getProperty("basedir", ".")).resolve("../../examples/drive-schedules/epa_nycc.csv")
            .toAbsolutePath().normalize();
    /** Commands and whether each is to be done or refused. */
    private static final Map<List<String>, Integer> COMMANDS = commands();

    private static Map<String, byte[]> english;

    @TempDir
    private static Path before;
    @TempDir
    private Path folder;

    @BeforeAll
    static void writeInEnglish() throws Exception {
        english = files(before, Locale.US);
    }

    @AfterEach
    void restore() {
        Locale.setDefault(OWN);
    }

    private static Map<List<String>, Integer> commands() {
        Map<List<String>, Integer> commands = new LinkedHashMap<>();
        commands.put(of("evaluate", "--out", "results"), ExitCode.DONE);
        commands.put(of("check"), ExitCode.DONE);
        commands.put(of("what-if", "--out", "what-if"), ExitCode.DONE);
        commands.put(of("sweep", "--out", "rows.csv", "--draws", "10"), ExitCode.DONE);
        commands.put(of("export", "tables"), ExitCode.DONE);
        commands.put(List.of("import", "tables", "again.amberyard"), ExitCode.DONE);
        commands.put(of("bill", PLAN, "2040", "January"), ExitCode.DONE);
        commands.put(of("why", PLAN, "2026", "B05", "Fuel"), ExitCode.DONE);
        commands.put(of("task-sheet", PLAN, "B01", "2026", "--out", "sheet.html"), ExitCode.DONE);
        commands.put(of("table-template", "buses", "--out", "buses.xlsx"), ExitCode.DONE);
        commands.put(of("fit-curve", "Electric C 150"), ExitCode.DONE);
        commands.put(of("fit-curve", "Electric A 118"), ExitCode.WRONG_USE);
        commands.put(of("import-table", "readings.csv", "--write"), ExitCode.DONE);
        commands.put(of("import-table", "damaged.csv"), ExitCode.WRONG_USE);
        commands.put(of("import-meter", "meter.csv"), ExitCode.DONE);
        commands.put(of("import-trace", DRIVE.toString(), "--run", "R02/PM"), ExitCode.DONE);
        commands.put(of("level-plan", PLAN), ExitCode.DONE);
        commands.put(of("roll-year", "--plan", PLAN, "--out", "rolled.amberyard"), ExitCode.DONE);
        commands.put(of("fill-plan", PLAN, "--rule", "per-year", "--number", "2", "--from", "2028", "--to", "2030"), ExitCode.DONE);
        return commands;
    }

    private static List<String> of(String verb, String... operands) {
        return Stream.concat(Stream.of(verb, ExampleConsole.STUDY), Stream.of(operands)).toList();
    }

    /** All that the commands leave in a folder, and what they print under their own words. */
    private static Map<String, byte[]> files(Path folder, Locale locale) throws Exception {
        Locale.setDefault(locale);
        ExampleConsole console = new ExampleConsole(folder);
        makeQuick(folder.resolve(ExampleConsole.STUDY));
        writeTables(folder);
        Map<String, byte[]> files = new TreeMap<>();
        for (Map.Entry<List<String>, Integer> command : COMMANDS.entrySet()) {
            assertEquals(command.getValue(), console.run(command.getKey().toArray(String[]::new)), locale + " " + command + ": " + console.err());
            String complaints = command.getValue() == ExitCode.DONE ? "" : console.err();
            files.put(command.getKey().toString(), (console.out() + complaints).replace(folder.toString(), "").getBytes(StandardCharsets.UTF_8));
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    /** Few draws of one input, and a cap to be kept. */
    private static void makeQuick(Path file) throws Exception {
        Study study = StudyFile.load(file);
        study.getWhatIf().setDraws(20);
        study.getWhatIf().getScenarios().clear();
        study.getWhatIf().getInputs().subList(1, study.getWhatIf().getInputs().size()).clear();
        study.getPlans().get(1).setYearlyCap(1_100_000);
        StudyFile.save(study, file);
    }

    private static void writeTables(Path folder) throws IOException {
        Files.writeString(folder.resolve("readings.csv"), "Bus,Date,Odometer\nB01,2026-06-30,\"200,000.5\"\n");
        Files.writeString(folder.resolve("damaged.csv"), "Bus,Date,Odometer\nB01,soon,-1234567.5\nB02,2026-06-30,0.1\n");
        StringBuilder july = new StringBuilder("interval_start,kw\n");
        for (int hour = 0; hour < 31 * 24; hour++) {
            july.append(String.format(Locale.ROOT, "2025-07-%02d %02d:00,33.25%n", hour / 24 + 1, hour % 24));
        }
        Files.writeString(folder.resolve("meter.csv"), july);
    }

    /** Digits of their own in Egypt, an i without a dot in Turkey. */
    @ParameterizedTest
    @ValueSource(strings = {"ar-EG", "tr-TR"})
    void whatIsPrintedAndWrittenIsTheSame(String tag) throws Exception {
        Map<String, byte[]> there = files(folder, Locale.forLanguageTag(tag));
        assertEquals(english.keySet(), there.keySet());
        english.forEach((name, bytes) -> assertArrayEquals(bytes, there.get(name), name));
    }

    /** Else the test above would say nothing. */
    @Test
    void theLocalesWriteNumbersOtherwise() {
        assertNotEquals("1.5", String.format(Locale.forLanguageTag("ar-EG"), "%.1f", 1.5));
        assertNotEquals("i", "I".toLowerCase(Locale.forLanguageTag("tr-TR")));
        assertTrue(english.size() > COMMANDS.size() + 60, english.keySet().toString());
    }
}
