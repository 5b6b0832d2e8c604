package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.plan.EngineVersion;
import org.amberyard.core.plan.PriceDeck;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.Unit;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.BreakEvenSurface;
import org.amberyard.core.variants.BreakEvensAlone;
import org.amberyard.core.variants.DrawnInput;
import org.amberyard.core.variants.PriceFan;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.amberyard.core.whatif.Convergence;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.SobolIndices;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A what-if of three prices of a few routes of the example, two of them correlated, with all its parts. */
class WhatIfRunTest {
    private static final int REBATE = 2;
    private static final double WANTED = 4000;
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private static Study study;
    private static StudyResult base;
    private static WhatIfRun whole;

    @BeforeAll
    static void evaluate() throws StudyFileException {
        study = ExampleWhatIf.without(4000);
        study.getPlans().subList(REBATE + 1, study.getPlans().size()).clear();
        study.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        ExampleWhatIf.thin(study, 9, 2);
        UncertainInput diesel = ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        diesel.setLow(0.3);
        UncertainInput bus = ExampleWhatIf.add(study, "Bus price", "ElectricType", "Electric C 150", "purchasePrice");
        bus.setHigh(1.6);
        UncertainInput pack = ExampleWhatIf.add(study, "Pack price", "PackPrice", "", "pricePerKwh");
        InputCorrelation pair = WhatifFactory.eINSTANCE.createInputCorrelation();
        pair.setFirst(bus);
        pair.setSecond(pack);
        study.getWhatIf().getCorrelations().add(pair);
        base = EVALUATOR.evaluate(StudyCompiler.compile(study));
        whole = run(Optional.empty());
        go(whole, Progress.NONE);
    }

    private static WhatIfRun run(Optional<SavedRun> before) {
        return new WhatIfRun(study, base, 2, before);
    }

    private static void go(WhatIfRun run, Progress progress) {
        run.run(progress, soFar -> {});
    }

    /** Goes on until what is asked for is found. */
    private static WhatIfRun until(WhatIfRun run, Predicate<WhatIfResults> asked) {
        boolean[] found = new boolean[1];
        run.run(share -> {
            if (found[0]) {
                throw new CancellationException();
            }
        }, soFar -> found[0] = asked.test(soFar));
        return run;
    }

    @Test
    void aStoppedRunGoesOnToWhereItWouldHaveEnded() {
        assertTrue(whole.isComplete());
        WhatIfRun stopped = run(Optional.empty());
        go(stopped, share -> {
            if (share > 0.3) {
                throw new CancellationException();
            }
        });
        assertFalse(stopped.isComplete());
        WhatIfRun again = run(Optional.of(stopped.saved()));
        go(again, Progress.NONE);
        assertTrue(again.isComplete());
        WhatIfResults one = whole.results();
        WhatIfResults other = again.results();
        assertArrayEquals(one.all().orElseThrow().presentCosts(REBATE), other.all().orElseThrow().presentCosts(REBATE), 0);
        assertEquals(one.shares().orElseThrow().ofSaving(REBATE), other.shares().orElseThrow().ofSaving(REBATE));
        assertEquals(one.breakEven(), other.breakEven());
        assertEquals(one.breakEvens().alone(), other.breakEvens().alone());
        assertEquals(whole.saved().fingerprint(), again.saved().fingerprint());
    }

    @Test
    void resultsOfAKeptRunAreThereWithoutWork() {
        WhatIfRun opened = run(Optional.of(whole.saved()));
        assertTrue(opened.isComplete());
        assertEquals(whole.results().single().orElseThrow().saving(REBATE, 0), opened.results().single().orElseThrow().saving(REBATE, 0));
    }

    /** The three inputs decide in the order bus, diesel, pack: a grid takes those that are named, and the widest of the others. */
    @Test
    void theGridIsOfTheInputsThatAreNamed() {
        assertArrayEquals(new int[] {1, 0}, grid(study -> {}));
        assertArrayEquals(new int[] {2, 0}, grid(study -> {
            study.getWhatIf().setGridAcross(study.getWhatIf().getInputs().get(2));
            study.getWhatIf().setGridUpward(study.getWhatIf().getInputs().get(0));
        }));
        assertArrayEquals(new int[] {0, 1}, grid(study -> study.getWhatIf().setGridUpward(study.getWhatIf().getInputs().get(1))));
        assertArrayEquals(new int[] {2, 1}, grid(study -> study.getWhatIf().setGridAcross(study.getWhatIf().getInputs().get(2))));
    }

    /** Inputs across and upward of the grid of a run that goes on from the whole one, once the study chooses another grid. */
    private static int[] grid(Consumer<Study> choice) {
        TwoTogether grid = goneOn(choice).results().grid().orElseThrow();
        return new int[] {grid.first(), grid.second()};
    }

    private static WhatIfRun goneOn(Consumer<Study> choice) {
        Study edited = EcoreUtil.copy(study);
        choice.accept(edited);
        WhatIfRun run = new WhatIfRun(edited, base, 2, Optional.of(whole.saved()));
        go(run, Progress.NONE);
        return run;
    }

    /** All but the grid is taken over; the grid is never that of another choice. */
    @Test
    void anotherGridIsWorkedOutByItself() {
        Study edited = EcoreUtil.copy(study);
        edited.getWhatIf().setGridColumns(4);
        edited.getWhatIf().setGridRows(7);
        WhatIfRun run = new WhatIfRun(edited, base, 2, Optional.of(whole.saved()));
        assertFalse(run.isComplete());
        assertTrue(run.results().grid().isEmpty());
        assertTrue(run.results().all().isPresent() && run.results().shares().isPresent() && run.results().breakEven().isPresent());
        go(run, Progress.NONE);
        TwoTogether grid = run.results().grid().orElseThrow();
        assertEquals(List.of(4, 7), List.of(grid.grid().columns(), grid.grid().rows()));
        TwoTogether before = whole.results().grid().orElseThrow();
        assertEquals(before.saving(REBATE)[120], grid.saving(REBATE)[27], 1e-6, "both inputs high");
        assertNotEquals(whole.saved().fingerprint(), run.saved().fingerprint());
        assertFalse(run.saved().isOf(study));
        edited.getSettings().setDiscountRate(0.061);
        assertTrue(new WhatIfRun(edited, base, 2, Optional.of(whole.saved())).results().all().isEmpty(), "another study altogether");
    }

    @Test
    void aPartWithOtherColumnsIsWorkedOutAnew() {
        double[][] column = {new double[4000]};
        WhatIfRun run = run(Optional.of(new SavedRun(StudyFingerprint.of(study), Map.of(RunPart.ALL, column, RunPart.SINGLE, column,
                RunPart.BREAK_EVEN, column), Optional.empty())));
        assertTrue(run.results().all().isEmpty() && run.results().single().isEmpty());
    }

    /** At each point of the curve both plans cost the same, found by putting its values into the study. */
    @Test
    void theBreakEvenCurveHoldsWhenItIsPutIn() {
        BreakEvenLine line = whole.results().breakEven().orElseThrow();
        List<BreakEvenCurve> points = line.plans().get(REBATE);
        assertTrue(points.stream().anyMatch(p -> !p.at().values().isEmpty()), "the plan pays up to some price of buses");
        StudyVariants variants = new StudyVariants(study);
        for (BreakEvenCurve point : points.subList(0, 2)) {
            for (double value : point.at().values()) {
                double[] values = new double[study.getWhatIf().getInputs().size()];
                Arrays.fill(values, Double.NaN);
                values[line.first()] = value;
                values[line.second()] = point.other();
                StudyResult at = EVALUATOR.evaluate(variants.at(values));
                assertEquals(at.baseline().measures().presentCost(), at.plans().get(REBATE).measures().presentCost(), 0.01);
            }
        }
    }

    /** Along each input by itself, and in each cell over two others: the value is put in again, and the plans cost the same. */
    @Test
    void breakEvensHoldWhenTheyArePutIn() {
        BreakEvensAlone alone = whole.results().breakEvens().alone().orElseThrow();
        assertEquals(List.of(0, 1, 2), alone.inputs());
        int met = 0;
        for (int input : alone.inputs()) {
            met += putIn(alone.plans().get(REBATE).get(input), input, new double[] {Double.NaN, Double.NaN, Double.NaN});
        }
        BreakEvenSurface surface = whole.results().breakEvens().surface().orElseThrow();
        assertEquals(25, surface.plans().get(REBATE).size());
        for (int cell : new int[] {0, 12, 24}) {
            double[] values = new double[3];
            values[surface.first()] = surface.grid().first(cell);
            values[surface.second()] = surface.grid().second(cell);
            met += putIn(surface.plans().get(REBATE).get(cell), surface.searched(), values);
        }
        assertTrue(met > 2, met + " changes");
        assertEquals(List.of(), surface.plans().get(0), "the baseline costs what it costs");
    }

    /** Both prices of the battery side as a group: one bar, and one part of the variance that explains what both do. */
    @Test
    void aGroupHasABarAndAShareOfItsOwn() throws StudyFileException {
        Study grouped = EcoreUtil.copy(study);
        grouped.getWhatIf().getInputs().get(1).setGroup("Purchases");
        grouped.getWhatIf().getInputs().get(2).setGroup("Purchases");
        grouped.getWhatIf().setDraws(1000);
        WhatIfRun run = until(new WhatIfRun(grouped, base, 2, Optional.empty()), found -> found.shares().isPresent());
        WhatIfResults results = run.results();
        assertEquals(List.of("Diesel price", "Purchases"), results.shares().orElseThrow().groups());
        List<String> bars = results.single().orElseThrow().saving(REBATE, 0).bars().stream().map(b -> results.inputs().name(b.input())).toList();
        assertEquals(4, bars.size());
        assertTrue(bars.contains("Purchases"), bars.toString());
        SobolIndices shares = results.shares().orElseThrow().ofSaving(REBATE);
        assertEquals(1, shares.first().stream().mapToDouble(Band::value).sum(), 0.05);
    }

    /** A fan is of what is drawn: prices put in by hand, at the middle of each year, give the same percentile. */
    @Test
    void pricesAreToldAsTheyAreDrawn() {
        List<PriceFan> fans = whole.results().prices();
        assertEquals(List.of("price of fuel, diesel", "price of a new bus, Electric C 150", "price of a new pack"),
                fans.stream().map(PriceFan::name).toList());
        assertEquals("USD/L", fans.get(0).unit());
        Draws draws = new UncertainInputs(study).draws(4000);
        int last = base.input().years() - 1;
        PriceDeck.Price diesel = base.input().prices().fuels().get(FuelKind.DIESEL);
        double now = diesel.at(last, base.input().money().time(CostCategory.FUEL, last));
        double median = SortedDraws.of(IntStream.range(0, 1000).mapToDouble(d -> now * draws.at(d)[0]).toArray()).quantile(0.5);
        assertEquals(median, fans.get(0).years().get(last).quantile(0.5), 1e-12);
    }

    /** In the units of the study: what a field holds times what is drawn, shown as the window shows it. */
    @Test
    void inputsAreToldAsTheyAreDrawn() {
        List<DrawnInput> drawn = whole.results().drawn();
        assertEquals(List.of("Diesel price", "Bus price", "Pack price"), drawn.stream().map(DrawnInput::input).toList());
        DrawnInput diesel = drawn.get(0);
        assertEquals("USD/gal", diesel.unit());
        Draws draws = new UncertainInputs(study).draws(4000);
        double perL = base.input().prices().fuels().get(FuelKind.DIESEL).base();
        double median = SortedDraws.of(IntStream.range(0, 1000).mapToDouble(d -> perL * draws.at(d)[0]).toArray()).quantile(0.5);
        assertEquals(Unit.L_PER_GALLON * median, diesel.values().orElseThrow().quantile(0.5), 1e-9);
    }

    private static int putIn(BreakEven found, int input, double[] values) {
        StudyVariants variants = new StudyVariants(study);
        for (double value : found.values()) {
            values[input] = value;
            StudyResult at = EVALUATOR.evaluate(variants.at(values));
            assertEquals(at.baseline().measures().presentCost(), at.plans().get(REBATE).measures().presentCost(), 0.01);
        }
        return found.values().size();
    }

    @Test
    void drawsAreEnoughWhenTheMeanIsKnown() {
        study.getWhatIf().setErrorWanted(WANTED);
        WhatIfRun run = until(run(Optional.empty()),
                found -> found.all().filter(all -> all.end().reason() == RunEnd.Reason.ENOUGH).isPresent());
        AllTogether all = run.results().all().orElseThrow();
        study.getWhatIf().setErrorWanted(0);
        RunEnd end = all.end();
        assertEquals(RunEnd.Reason.ENOUGH, end.reason());
        assertTrue(end.draws() < 4000, end.draws() + " draws");
        List<Convergence> course = all.convergence(REBATE);
        assertTrue(course.get(course.size() - 1).standardError() <= WANTED);
    }

    @Test
    void theFingerprintIsOfTheInputs() throws StudyFileException {
        Study one = ExampleWhatIf.example();
        String print = StudyFingerprint.of(one);
        assertEquals(print, StudyFingerprint.of(ExampleWhatIf.example()));
        assertEquals(print, StudyFingerprint.of(one, EngineVersion.VALUE));
        assertNotEquals(print, StudyFingerprint.of(one, "0.9.0"), "another version of the method finds other results");
        one.getWhatIf().setSeed(7);
        assertNotEquals(print, StudyFingerprint.of(one));
        one.getWhatIf().setSeed(1);
        assertEquals(print, StudyFingerprint.of(one));
        one.getBuses().get(0).setRoute(one.getBuses().get(1).getRoute());
        assertNotEquals(print, StudyFingerprint.of(one));
    }
}
