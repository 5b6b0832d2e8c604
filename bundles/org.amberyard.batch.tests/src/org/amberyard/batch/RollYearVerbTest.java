package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.NominalCosts;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.YearActuals;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example, of which 2026 and 2027 are over, rolled to 2028. */
class RollYearVerbTest {
    private static final String NEW = "next.amberyard";
    private static final int ELECTRIC = 1;

    @TempDir
    Path folder;

    private ExampleConsole console;

    @BeforeEach
    void openTheExample() throws IOException {
        console = new ExampleConsole(folder);
    }

    private int roll(String... more) {
        String[] words = new String[8 + more.length];
        List<String> first = List.of("roll-year", ExampleConsole.STUDY, "--out", NEW, "--to", "2028", "--plan", "Electric in stages");
        for (int i = 0; i < words.length; i++) {
            words[i] = i < first.size() ? first.get(i) : more[i - first.size()];
        }
        return console.run(words);
    }

    private StudyResult evaluated(Study study) {
        return new StudyEvaluator().evaluate(StudyCompiler.compile(study));
    }

    /** Actuals of 2027 that are off by known shares. */
    private PlanResult withActuals() throws Exception {
        Study study = console.study();
        PlanResult plan = evaluated(study).plans().get(ELECTRIC);
        NominalCosts costs = new NominalCosts(plan.ledger());
        YearActuals actuals = StudyFactory.eINSTANCE.createYearActuals();
        actuals.setYear(2027);
        actuals.setElectricityKwh(1.2 * plan.yards().get(1).yardKwh());
        actuals.setFuelL(0.9 * fuelL(plan, 1));
        actuals.setFuelCost(0.9 * 1.25 * (costs.amount(1, CostCategory.FUEL) + costs.amount(1, CostCategory.HEATER_FUEL)));
        actuals.setUpkeepCost(1.1 * costs.amount(1, CostCategory.UPKEEP));
        study.getActuals().add(actuals);
        StudyFile.save(study, folder.resolve(ExampleConsole.STUDY));
        return plan;
    }

    private static double fuelL(PlanResult plan, int year) {
        return plan.fleet().inYear(year).stream().map(VehicleYear::use).mapToDouble(u -> u.fuelL() + u.heaterFuelL()).sum();
    }

    @Test
    void theListTellsWhatChangesAndTheOldStudyStays() throws Exception {
        byte[] before = Files.readAllBytes(folder.resolve(ExampleConsole.STUDY));
        assertEquals(0, roll(), console.err());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve(ExampleConsole.STUDY)));
        for (String said : List.of("Settings, Base year: 2026 → 2028 (the years before it are over)",
                "Bus B01-2, Vehicle type: Diesel C 2005-2009 → Electric C 150 (by the plan that was carried out)",
                "Port purchase 2027 5 × AC 19.2 kW of plan Electric in stages stands: it is not paid for again",
                "Programme Clean Fleet Fund, Most buses: 10 → 6 (the others are taken)",
                "Replacement 2027 B03 of plan Like for like goes: its place has changed by the plan that was carried out")) {
            assertTrue(console.out().contains(said), said + "\n" + console.out());
        }
        assertFalse(console.out().contains("aken: "), "there are no actuals");
        assertEquals(0, console.run("evaluate", NEW, "--out", "results"), console.err());
    }

    @Test
    void actualsTakeThePlaceOfAssumptionsThatAreNamed() throws Exception {
        PlanResult before = withActuals();
        assertEquals(0, roll("--take", "fuel-price,fuel-use,upkeep"), console.err());
        assertTrue(console.out().contains("Not taken: Electricity for charging of 2027: assumed "), console.out());
        assertTrue(console.out().contains("\nTaken: Upkeep of 2027: assumed "), console.out());
        PlanResult after = evaluated(StudyFile.load(folder.resolve(NEW))).plans().get(ELECTRIC);
        NominalCosts then = new NominalCosts(before.ledger());
        NominalCosts now = new NominalCosts(after.ledger());
        double bought = before.fleet().inYear(2).stream().filter(v -> v.vehicle().inServiceYear() == 2).mapToDouble(v -> v.use().fuelL()).sum();
        double engines = before.fleet().inYear(2).stream().mapToDouble(v -> v.use().fuelL()).sum() - bought;
        double heaters = before.fleet().inYear(2).stream().mapToDouble(v -> v.use().heaterFuelL()).sum();
        assertEquals(0.9 * engines + bought + heaters, fuelL(after, 0), 1e-6 * engines, "engines that were there take less");
        double perLitre = (then.amount(2, CostCategory.HEATER_FUEL)) / heaters;
        assertEquals(1.25 * perLitre, now.amount(0, CostCategory.HEATER_FUEL) / heaters, 1e-9, "fuel costs more");
        int place = 3;
        assertEquals(1.1 * then.amount(place, 2, CostCategory.UPKEEP), now.amount(place, 0, CostCategory.UPKEEP), 1e-6);
    }

    @Test
    void energyThatWasMeasuredCalibratesTheRoutesThatWereDriven() throws Exception {
        PlanResult before = withActuals();
        assertEquals(0, roll("--take", "electricity-use"), console.err());
        PlanResult after = evaluated(StudyFile.load(folder.resolve(NEW))).plans().get(ELECTRIC);
        VehicleYear then = before.fleet().inYear(2).get(0);
        VehicleYear now = after.fleet().inYear(0).get(0);
        assertEquals(1.2, now.use().batteryKwh() / then.use().batteryKwh(), 0.01, "heat of the pack is worked out, not multiplied");
        assertTrue(console.out().contains("Plan against actual"), console.out());
        assertTrue(console.out().contains("+20.0"), console.out());
    }

    @Test
    void aStepThatWasLateIsNotDone() throws Exception {
        assertEquals(0, roll("--late", "2027 B03; 2027 B15", "--same-end"), console.err());
        Study next = StudyFile.load(folder.resolve(NEW));
        assertEquals("B03", next.getBuses().get(2).getName());
        assertEquals(13, next.getSettings().getHorizonYears());
        assertEquals(List.of("B03", "B15"), next.getPlans().get(ELECTRIC).getReplacements().stream().filter(r -> r.getYear() == 2028)
                .map(r -> r.getBus().getName()).filter(n -> n.equals("B03") || n.equals("B15")).sorted().toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "roll-year district.amberyard | Option --out is missing: roll-year STUDY --out NEWSTUDY ",
        "roll-year district.amberyard --out district.amberyard | the study itself; give another file",
        "roll-year district.amberyard --out next.amberyard | Option --plan is missing: say which plan was carried out, one of Like for like, ",
        "roll-year district.amberyard --out next.amberyard --to 2041 | --to is “2041”; it must be a whole number from 2027 to 2040.",
        "roll-year district.amberyard --out next.amberyard --plan Nobody | --plan is “Nobody”; it must be one of Like for like",
        "roll-year district.amberyard --out next.amberyard --plan Nobody --late x | --plan is “Nobody”"})
    void whatCannotBeMeantIsRefused(String words, String message) {
        assertEquals(2, console.run(words.split(" ")));
        assertTrue(console.err().contains(message), console.err());
        assertFalse(Files.exists(folder.resolve(NEW)));
    }

    @Test
    void stepsAndActualsThatThereAreNotAreRefused() {
        assertEquals(2, roll("--late", "2027 B99"));
        assertTrue(console.err().contains("--late is “2027 B99”; it must be of 2027 B01; 2027 B02; 2027 B03; 2027 B15; "), console.err());
        assertEquals(2, roll("--take", "upkeep"));
        assertTrue(console.err().contains("--take is “upkeep”; the study has no actuals of the years that are over."), console.err());
        assertFalse(Files.exists(folder.resolve(NEW)));
    }
}
