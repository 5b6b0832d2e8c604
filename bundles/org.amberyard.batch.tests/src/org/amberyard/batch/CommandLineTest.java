package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommandLineTest {
    private static final String STUDY = "district.amberyard";
    private static final String VERBS =
            "evaluate, evaluate-all, check, import, export, import-trace, import-meter, import-table, table-template, import-weather, "
                    + "import-gtfs, fit-curve, task-sheet, bill, why, fill-plan, level-plan, best-plan, roll-year, what-if, sweep, documents, freeze, "
                    + "compare-frozen. See --help.";
    private static final String PLAN_OF_SHEET = "Like for like";
    private static final String ELECTRIC_PLAN = "Electric in stages";

    /** Evaluates the example once for all commands that ask for its results. */
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheExample() throws IOException {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        Files.copy(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard"), folder.resolve(STUDY));
    }

    private int run(String... args) {
        return run(new CommandLine(EVALUATOR), args);
    }

    private int run(CommandLine commandLine, String... args) {
        return commandLine.run(List.of(args), folder, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @Test
    void aMetersDataBecomeTheBuildingsLoad() throws Exception {
        StringBuilder july = new StringBuilder("interval_start,kw\n");
        for (int hour = 0; hour < 31 * 24; hour++) {
            july.append(String.format("2025-07-%02d %02d:00,33%n", hour / 24 + 1, hour % 24));
        }
        Files.writeString(folder.resolve("meter.csv"), july);
        assertEquals(0, run("import-meter", STUDY, "meter.csv"), err());
        assertTrue(out().contains("744 readings every 60 min in kW, from 1 Jul 2025 to 31 Jul 2025"), out());
        assertTrue(out().contains("July sums to 24,552 kWh but 22,129 kWh were billed, a ratio of 1.11"), out());
        var days = StudyFile.load(folder.resolve(STUDY)).getDepot().getBuildingLoadDays();
        assertEquals(24, days.size());
        assertEquals("33 ".repeat(24).strip(), days.get(22).getMeanKw());

        Files.writeString(folder.resolve("meter.csv"), "start,kWh\n2025-07-01 00:00,much\n");
        assertEquals(2, run("import-meter", STUDY, "meter.csv"));
        assertTrue(err().contains("No load was imported from "), err());
        assertTrue(err().contains("meter.csv, row 2, column “kWh”: “much” must be a number"), err());
        assertEquals(2, run("import-meter", STUDY, "nowhere.csv"));
        assertTrue(err().contains("where there is no file; give a CSV or XML file."), err());
    }

    @Test
    void aTaskSheetIsWrittenWithItsCautions() throws Exception {
        assertEquals(0, run("task-sheet", STUDY, PLAN_OF_SHEET, "B01", "2026", "--out", "sheet.html"), err());
        String sheet = Files.readString(folder.resolve("sheet.html"));
        assertTrue(sheet.contains("<title>Bus B01, 2026: tasks of the shop</title>"));
        assertTrue(sheet.contains("Never open the battery pack."));
    }

    @Test
    void aTaskSheetNamesThePlansTheBusesAndTheYears() {
        assertEquals(2, run("task-sheet", STUDY, "No plan", "B01", "2026", "--out", "sheet.html"));
        assertTrue(err().contains("PLAN is “No plan”; it must be one of " + PLAN_OF_SHEET), err());
        assertEquals(2, run("task-sheet", STUDY, PLAN_OF_SHEET, "B99", "2026", "--out", "sheet.html"));
        assertTrue(err().contains("BUS is “B99” and YEAR is “2026”, but no such bus is in the fleet then. Years go from 2026 "
                + "to 2040; buses of the plan: B01, "), err());
    }

    @Test
    void aPlanIsFilledByARule() throws Exception {
        assertEquals(0, run("fill-plan", STUDY, PLAN_OF_SHEET, "--rule", "per-year", "--number", "2", "--from", "2028", "--to",
                "2030", "--port", "AC 19.2 kW", "--buses-per-port", "1.5"), err());
        assertTrue(out().startsWith("6 buses are replaced: 2 in 2028, 2 in 2029, 2 in 2030."), out());
        Plan plan = StudyFile.load(folder.resolve(STUDY)).getPlans().get(0);
        assertEquals(6, plan.getReplacements().stream().filter(r -> r.getNewType() instanceof ElectricType).count());
        assertEquals(4, plan.getPortPurchases().stream().mapToInt(PortPurchase::getCount).sum());
    }

    @Test
    void aPlanIsKeptWithinItsCap() throws Exception {
        assertEquals(2, run("level-plan", STUDY, ELECTRIC_PLAN));
        assertTrue(err().startsWith("Plan “Electric in stages” has no budget cap per year; enter one above 0 with the plan."), err());
        Study capped = StudyFile.load(folder.resolve(STUDY));
        capped.getPlans().get(1).setYearlyCap(1_100_000);
        StudyFile.save(capped, folder.resolve(STUDY));
        assertEquals(0, run("level-plan", STUDY, ELECTRIC_PLAN, "--write"), err());
        assertTrue(out().matches("(?s)As it is, the plan breaks its cap of USD 1,100,000 a year in 2 of 15 years, by: 2027 USD [\\d,]+; "
                + "2032 USD [\\d,]+\\.\n.*"), out());
        assertTrue(out().contains("\n5 steps move, but no moves were found that keep the cap of USD 1,100,000 a year in every year.\nBus B"), out());
        assertTrue(Pattern.compile("^Bus B\\d+ \\(.+\\): from 2032 to 20\\d\\d\\.$", Pattern.MULTILINE).matcher(out()).find(), out());
        assertTrue(out().contains("2028 stays above the cap by USD "), "its buses are marked for that year: " + out());
        out.reset();
        assertEquals(0, run("level-plan", STUDY, ELECTRIC_PLAN), err());
        assertTrue(out().contains("\nNo move of a step was found that helps to keep the cap of USD 1,100,000 a year.\n2027 stays"), out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "No plan | --rule all-by --from 2027 --to 2030 | PLAN is “No plan”; it must be one of Like for like, ",
        "Like for like | --rule weekly --from 2027 --to 2030 | --rule is “weekly”; it must be at-age, per-year or all-by.",
        "Like for like | --rule at-age --from 2027 --to 2030 | Option --number is missing: fill-plan STUDY PLAN --rule ",
        "Like for like | --rule at-age --number some --from 2027 --to 2030 | --number is “some”; it must be a whole number",
        "Like for like | --rule all-by --from 2027 --to 2026 | --to is “2026”; it must be a whole number from 2027 to 2040.",
        "Like for like | --rule all-by --from 2027 --to 2030 --roles route,cook | --roles is “route,cook”; it must be made of ",
        "Like for like | --rule all-by --from 2027 --to 2030 --port nothing | --port is “nothing”; it must be one of AC 19.2 kW",
        "Like for like | --rule all-by --from 2027 --to 2030 --buses-per-port 2 | Option --buses-per-port needs --port: ",
        "Like for like | --rule all-by --from 2027 --to 2030 --engine --port DC | Options --port and --engine exclude"})
    void aRuleThatMakesNoSenseIsRefused(String plan, String options, String message) throws Exception {
        List<String> args = new ArrayList<>(List.of("fill-plan", STUDY, plan));
        args.addAll(List.of(options.split(" ")));
        assertEquals(2, run(args.toArray(String[]::new)));
        assertTrue(err().startsWith(message), err());
    }

    @Test
    void aBillIsPrintedWithWhatSetTheDemand() {
        assertEquals(0, run("bill", STUDY, ELECTRIC_PLAN, "2040", "january"), err());
        assertTrue(out().contains("Electric bill for January, tariff KE-EVD"), out());
        double sum = 0;
        double total = 0;
        for (String line : out().lines().toList()) {
            Matcher amount = Pattern.compile("^(\\S.*?) {2,}.* ([\\d,]+\\.\\d\\d)$").matcher(line);
            if (amount.matches()) {
                double money = Double.parseDouble(amount.group(2).replace(",", ""));
                total = amount.group(1).equals("Total") ? money : total;
                sum += amount.group(1).equals("Total") ? 0 : money;
            }
        }
        assertTrue(total > 0, out());
        assertEquals(total, sum, 1e-6);
        assertTrue(out().contains("drawing then: B"), out());
        String least = out();
        out.reset();
        assertEquals(0, run("bill", STUDY, ELECTRIC_PLAN, "2040", "1", "--policy", "at o"), err());
        assertTrue(out().contains("Charging at once, on a meter of its own"), out());
        assertNotEquals(least, out());
        out.reset();
        assertEquals(0, run("bill", STUDY, ELECTRIC_PLAN, "2040", "1", "--policy", "least cost day by day"), err());
        assertTrue(out().contains("Charging least cost day by day, on a meter of its own"), out());
    }

    @Test
    void aCostIsTracedToItsInputsAndTheirSources() {
        assertEquals(0, run("why", STUDY, ELECTRIC_PLAN, "2026", "B05", "fuel"), err());
        assertTrue(out().startsWith("fuel of B05, cost = "), out());
        assertTrue(out().contains("price of fuel = 3.6570 USD/gal   {measured: Mean of the district's FY2026 fuel invoices"), out());
        out.reset();
        assertEquals(0, run("why", STUDY, ELECTRIC_PLAN, "2034", "B05-2", "Electric energy"), err());
        assertEquals(2, run("why", STUDY, ELECTRIC_PLAN, "2026", "B99", "Fuel"));
        assertTrue(err().contains("BUS is “B99”; it must be a bus of that year or one of the places B01, "), err());
        assertEquals(2, run("why", STUDY, ELECTRIC_PLAN, "2026", "B01", "Petrol"));
        assertTrue(err().contains("CATEGORY is “Petrol”; it must be one of Bus purchase, "), err());
        assertTrue(err().contains(", or one of the pollutants CO2e, CO2, "), err());
        assertEquals(2, run("why", STUDY, ELECTRIC_PLAN, "2050", "B01", "Fuel"));
        assertTrue(err().contains("YEAR is “2050”; it must be from 2026 to 2040."), err());
    }

    @Test
    void whatAReplacedBusEmittedMoreIsTracedToFactorsAndDistance() {
        assertEquals(0, run("why", STUDY, ELECTRIC_PLAN, "2028", "B16", "co"), err());
        assertTrue(out().contains("before = 69.0047 lb"), "9,900 mi at 3 g/mi and 80 h at 20 g/h are 31.3 kg: " + out());
        assertTrue(out().contains("placeholder: stands in until a figure of the programme"), out());
        assertEquals(2, run("why", STUDY, ELECTRIC_PLAN, "2026", "B16", "NOx"));
        assertTrue(err().contains("the plan does so in: 2027 B01, 2027 B02, "), err());
        assertEquals(2, run("why", STUDY, "Like for like", "2026", "B16", "NOx"));
        assertTrue(err().contains("“Like for like” is the baseline, with which the other plans are compared; name one of them."), err());
        assertTrue(new WhyVerb().summary().contains("over the remaining life of an engine bus"), "as the total that is printed");
    }

    @Test
    void aCappedBillNeedsACap() throws Exception {
        Study uncapped = StudyFile.load(folder.resolve(STUDY));
        uncapped.getDepot().setChargingCapKw(0);
        StudyFile.save(uncapped, folder.resolve(STUDY));
        assertEquals(2, run("bill", STUDY, ELECTRIC_PLAN, "2040", "1", "--policy", "capped"));
        assertTrue(err().contains("--policy is “capped”, but the study has no cap on charging; enter one for its depot."), err());
    }

    @Test
    void aBillNamesWhatIsAllowed() {
        assertEquals(2, run("bill", STUDY, ELECTRIC_PLAN, "2040", "13"));
        assertTrue(err().contains("MONTH is “13”; it must be a month from January to December, or from 1 to 12."), err());
        assertEquals(2, run("bill", STUDY, ELECTRIC_PLAN, "2040", "1", "--policy", "slowly"));
        assertTrue(err().contains("--policy is “slowly”; it must be one of “at once”, “at a set time”, “spread to departure”, “capped”, "
                + "“least cost”, “least cost day by day”, or how just one of them begins."), err());
        assertEquals(2, run("bill", STUDY, ELECTRIC_PLAN, "2050", "1"));
        assertTrue(err().contains("YEAR is “2050”; it must be from 2026 to 2040."), err());
        assertEquals(2, run("bill", STUDY, PLAN_OF_SHEET, "2026", "1"));
        assertTrue(err().contains("has neither electric buses nor ports; choose a year or a plan with them."), err());
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void checkOfASoundStudyReturnsZero() {
        assertEquals(0, run("check", STUDY), out());
        assertEquals("", err());
    }

    @Test
    void aStudyWithErrorsIsListedAndNotEvaluated() throws StudyFileException {
        Study study = StudyFile.load(folder.resolve(STUDY));
        study.setBaseline(null);
        StudyFile.save(study, folder.resolve("broken.amberyard"));
        assertEquals(2, run("check", "broken.amberyard"));
        assertTrue(out().contains("1 error:"), out());
        assertEquals(2, run("evaluate", "broken.amberyard", "--out", "results"));
        assertTrue(err().contains("cannot be evaluated."), err());
        assertTrue(err().contains("1 error:"), err());
        assertFalse(Files.exists(folder.resolve("results")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "''|A verb is missing; allowed: " + VERBS,
        "conquer|“conquer” is no verb; allowed: " + VERBS,
        "check|“check” takes one study but got none: check STUDY.",
        "check a b|“check” takes one study but got 2 (a, b): check STUDY.",
        "check a --out b|“check” has no option --out; allowed: --debug.",
        "evaluate a --fast|“evaluate” has no option --fast; allowed: --debug, --out.",
        "evaluate a|Option --out is missing: evaluate STUDY --out DIR.",
        "evaluate a --out|Option --out needs a value: evaluate STUDY --out DIR.",
        "evaluate a --out --debug|Option --out needs a value but is followed by --debug: evaluate STUDY --out DIR.",
        "evaluate a --out b --out c|Option --out is given twice, with b and c; give it once."})
    void wrongUseNamesArgumentValueAndWhatIsAllowed(String line, String message) {
        assertEquals(2, run(line.isEmpty() ? new String[0] : line.split(" ")));
        assertEquals(message + System.lineSeparator(), err());
        assertEquals("", out());
    }

    @Test
    void aMissingStudyIsNamedWithItsFullPath() {
        assertEquals(2, run("check", "nowhere.amberyard"));
        assertEquals("STUDY is " + folder.resolve("nowhere.amberyard")
                + ", where there is no file; give a study file (*.amberyard)." + System.lineSeparator(), err());
    }

    @Test
    void aFileThatIsNoStudyIsRefused() throws IOException {
        Files.writeString(folder.resolve("letter.amberyard"), "Dear board");
        assertEquals(2, run("check", "letter.amberyard"));
        assertTrue(err().startsWith("STUDY is " + folder.resolve("letter.amberyard") + ". "), err());
    }

    @Test
    void anOutputFolderThatIsAFileIsRefusedBeforeTheWork() throws IOException {
        Files.writeString(folder.resolve("taken"), "");
        assertEquals(2, run("evaluate", STUDY, "--out", "taken"));
        assertTrue(err().contains("--out is " + folder.resolve("taken") + ", which is a file"), err());
        assertEquals("", out());
    }

    @Test
    void helpNamesEveryVerbAndExitCode() {
        assertEquals(0, run("evaluate", "--help"));
        assertTrue(out().contains("amberyard evaluate STUDY --out DIR") && out().contains("amberyard check STUDY"), out());
        assertTrue(out().contains("Returns 0 when done"), out());
        assertTrue(out().contains("4 when something differs from what was frozen."), out());
        assertEquals("", err());
    }

    private record FailingVerb() implements Verb {
        @Override
        public String name() {
            return "fail";
        }

        @Override
        public String usage() {
            return "fail";
        }

        @Override
        public String summary() {
            return "fails";
        }

        @Override
        public Set<String> options() {
            return Set.of();
        }

        @Override
        public int run(Arguments arguments, Console console) {
            throw new IllegalStateException("Gears jammed");
        }
    }

    @Test
    void aFaultIsShortOnTheConsoleWithItsDetailsInAFile() throws IOException {
        assertEquals(1, run(new CommandLine(List.of(new FailingVerb()), EVALUATOR), "fail"));
        List<String> lines = err().lines().toList();
        assertEquals(2, lines.size(), err());
        assertTrue(lines.get(0).endsWith("Gears jammed"));
        Path log = Path.of(lines.get(1).replaceAll("Details are in (.*); --debug.*", "$1"));
        assertTrue(Files.readString(log).contains("at org.amberyard.batch"));
        Files.delete(log);
    }

    @Test
    void debugPrintsTheDetails() {
        assertEquals(1, run(new CommandLine(List.of(new FailingVerb()), EVALUATOR), "fail", "--debug"));
        assertTrue(err().contains("at org.amberyard.batch"), err());
    }

    @Test
    void fitCurvePrintsCurveAndResidualsAndLeavesTheFileAlone() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve(STUDY));
        assertEquals(0, run("fit-curve", STUDY, "Electric C 150"), err());
        assertTrue(out().contains("Base use: 1.") && out().contains("Heating limit: 20 kW"), out());
        assertTrue(out().contains("By the curve (kWh)") && out().lines().anyMatch(l -> l.startsWith("no. 15 ")), out());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve(STUDY)));
    }

    @Test
    void fitCurveWritesTheCurveWhenAsked() throws StudyFileException {
        assertEquals(0, run("fit-curve", STUDY, "Electric C 150", "--rise", "0.2 %/°F", "--write"), err());
        ElectricType type = (ElectricType) StudyFile.load(folder.resolve(STUDY)).getVehicleTypes().stream()
                .filter(t -> t.getName().equals("Electric C 150")).findFirst().orElseThrow();
        assertEquals(0.0036, type.getCurveRisePerK(), 1e-12);
        assertTrue(type.getCurveBaseKwhPerKm() > 0.7);
        assertTrue(out().contains("The curve is in " + folder.resolve(STUDY)), out());
    }

    @Test
    void fitCurveSaysWhatKeptItFromFitting() {
        assertEquals(2, run("fit-curve", STUDY, "Electric A 118"));
        assertTrue(out().contains("Electric A 118 has 0 usable consumption logs but a curve needs 5."), out());
        assertEquals(2, run("fit-curve", STUDY, "Diesel C 2010-2016", "--write"));
        assertTrue(err().contains("TYPE is “Diesel C 2010-2016”; it must be one of the electric types: Electric C 150, "), err());
        assertEquals(2, run("fit-curve", STUDY));
        assertTrue(err().contains("“fit-curve” takes a study and a name but got 1 (" + STUDY + ")"), err());
        assertEquals(2, run("fit-curve", STUDY, "Electric C 150", "--rise", "some"));
        assertTrue(err().contains("Curve: rise in the cold is “some”; it must be a number"), err());
        assertEquals(2, run("fit-curve", STUDY, "Electric C 150", "--wrote"));
        assertTrue(err().contains("has no option --wrote; allowed: --debug, --rise, --write."), err());
    }
}
