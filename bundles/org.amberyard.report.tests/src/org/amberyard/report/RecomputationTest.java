package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.amberyard.exchange.StudyFolderImport;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyUnits;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Holds money and air of the example against a program in another language that recomputes them by itself, from the inputs and
 * the physical quantities of the results: as it stands, and with other terms of money, aid, credits and debts.
 */
class RecomputationTest {
    private static final Path BUNDLE = Path.of(System.getProperty("basedir", ".")).toAbsolutePath();
    private static final Path EXAMPLE = BUNDLE.resolve("../../examples/ostrick-vale").normalize();
    private static final Path PROGRAM = BUNDLE.resolve("../org.amberyard.reference.tests/recompute").normalize();
    /** The tables that the program reads; the others need not be made. */
    private static final Set<String> TABLES = Set.of("headline", "cost_by_year", "cost_by_bus", "cash_by_year", "measures",
            "budget_by_year", "financing", "debts", "debt_payments", "funding_by_line", "funding_by_year", "plan_difference",
            "vehicle_years", "fleet_events", "fleet_by_year", "pack_history", "upkeep_calibration", "shop_calendar",
            "emissions_by_year", "emissions_by_bus", "emissions_lifetime", "cost_effectiveness", "air_harm_by_year",
            "yard_by_month", "bill_by_year", "bill_by_month", "bill_lines", "billed_quantities");
    private static final Pattern SUMMARY = Pattern.compile("(\\d+) figures compared, (\\d+) further apart");
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    @TempDir
    private static Path folder;
    private static Path example;

    /**
     * What the program has said.
     *
     * @param code exit code
     * @param text all that it printed
     */
    private record Verdict(int code, String text) {
        int compared() {
            return number(1);
        }

        int missed() {
            return number(2);
        }

        private int number(int group) {
            Matcher summary = SUMMARY.matcher(text);
            assertTrue(summary.find(), text);
            return Integer.parseInt(summary.group(group));
        }
    }

    @BeforeAll
    static void evaluateTheExample() throws Exception {
        assumeTrue(hasPython(), "python3 is not installed, so nothing is recomputed");
        example = evaluated(StudyFile.load(EXAMPLE.resolve("ostrick-vale.amberyard")), "example");
    }

    private static boolean hasPython() throws InterruptedException {
        try {
            return new ProcessBuilder("python3", "-c", "import sys; sys.exit(sys.version_info < (3, 8))")
                    .redirectErrorStream(true).start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static Path evaluated(Study study, String name) throws IOException {
        Path results = Files.createDirectories(folder.resolve(name));
        try (Writer out = Files.newBufferedWriter(results.resolve("results.json"))) {
            ResultsJson.write(EVALUATOR.evaluate(StudyCompiler.compile(study)), StudyUnits.of(study), TABLES::contains, out);
        }
        return results;
    }

    private static Verdict recomputed(Path inputs, Path results) throws IOException, InterruptedException {
        Process python = new ProcessBuilder(List.of("python3", "-B", PROGRAM.resolve("recompute.py").toString(),
                inputs.toString(), results.toString())).redirectErrorStream(true).start();
        String text = new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Verdict(python.waitFor(), text);
    }

    @Test
    void everyFigureOfTheExampleIsFoundAgain() throws Exception {
        Verdict verdict = recomputed(EXAMPLE.resolve("csv"), example);
        assertEquals(0, verdict.code(), verdict.text());
        assertTrue(verdict.compared() > 20_000, verdict.text());
    }

    /**
     * Nominal figures, mid-year, stacked and limited awards, late payments, awards withheld from a bus that leaves before they
     * are paid, credits against a tax that programmes share, a used bus, a type whose value its distance decides, low-carbon
     * credits, aid, health costs, and every kind of debt.
     */
    @Test
    void everyFigureIsFoundAgainUnderOtherTermsOfMoney() throws Exception {
        Path inputs = Files.createDirectories(folder.resolve("variant-inputs"));
        copy(EXAMPLE.resolve("csv"), inputs);
        copy(PROGRAM.resolve("variant"), inputs);
        Verdict verdict = recomputed(inputs, evaluated(StudyFolderImport.read(inputs), "variant"));
        assertEquals(0, verdict.code(), verdict.text());
        assertTrue(verdict.compared() > 40_000, verdict.text());
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.write(to.resolve(file.getFileName()), Files.readAllBytes(file));
            }
        }
    }

    /** A cost that is off by two billionths is named. */
    @Test
    void aFigureThatIsOffIsFound() throws Exception {
        String results = Files.readString(example.resolve("results.json"));
        Matcher cost = Pattern.compile("\\[\"Like for like\",2030,\"Energy\",\"Fuel\",([0-9.]+)\\]").matcher(results);
        assertTrue(cost.find());
        double wrong = Double.parseDouble(cost.group(1)) * (1 + 2e-9);
        Path spoilt = Files.createDirectories(folder.resolve("spoilt"));
        Files.writeString(spoilt.resolve("results.json"), results.substring(0, cost.start(1)) + wrong + results.substring(cost.end(1)));
        Verdict verdict = recomputed(EXAMPLE.resolve("csv"), spoilt);
        assertEquals(1, verdict.code(), verdict.text());
        assertEquals(1, verdict.missed(), verdict.text());
        assertTrue(verdict.text().contains("MISS cost_by_year ('Like for like', 2030, 'Fuel')"), verdict.text());
    }
}
