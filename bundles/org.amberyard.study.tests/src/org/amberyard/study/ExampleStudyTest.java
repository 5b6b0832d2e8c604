package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.study.MoneyBasis;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the invented district should discover, and what must hold of any whole study. */
class ExampleStudyTest {
    private static Study study;
    private static StudyResult result;

    @BeforeAll
    static void evaluate() throws Exception {
        study = ExampleStudy.load();
        result = ExampleStudy.result();
    }

    @Test
    void hasNothingThatKeepsItFromBeingEvaluated() {
        assertEquals(List.of(), StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR)
                .map(Finding::message).toList());
        assertTrue(StudyFindings.canEvaluate(StudyFindings.of(study)));
    }

    /** Golden figures, US dollars of the base date; a change here is a change of the method or of the example. */
    @Test
    void presentCostsOfThePlans() {
        assertEquals(List.of("Like for like", "Electric in stages", "Rebate buses only"),
                result.plans().stream().map(PlanResult::name).toList());
        assertEquals(5_242_727.54, result.plans().get(0).measures().presentCost(), 0.01);
        assertEquals(6_507_349.21, result.plans().get(1).measures().presentCost(), 0.01);
        assertEquals(5_028_202.59, result.plans().get(2).measures().presentCost(), 0.01);
        assertEquals(Payback.Outcome.NEVER, result.comparisons().get(0).discounted().outcome());
        assertEquals(3.99, result.comparisons().get(1).discounted().years(), 0.005);
    }

    /**
     * The fuel that the fleet burnt in the base year by the district's own (invented) bus log: 26,750 gallons. With the log's
     * fuel economies the model burns as much; without them the physics alone is within a tenth.
     */
    @Test
    void baseYearFuelIsThatOfTheFuelLog() {
        List<VehicleYear> year = result.baseline().fleet().inYear(0);
        double gallons = year.stream().mapToDouble(v -> v.use().fuelL()).sum() / 3.785411784;
        double physics = year.stream().mapToDouble(v -> v.use().fuelL() / v.vehicle().fuelFactor()).sum() / 3.785411784;
        double miles = year.stream().mapToDouble(v -> v.use().km()).sum() / 1.609344;
        assertEquals(182_008, miles, 182_008 * 0.01);
        assertEquals(26_750, gallons, 26_750 * 0.01);
        assertEquals(26_750, physics, 26_750 * 0.10);
        assertTrue(year.stream().allMatch(v -> Math.abs(v.vehicle().fuelFactor() - 1) < 0.25));
    }

    @Test
    void fuelThatTheModelMissesIsPointedOut() throws Exception {
        Study doubtful = ExampleStudy.load();
        doubtful.getBuses().get(0).setMeasuredKmPerL(doubtful.getBuses().get(0).getMeasuredKmPerL() / 2);
        StudyResult other = ExampleStudy.evaluated(doubtful);
        assertEquals(List.of("Bus B01 burns 90 % more by its log than the model says for its route; check the log, the route "
                + "and the vehicle type."), ResultFindings.of(doubtful, other).stream()
                        .filter(f -> f.severity() == Severity.WARNING).map(Finding::message).toList());
    }

    @Test
    void someRoutesAreEasySomeNeedCareAndSomeAreImpossible() {
        Map<RouteFit.Verdict, Long> best = IntStream.range(0, 18).mapToObj(r -> result.fits().best(r, false).orElseThrow().verdict())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        assertEquals(Map.of(RouteFit.Verdict.FOR_LIFE, 10L, RouteFit.Verdict.MIDDAY_WHEN_AGED, 4L,
                RouteFit.Verdict.ONLY_WHEN_NEW, 1L, RouteFit.Verdict.FAILS, 3L), best);
        long smallPack = result.fits().list().stream().filter(f -> result.input().types().get(f.type()).name().equals("Electric C 150"))
                .filter(f -> f.verdict() == RouteFit.Verdict.MIDDAY_WHEN_AGED).count();
        assertEquals(4, smallPack, "routes that the small pack does alone when new and with a midday charge when aged");
    }

    @Test
    void connectedPowerOutgrowsTheTransformerButChargingAsPlannedDoesNot() {
        var last = result.plans().get(1).service().get(14);
        assertTrue(last.connectedKva() > last.transformerKva());
        assertTrue(last.demandKva() < last.transformerKva());
        assertTrue(ResultFindings.of(study, result).stream().anyMatch(
                f -> f.message().contains("exceed the service") && f.message().contains("licensed electrician")));
    }

    @Test
    void partsAddUp() {
        for (PlanResult plan : result.plans()) {
            CostLedger ledger = plan.ledger();
            double byCategory = 0;
            for (CostCategory category : CostCategory.values()) {
                byCategory += ledger.amount(category);
            }
            double byYear = IntStream.range(0, 15).mapToDouble(ledger::yearTotal).sum();
            assertEquals(byYear, byCategory, 1e-6);
            double km = plan.fleet().years().stream().mapToDouble(v -> v.use().km()).sum();
            assertEquals(km, plan.measures().km(), 1e-6);
        }
    }

    @Test
    void electricityEqualsBatteryEnergyOverEfficiencyAndHeatFromTheYard() {
        for (VehicleYear record : result.plans().get(1).fleet().years()) {
            if (record.meterKwh() > 0) {
                assertEquals((record.use().batteryKwh() + record.use().gridKwh()) / 0.88, record.meterKwh(), 1e-6);
            }
        }
    }

    @Test
    void nominalStudyHasTheSamePresentCosts() throws Exception {
        Study nominal = ExampleStudy.load();
        nominal.getSettings().setMoneyBasis(MoneyBasis.NOMINAL);
        StudyResult other = ExampleStudy.evaluated(nominal);
        for (int plan = 0; plan < 3; plan++) {
            double expected = result.plans().get(plan).measures().presentCost();
            assertEquals(expected, other.plans().get(plan).measures().presentCost(), expected * 1e-9);
        }
    }

    @Test
    void aPriceEditKeepsTheDutyTableAndGivesTheBitsOfAFreshEvaluation() throws Exception {
        Study edited = ExampleStudy.load();
        StudyResult before = ExampleStudy.evaluated(edited);
        FuelPrice diesel = edited.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                .findFirst().orElseThrow();
        diesel.setPricePerL(diesel.getPricePerL() * 1.3);
        StudyResult after = ExampleStudy.evaluated(edited);
        assertSame(before.duty(), after.duty());
        StudyEvaluator other = new StudyEvaluator();
        StudyResult fresh = other.evaluate(StudyCompiler.compile(edited));
        for (int plan = 0; plan < 3; plan++) {
            assertEquals(fresh.plans().get(plan).measures(), after.plans().get(plan).measures());
        }
        edited.getSite().setElevationM(900);
        assertNotSame(fresh.duty(), other.evaluate(StudyCompiler.compile(edited)).duty());
    }

    @Test
    void manyThreadsGiveTheSameBits() throws Exception {
        StudyEvaluator shared = new StudyEvaluator();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            Callable<StudyResult> evaluation = () -> shared.evaluate(result.input());
            for (Future<StudyResult> other : threads.invokeAll(List.of(evaluation, evaluation, evaluation, evaluation))) {
                assertEquals(result.plans().get(1).measures(), other.get().plans().get(1).measures());
                assertEquals(result.fits(), other.get().fits());
            }
        } finally {
            threads.shutdown();
        }
    }
}
