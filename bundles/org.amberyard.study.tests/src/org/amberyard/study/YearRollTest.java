package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.ActualFigure;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.FinancedPurchases;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.MoneyBasis;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.YearActuals;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.roll.PastSteps;
import org.amberyard.study.roll.RollChoice;
import org.amberyard.study.roll.YearRoll;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YearRollTest {
    /** Years before the end in which no pack is due whose replacement hangs on the years left. */
    private static final int LAST_NOT_DECIDED_BY_THE_END = 12;
    private static final int BASE = 2026;
    private static final int YEARS = 15;
    private static final int ELECTRIC = 1;

    /** A plan that goes on as it was planned does and costs the same in each year that is left. */
    @ParameterizedTest
    @CsvSource({"2027, true, 1", "2028, true, 1", "2031, true, 1", "2031, false, 1", "2030, true, 0", "2030, true, 2"})
    void laterYearsOfTheExampleAreTheSame(int toYear, boolean sameEnd, int plan) throws StudyFileException {
        Study study = ExampleStudy.load();
        YearRoll roll = rolled(study, toYear, sameEnd, plan, Set.of());
        assertSameYears(roll, roll.study(), toYear - BASE, sameEnd ? YEARS : LAST_NOT_DECIDED_BY_THE_END);
    }

    static void assertSameYears(YearRoll roll, Study now, int years, int until) {
        PlanResult before = roll.before().plans().get(roll.carriedOut());
        PlanResult after = ExampleStudy.evaluated(now).plans().get(roll.carriedOut());
        SameYears same = new SameYears(before, after, years, moved(before, years));
        List<String> differences = same.differences(until);
        assertEquals(List.of(), differences.size() > 12 ? differences.subList(0, 12) : differences);
        assertTrue(same.compared() > 1000, "only " + same.compared() + " figures");
    }

    private static Set<Integer> moved(PlanResult plan, int years) {
        return plan.fleet().events().stream().filter(e -> e instanceof FleetEvent.Moved && e.year() <= years).map(FleetEvent::place)
                .collect(Collectors.toSet());
    }

    static YearRoll rolled(Study study, int toYear, boolean sameEnd, int plan, Set<Sourced> late) {
        Plan carriedOut = study.getPlans().get(plan);
        return YearRoll.of(study, new RollChoice(toYear, carriedOut, sameEnd, late), ExampleStudy.EVALUATOR::evaluate);
    }

    /** Loans and leases that run on, a used bus, a fleet that grows and shrinks, figures in money of the year. */
    private static Study crowded() throws StudyFileException {
        Study study = ExampleStudy.load();
        Plan plan = study.getPlans().get(ELECTRIC);
        study.getSettings().setMoneyBasis(MoneyBasis.NOMINAL);
        study.getSettings().setFiscalYearStart(org.amberyard.model.common.Month.JULY);
        financing(plan, "Bus loan", FinancingKind.LOAN, FinancedPurchases.BUSES, 7);
        financing(plan, "Port lease", FinancingKind.LEASE, FinancedPurchases.PORTS_AND_WORKS, 5);
        Replacement used = plan.getReplacements().stream().filter(r -> r.getYear() == 2027).findFirst().orElseThrow();
        used.getProgrammes().clear();
        used.setUsedAgeYears(3);
        used.setUsedOdometerKm(40_000);
        used.setUsedPrice(120_000);
        used.setUsedHealth(0.93);
        bus(study, "G27", 2027);
        bus(study, "G28", 2028);
        bus(study, "G31", 2031);
        Bus leaves = bus(study, "Z1", 2012);
        leaves.setOdometerKm(150_000);
        Replacement retired = PlansFactory.eINSTANCE.createReplacement();
        retired.setYear(2027);
        retired.setBus(leaves);
        plan.getReplacements().add(retired);
        return study;
    }

    private static void financing(Plan plan, String name, FinancingKind kind, FinancedPurchases covers, int years) {
        Financing financing = PlansFactory.eINSTANCE.createFinancing();
        financing.setName(name);
        financing.setKind(kind);
        financing.setCovers(covers);
        financing.setShare(0.8);
        financing.setYears(years);
        plan.getFinancing().add(financing);
    }

    static Bus bus(Study study, String name, int inService) {
        Bus bus = EcoreUtil.copy(study.getBuses().get(3));
        bus.setName(name);
        bus.setRole(Role.SPARE);
        bus.setRoute(null);
        bus.setMeasuredKmPerL(0);
        bus.setMeasuredUpkeepPerKm(0);
        bus.setPlannedRetirementYear(0);
        bus.setOdometerKm(0);
        bus.setOtherKmPerYear(2500);
        bus.setInServiceYear(inService);
        study.getBuses().add(bus);
        return bus;
    }

    @Test
    void debtsUsedBusesAndAFleetThatGrowsGoOn() throws StudyFileException {
        YearRoll roll = rolled(crowded(), 2028, true, ELECTRIC, Set.of());
        assertSameYears(roll, roll.study(), 2, YEARS);
        Plan plan = roll.study().getPlans().get(ELECTRIC);
        assertEquals(List.of("Bus loan", "Port lease", "Bus loan of 2027", "Port lease of 2027"),
                plan.getFinancing().stream().map(Financing::getName).toList());
        assertTrue(roll.study().getBuses().stream().noneMatch(b -> b.getName().equals("Z1")), "it has gone from the list");
        assertTrue(plan.getReplacements().stream().anyMatch(r -> r.getYear() == 2028 && r.getBus().getName().equals("G28")));
    }

    @Test
    void rollingTwiceIsRollingByTwoYears() throws StudyFileException {
        Study study = crowded();
        YearRoll once = rolled(study, 2028, true, ELECTRIC, Set.of());
        YearRoll first = rolled(study, 2027, true, ELECTRIC, Set.of());
        YearRoll second = rolled(first.study(), 2028, true, ELECTRIC, Set.of());
        assertSameYears(once, second.study(), 2, YEARS);
        assertEquals(once.study().getSettings().getPriceYear(), second.study().getSettings().getPriceYear());
        YearRoll third = rolled(second.study(), 2030, true, ELECTRIC, Set.of());
        assertEquals(BASE, third.study().getSettings().getPriceYear());
        assertSameYears(rolled(study, 2030, true, ELECTRIC, Set.of()), third.study(), 4, YEARS);
    }

    @Test
    void theStudyThatIsRolledStaysAsItIsAndTheNewOneIsWhole() throws StudyFileException {
        Study study = crowded();
        Study before = EcoreUtil.copy(study);
        YearRoll roll = rolled(study, 2028, false, ELECTRIC, Set.of());
        assertTrue(EcoreUtil.equals(before, study));
        assertEquals(List.of(), StudyFindings.of(roll.study()).stream().filter(f -> f.severity() == Severity.ERROR)
                .map(f -> f.message()).toList());
        assertEquals(YEARS, roll.study().getSettings().getHorizonYears());
        for (Plan plan : roll.study().getPlans()) {
            assertEquals(5, plan.getPortPurchases().stream().filter(p -> p.getYear() == 2027).mapToInt(p -> p.getCount()).sum(),
                    plan.getName() + " has the ports that stand");
            assertTrue(plan.getReplacements().stream().allMatch(r -> r.getYear() >= 2028));
        }
    }

    @Test
    void whatWasNotCarriedOutFallsInTheNewBaseYear() throws StudyFileException {
        Study study = ExampleStudy.load();
        Plan plan = study.getPlans().get(ELECTRIC);
        Set<Sourced> late = PastSteps.of(plan, BASE, 2028).stream().filter(s -> ElementNames.of(s).equals("2027 B03"))
                .collect(Collectors.toSet());
        assertEquals(1, late.size());
        YearRoll roll = rolled(study, 2028, true, ELECTRIC, late);
        Bus still = roll.study().getBuses().get(2);
        assertEquals("B03", still.getName());
        assertEquals("Diesel C 2005-2009", still.getType().getName());
        assertEquals(2028, roll.study().getPlans().get(ELECTRIC).getReplacements().stream().filter(r -> r.getBus() == still).findFirst()
                .orElseThrow().getYear());
        assertTrue(roll.changes().stream().anyMatch(c -> c.words().equals(
                "Replacement 2027 B03 of plan Electric in stages, Year: 2027 → 2028 (not carried out in time)")), "it is told");
        assertSameYears(roll, roll.study(), 2, YEARS);
    }

    /** What came of a year can be held against the plan of then also after the roll, late steps or not, beside actuals entered before. */
    @Test
    void whatThePlanForesawIsKept() throws StudyFileException {
        Study study = ExampleStudy.load();
        Plan plan = study.getPlans().get(ELECTRIC);
        YearActuals first = StudyFactory.eINSTANCE.createYearActuals();
        first.setYear(BASE);
        first.setFuelL(90_000.0);
        study.getActuals().add(first);
        StudyResult asPlanned = ExampleStudy.evaluated(study);
        Set<Sourced> late = PastSteps.of(plan, BASE, 2028).stream().filter(s -> ElementNames.of(s).equals("2027 B03")).collect(Collectors.toSet());
        YearRoll roll = rolled(study, 2028, true, ELECTRIC, late);
        List<YearActuals> kept = roll.study().getActuals();
        assertEquals(List.of(BASE, BASE + 1), kept.stream().map(YearActuals::getYear).toList());
        assertEquals(90_000, kept.get(0).getFuelL());
        assertNull(kept.get(1).getFuelL(), "still to be entered");
        for (int year = 0; year < 2; year++) {
            assertEquals("Electric in stages", kept.get(year).getForeseenBy());
            assertEquals(ActualFigure.FUEL.planned(asPlanned.plans().get(ELECTRIC), year).getAsDouble(), kept.get(year).getForeseenFuelL());
            assertEquals(ActualFigure.UPKEEP.planned(asPlanned.plans().get(ELECTRIC), year).getAsDouble(), kept.get(year).getForeseenUpkeepCost());
        }
        assertTrue(roll.remarks().stream().anyMatch(r -> r.startsWith("What plan “Electric in stages” foresaw for 2026 to 2027 is kept")));
        assertNull(study.getActuals().get(0).getForeseenBy(), "the old study stays as it is");
    }

    @Test
    void stepsOfOtherPlansThatNobodyTookFallInTheNewBaseYear() throws StudyFileException {
        YearRoll roll = rolled(ExampleStudy.load(), 2028, true, 0, Set.of());
        Plan electric = roll.study().getPlans().get(ELECTRIC);
        assertEquals(List.of("B01", "B02"), electric.getReplacements().stream().filter(r -> r.getYear() == 2028)
                .map(r -> r.getBus().getName()).filter(n -> n.equals("B01") || n.equals("B02") || n.startsWith("B03")).toList(),
                "B03 got a diesel in 2027");
        assertTrue(electric.getPortPurchases().stream().noneMatch(p -> p.getYear() < 2028), "no ports were bought");
        assertNull(roll.study().getBuses().get(0).getVin());
    }

    @Test
    void laterStepsForBusesThatHaveGoneGoToo() throws StudyFileException {
        YearRoll roll = rolled(ExampleStudy.load(), 2028, true, ELECTRIC, Set.of());
        Plan likeForLike = roll.study().getPlans().get(0);
        List<String> left = likeForLike.getReplacements().stream().map(r -> r.getBus().getName()).toList();
        assertTrue(left.stream().noneMatch(n -> n.startsWith("B01") || n.startsWith("B02")), "electric since 2027: " + left);
        assertTrue(left.contains("B04"), "its diesel is still there");
        assertTrue(roll.changes().stream().anyMatch(c -> c.words().equals("Replacement 2029 B01 of plan Like for like goes: the bus that it "
                + "replaces has gone by the plan that was carried out")));
    }

    @Test
    void programmesThatHavePaidHaveLessLeft() throws StudyFileException {
        Study study = ExampleStudy.load();
        study.getProgrammes().get(0).setBudget(2_000_000.0);
        YearRoll roll = rolled(study, 2028, true, ELECTRIC, Set.of());
        assertEquals(study.getProgrammes().get(0).getMaxBuses() - 4, roll.study().getProgrammes().get(0).getMaxBuses());
        double paid = roll.before().plans().get(ELECTRIC).funding().awards().total(0, 1);
        assertEquals(2_000_000 - paid, roll.study().getProgrammes().get(0).getBudget(), 1e-6);
        assertTrue(paid > 0);
    }

    @Test
    void theNewBaseYearIsALaterYearOfTheStudy() throws StudyFileException {
        Study study = ExampleStudy.load();
        for (int year : new int[] {BASE, BASE + YEARS}) {
            String said = assertThrows(IllegalArgumentException.class, () -> rolled(study, year, true, ELECTRIC, Set.of())).getMessage();
            assertEquals("The new base year is " + year + "; it must be from 2027 to 2040, the years of the study after its base year.", said);
        }
    }
}
