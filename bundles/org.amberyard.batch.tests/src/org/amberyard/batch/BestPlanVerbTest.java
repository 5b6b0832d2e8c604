package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cheapest steps of the example's rebate plan. */
class BestPlanVerbTest {
    private static final String PLAN = "Rebate buses only";
    private static final Pattern COST = Pattern.compile("Present cost after financing: USD ([\\d,]+), USD [\\d,]+ less than the plan as it is\\.");
    private static final Pattern BOUND = Pattern.compile("costs less than USD ([\\d,]+): the plan found is at most \\d\\.\\d % above");

    @TempDir
    Path folder;

    private ExampleConsole console;

    @BeforeEach
    void openTheExample() throws IOException {
        console = new ExampleConsole(folder);
    }

    private static double amount(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertTrue(matcher.find(), text);
        return Double.parseDouble(matcher.group(1).replace(",", ""));
    }

    @Test
    void whatIsFoundIsCheaperThanThePlanNotBelowTheBoundAndWhatTheStudyThenComesTo() throws Exception {
        Plan before = console.study().getPlans().get(2);
        assertEquals(PLAN, before.getName());
        assertEquals(0, console.run("best-plan", ExampleConsole.STUDY, PLAN, "--roles", "route", "--write"), console.err());
        double cost = amount(COST, console.out());
        assertTrue(amount(BOUND, console.out()) <= cost, console.out());
        assertTrue(console.out().contains("Left as the plan has them: "), console.out());
        Plan after = console.study().getPlans().get(2);
        assertNotEquals(steps(before), steps(after));
        double evaluated = new StudyEvaluator().evaluate(StudyCompiler.compile(console.study())).plans().get(2).presentCostAfterFinancing();
        assertEquals(cost, evaluated, 0.5);
    }

    private static List<String> steps(Plan plan) {
        return plan.getReplacements().stream().map(r -> r.getYear() + " " + r.getBus().getName()).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--by 2030 | Option --by needs --electric: best-plan STUDY PLAN ",
        "--electric 99 | --electric is “99”; it must be a whole number from 1 to 24.",
        "--programmes Nobody | --programmes is “Nobody”; it must be one of Clean Fleet Fund",
        "--from 2030 --to 2029 | --to is “2029”; it must be a whole number from 2030 to 2040.",
        "--buses-per-port 2 | Option --buses-per-port needs --port: best-plan STUDY PLAN "})
    void whatCannotBeMeantIsRefused(String options, String message) {
        String[] words = ("best-plan\t" + ExampleConsole.STUDY + "\t" + PLAN + "\t" + options.replace(' ', '\t')).split("\t");
        assertEquals(2, console.run(words));
        assertTrue(console.err().startsWith(message), console.err());
    }
}
