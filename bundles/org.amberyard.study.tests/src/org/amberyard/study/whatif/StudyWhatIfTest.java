package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.Scenarios;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.VarianceShares;
import org.amberyard.core.whatif.ContourLine;
import org.amberyard.core.whatif.Distribution;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.Tornado;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Variants of the example with two prices and a policy that vary. */
class StudyWhatIfTest {
    private static final int DIESEL = 0;
    private static final int POLICY = 2;
    private static final int PLAN = 1;
    private static final int BASELINE = 0;

    private static Study study;
    private static StudyEvaluator evaluator;
    private static StudyResult base;

    @BeforeAll
    static void evaluate() throws StudyFileException {
        study = ExampleWhatIf.without(20);
        add("Diesel price", "FuelPrice", "diesel", "pricePerL");
        add("Pack price", "PackPrice", "", "pricePerKwh");
        UncertainInput policy = add("Policy", "Depot", "", "chargingPolicy");
        policy.setShape(Shape.LIST);
        policy.setEffect(Effect.VALUE);
        policy.setChoices("at once; least cost");
        evaluator = new StudyEvaluator();
        base = evaluator.evaluate(StudyCompiler.compile(study));
    }

    private static UncertainInput add(String name, String kind, String element, String field) {
        return ExampleWhatIf.add(study, name, kind, element, field);
    }

    private static WhatIfParts whatIf(int threads) {
        return new WhatIfParts(new StudyWhatIf(study, base, threads));
    }

    private static double saving(Study edited) {
        StudyResult result = evaluator.evaluate(StudyCompiler.compile(edited));
        return result.plans().get(BASELINE).measures().presentCost() - result.plans().get(PLAN).measures().presentCost();
    }

    private static FuelPrice diesel(Study of) {
        return of.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast).findFirst().orElseThrow();
    }

    private static Tornado.Bar bar(Tornado tornado, int input) {
        return tornado.bars().stream().filter(b -> b.input() == input).findFirst().orElseThrow();
    }

    @Test
    void aBarIsTheStudyWithOneInputAtItsEnd() {
        OneAtATime run = whatIf(2).oneAtATime(Progress.NONE);
        Tornado tornado = run.saving(PLAN, BASELINE);
        assertEquals(saving(study), tornado.base(), 1e-6);
        Study edited = EcoreUtil.copy(study);
        diesel(edited).setPricePerL(diesel(study).getPricePerL() * run.spread(DIESEL).high());
        assertEquals(saving(edited), bar(tornado, DIESEL).atHigh(), 1e-6);
        Study atOnce = EcoreUtil.copy(study);
        atOnce.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        assertEquals(saving(atOnce), bar(tornado, POLICY).atLow(), 1e-6);
        assertTrue(bar(tornado, POLICY).atLow() < bar(tornado, POLICY).atHigh(), "least cost saves more than charging at once");
    }

    @Test
    void drawsAreTheSameBitsOnAnyNumberOfThreads() {
        AllTogether one = whatIf(1).allTogether(Progress.NONE);
        AllTogether two = whatIf(2).allTogether(Progress.NONE);
        assertEquals(new RunEnd(20, RunEnd.Reason.COMPLETE), one.end());
        assertArrayEquals(one.presentCosts(PLAN), two.presentCosts(PLAN), 0);
        assertTrue(one.presentCost(PLAN).quantile(0.9) > one.presentCost(PLAN).quantile(0.1));
        study.getWhatIf().setSeed(2);
        assertFalse(Arrays.equals(one.presentCosts(PLAN), whatIf(2).allTogether(Progress.NONE).presentCosts(PLAN)));
        study.getWhatIf().setSeed(1);
    }

    @Test
    void aStoppedRunKeepsWhatIsDone() {
        AllTogether stopped = whatIf(1).allTogether(share -> {
            if (share > 0.5) {
                throw new CancellationException();
            }
        });
        assertEquals(RunEnd.Reason.CANCELLED, stopped.end().reason());
        assertThrows(CancellationException.class, () -> whatIf(1).oneAtATime(share -> {
            throw new CancellationException();
        }));
    }

    @Test
    void aScenarioChangesAllItsInputsAndLeavesTheStudyAsItIs() {
        Scenario scenario = WhatifFactory.eINSTANCE.createScenario();
        scenario.setName("Dear diesel, charged at once");
        scenario.getChanges().add(change("FuelPrice", "diesel", "pricePerL", 1.5, null));
        scenario.getChanges().add(change("Depot", "", "chargingPolicy", 0, "at once"));
        study.getWhatIf().getScenarios().add(scenario);
        double before = diesel(study).getPricePerL();
        Scenarios run = whatIf(2).scenarios(Progress.NONE);
        study.getWhatIf().getScenarios().clear();
        Study edited = EcoreUtil.copy(study);
        diesel(edited).setPricePerL(1.5 * before);
        edited.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        assertEquals(saving(edited), run.presentCost(BASELINE, 0) - run.presentCost(PLAN, 0), 1e-6);
        assertEquals(before, diesel(study).getPricePerL(), 0);
    }

    private static ScenarioChange change(String kind, String element, String field, double number, String choice) {
        ScenarioChange change = WhatifFactory.eINSTANCE.createScenarioChange();
        change.setKind(kind);
        change.setElement(element);
        change.setField(field);
        change.setNumber(number);
        change.setChoice(choice);
        return change;
    }

    @Test
    void whereTheLineOfTheGridRunsBothPlansCostTheSame() {
        Study wide = EcoreUtil.copy(study);
        wide.getWhatIf().getInputs().get(DIESEL).setHigh(3);
        wide.getWhatIf().getInputs().subList(1, 3).clear();
        UncertainInput bus = ExampleWhatIf.add(wide, "Bus price", "ElectricType", "*", "purchasePrice");
        bus.setLow(0.01);
        bus.setLikely(0.5);
        TwoTogether grid = new WhatIfParts(new StudyWhatIf(wide, base, 2)).twoTogether(0, 1, Progress.NONE);
        assertEquals(121, grid.saving(PLAN).length);
        double range = Arrays.stream(grid.saving(PLAN)).max().orElseThrow() - Arrays.stream(grid.saving(PLAN)).min().orElseThrow();
        List<ContourLine> lines = grid.breakEven(PLAN);
        assertEquals(1, lines.size(), "the plan pays up to some price of buses");
        StudyVariants variants = new StudyVariants(wide);
        for (ContourLine.Point point : lines.get(0).points()) {
            StudyResult at = evaluator.evaluate(variants.at(new double[] {point.first(), point.second()}));
            assertEquals(at.baseline().measures().presentCost(), at.plans().get(PLAN).measures().presentCost(), 0.002 * range);
        }
    }

    @Test
    void theWidestInputsComeFirst() {
        WhatIfParts whatIf = whatIf(2);
        assertArrayEquals(new int[] {0, 1}, whatIf.whatIf().widest(whatIf.oneAtATime(Progress.NONE)));
    }

    /** A list has nothing between its values along which plans could cost the same. */
    @Test
    void aListIsNeverOneOfTheTwoInputsTogether() {
        UncertainInput diesel = study.getWhatIf().getInputs().get(DIESEL);
        diesel.setShape(Shape.LIST);
        diesel.setChoices("0.8; 1.2");
        WhatIfParts whatIf = whatIf(2);
        assertArrayEquals(new int[] {1}, whatIf.whatIf().widest(whatIf.oneAtATime(Progress.NONE)));
        diesel.setShape(Shape.TRIANGULAR);
    }

    @Test
    void anInputThatIsChosenForBothWaysMakesNoGridAndThatIsSaid() {
        Study twice = EcoreUtil.copy(study);
        twice.getWhatIf().setGridAcross(twice.getWhatIf().getInputs().get(DIESEL));
        StudyWhatIf whatIf = new StudyWhatIf(twice, base, 2);
        assertTrue(whatIf.grid(new int[] {0, 1}).exists(), "the other one is left to the run");
        assertEquals(Optional.empty(), TwoTogether.whyNone(whatIf));
        twice.getWhatIf().setGridUpward(twice.getWhatIf().getInputs().get(DIESEL));
        assertFalse(whatIf.grid(new int[] {0, 1}).exists());
        assertEquals(Optional.of("“Diesel price” is chosen to run both across and upward; a grid of two inputs takes another one for one of the ways"),
                TwoTogether.whyNone(whatIf));
    }

    /** The check of the study says that there is none, so the run must not make one of other inputs. */
    @Test
    void neitherAListNorAnInputOfOneValueMakesAGridWhenItIsChosenForBothWays() {
        Study twice = EcoreUtil.copy(study);
        UncertainInput diesel = twice.getWhatIf().getInputs().get(DIESEL);
        twice.getWhatIf().setGridAcross(diesel);
        twice.getWhatIf().setGridUpward(diesel);
        diesel.setShape(Shape.LIST);
        diesel.setChoices("0.8; 1.2");
        assertMakesNoGrid(new StudyWhatIf(twice, base, 2));
        diesel.setShape(Shape.OBSERVED);
        diesel.setChoices("1; 1");
        assertMakesNoGrid(new StudyWhatIf(twice, base, 2));
    }

    private static void assertMakesNoGrid(StudyWhatIf whatIf) {
        assertFalse(whatIf.varies(DIESEL));
        assertFalse(whatIf.grid(new int[] {1, 2}).exists());
        assertTrue(TwoTogether.whyNone(whatIf).orElseThrow().startsWith("“Diesel price” is chosen to run both across and upward"));
    }

    @Test
    void correlatedInputsExplainTheVarianceTogether() {
        InputCorrelation pair = WhatifFactory.eINSTANCE.createInputCorrelation();
        pair.setFirst(study.getWhatIf().getInputs().get(0));
        pair.setSecond(study.getWhatIf().getInputs().get(1));
        study.getWhatIf().getCorrelations().add(pair);
        VarianceShares shares = whatIf(2).varianceShares(Progress.NONE);
        study.getWhatIf().getCorrelations().clear();
        assertEquals(List.of("Diesel price with Pack price", "Policy"), shares.groups());
        double first = shares.ofSaving(PLAN).first().stream().mapToDouble(b -> b.value()).sum();
        assertEquals(1, first, 0.1, "costs are nearly sums of what each input does");
    }

    /** Nine in ten draws are the middle of the list; its ends are looked at all the same, and an input that never varies has no grid. */
    @Test
    void aListIsVariedFromEndToEnd() throws StudyFileException {
        Study lists = ExampleWhatIf.without(20);
        list(lists, "Diesel price", "FuelPrice", "diesel", "pricePerL", "0.8; 1; 1.2").setWeights("0.05 0.9 0.05");
        list(lists, "Bus price", "ElectricType", "Electric C 150", "purchasePrice", "1.1");
        StudyWhatIf whatIf = new StudyWhatIf(lists, base, 2);
        assertArrayEquals(new double[] {0.8, 1.2}, whatIf.uncertain().ends(0), 0);
        assertArrayEquals(new int[0], whatIf.widest(new WhatIfParts(whatIf).oneAtATime(Progress.NONE)));
        lists.getWhatIf().getInputs().remove(1);
        assertTrue(new StudyWhatIf(lists, base, 2).byPrices());
    }

    private static UncertainInput list(Study of, String name, String kind, String element, String field, String choices) {
        UncertainInput input = ExampleWhatIf.add(of, name, kind, element, field);
        input.setShape(Shape.LIST);
        input.setChoices(choices);
        return input;
    }

    /** Four in five of a normal input lie between half and one and a half; its tail would reach below 0, which the field forbids. */
    @Test
    void noShapeLeavesTheLimitsOfItsField() throws StudyFileException {
        Study limited = ExampleWhatIf.without(1000);
        UncertainInput cycles = ExampleWhatIf.add(limited, "Cycles", "ElectricType", "*", "cycleLimit");
        for (Shape shape : List.of(Shape.NORMAL, Shape.LOG_NORMAL)) {
            cycles.setShape(shape);
            cycles.setLow(0.5);
            cycles.setHigh(2);
            InputChange change = new StudyVariants(limited).change(0);
            Distribution distribution = InputDistribution.of(cycles, change);
            assertTrue(change.allows(distribution.quantile(0)) && change.allows(distribution.quantile(1)), shape.toString());
        }
        cycles.setShape(Shape.UNIFORM);
        cycles.setLow(0.3);
        cycles.setHigh(1.7);
        StudyVariants variants = new StudyVariants(limited);
        for (double end : new UncertainInputs(limited).searched(0)) {
            variants.at(new double[] {end});
        }
    }

    /** A search that would never end by itself ends with the next variant that it asks for. */
    @Test
    void aSearchStopsWithinAVariantAndKeepsToItsThreads() {
        StudyWhatIf whatIf = new StudyWhatIf(study, base, 1);
        double[] asItIs = whatIf.uncertain().alone(DIESEL, 1);
        Set<Thread> threads = ConcurrentHashMap.newKeySet();
        assertTrue(whatIf.outcomes().search(4, (number, variants) -> {
            threads.add(Thread.currentThread());
            assertEquals(saving(study), variants.apply(asItIs)[whatIf.outcomes().columns().presentCost(BASELINE)]
                    - variants.apply(asItIs)[whatIf.outcomes().columns().presentCost(PLAN)], 1e-6);
        }, 1, Progress.NONE));
        assertEquals(1, threads.size());
        assertFalse(assertTimeoutPreemptively(Duration.ofMinutes(1), () -> whatIf.outcomes().search(2, (number, variants) -> {
            while (true) {
                variants.apply(asItIs);
            }
        }, 2, share -> {
            throw new CancellationException();
        })));
    }

    @Test
    void anInputThatPointsAtNothingIsTold() {
        UncertainInput input = add("Wind", "Weather", "", "speed");
        IllegalArgumentException told = assertThrows(IllegalArgumentException.class, () -> whatIf(1));
        study.getWhatIf().getInputs().remove(input);
        assertTrue(told.getMessage().contains("no field “speed” of a Weather"), told.getMessage());
    }
}
