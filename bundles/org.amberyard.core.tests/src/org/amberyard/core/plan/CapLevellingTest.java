package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.SampleProgramme;
import org.amberyard.core.progress.Progress;
import org.junit.jupiter.api.Test;

/** Three diesels of which none is due within the four years: new ones cost 150,000 in real money each. */
class CapLevellingTest {
    private static final double CAP = 180_000;

    private final StudyInput young = TinyDistrict.withBuses(TinyDistrict.study(), List.of(bus("1", -10, 0), bus("2", -9, 1),
            bus("3", -8, 0)));
    private final DutyTable duty = DutyTable.of(young.duty());

    private static BusInput bus(String name, int inService, int route) {
        return new BusInput(name, Role.ROUTE, TinyDistrict.DIESEL, OptionalInt.of(route), inService, 0, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty());
    }

    private static PlanInput.Replacement step(int year, int place, Integer... programmes) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(TinyDistrict.DIESEL), OptionalInt.empty(), List.of(programmes));
    }

    private static PlanInput.Replacement electric(int year, int place, Integer... programmes) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(), List.of(programmes));
    }

    private static PlanInput plan(double cap, PlanInput.Replacement... steps) {
        return new PlanInput("Capped", List.of(steps), List.of(new PlanInput.PortPurchase(0, 0, 2, List.of())), List.of(), List.of())
                .paid(new PaymentPlan(List.of(), OptionalDouble.of(cap)));
    }

    private StudyResult evaluated(StudyInput study, PlanInput plan) {
        return StudyEvaluation.of(TinyDistrict.withPlans(study, TinyDistrict.dieselPlan(), plan), duty);
    }

    private CapLevelling levelled(StudyInput study, PlanInput plan) {
        return CapLevelling.of(evaluated(study, plan), 1, Progress.NONE);
    }

    /** The plan as it proposes, evaluated anew. */
    private PlanResult moved(StudyInput study, PlanInput plan, CapLevelling levelling) {
        List<PlanInput.Replacement> steps = new ArrayList<>(plan.replacements());
        levelling.shifts().forEach(s -> steps.replaceAll(r -> r.place() == s.place() && r.year() == s.from() ? r.in(s.to()) : r));
        return evaluated(study, plan.with(steps)).plans().get(1);
    }

    private static List<Integer> above(PlanResult result) {
        return result.finance().budget().stream().filter(y -> y.aboveCap().orElse(0) > 0).map(BudgetYear::year).toList();
    }

    @Test
    void oneOfTwoInAYearMovesToTheNearestYearWithRoom() {
        PlanInput plan = plan(CAP, step(1, 0), step(1, 1));
        StudyResult before = evaluated(young, plan);
        assertEquals(List.of(1), above(before.plans().get(1)));
        CapLevelling levelling = CapLevelling.of(before, 1, Progress.NONE);
        BudgetYear second = before.plans().get(1).finance().budget().get(1);
        assertEquals(List.of(new CapLevelling.Unmet(1, second.appropriation() - CAP)), levelling.before(), "as the plan is");
        assertEquals(1, levelling.shifts().size(), levelling.toString());
        assertEquals(1, levelling.shifts().get(0).from());
        assertEquals(1, Math.abs(levelling.shifts().get(0).to() - 1));
        assertTrue(levelling.unmet().isEmpty());
        PlanResult after = moved(young, plan, levelling);
        assertEquals(List.of(), above(after));
        assertEquals(after.presentCostAfterFinancing(), levelling.presentCostAfter(), 1e-6);
        assertEquals(before.plans().get(1).presentCostAfterFinancing(), levelling.presentCostBefore(), 0);
    }

    /** What takes 14 months to come cannot be there at the start of the first year nor of the second. */
    @Test
    void noBusIsMovedToAYearForWhichItIsTooLateToOrder() {
        List<VehicleTypeInput> types = new ArrayList<>(young.types());
        VehicleTypeInput t = types.get(TinyDistrict.DIESEL);
        types.set(TinyDistrict.DIESEL, new VehicleTypeInput(t.spec(), t.prices(), t.acAcceptanceKw(), t.dcAcceptanceKw(), t.successor(), 14));
        PlanInput plan = plan(CAP, step(2, 0), step(2, 1));
        StudyInput slow = TinyDistrict.withTypes(young, types);
        CapLevelling levelling = levelled(slow, plan);
        assertEquals(List.of(3), levelling.shifts().stream().map(CapLevelling.Shift::to).toList(), levelling.toString());
    }

    @Test
    void aPlanWithinItsCapStaysAsItIs() {
        CapLevelling levelling = levelled(young, plan(2 * CAP, step(1, 0), step(1, 1)));
        assertEquals(List.of(), levelling.shifts());
        assertEquals(List.of(), levelling.before());
        assertEquals(List.of(), levelling.unmet());
        assertEquals(levelling.presentCostBefore(), levelling.presentCostAfter(), 0);
    }

    @Test
    void threeSpreadOverThreeYears() {
        PlanInput plan = plan(CAP, step(0, 0), step(0, 1), step(0, 2));
        CapLevelling levelling = levelled(young, plan);
        assertEquals(2, levelling.shifts().size(), levelling.toString());
        assertEquals(List.of(), above(moved(young, plan, levelling)));
    }

    /** No year with a bus keeps so low a cap; three in one year are spread all the same. */
    @Test
    void whereTheCapCannotBeKeptTheYearsAreEvenedOut() {
        PlanInput plan = plan(60_000, step(0, 0), step(0, 1), step(0, 2));
        PlanResult before = evaluated(young, plan).plans().get(1);
        PlanResult after = moved(young, plan, levelled(young, plan));
        assertTrue(highest(after) < 0.6 * highest(before), highest(after) + " of " + highest(before));
    }

    private static double highest(PlanResult plan) {
        return plan.finance().budget().stream().mapToDouble(BudgetYear::appropriation).max().orElseThrow();
    }

    @Test
    void whatCannotBeMetIsTold() {
        PlanInput plan = plan(120_000, step(1, 0), step(2, 1));
        StudyResult before = evaluated(young, plan);
        CapLevelling levelling = CapLevelling.of(before, 1, Progress.NONE);
        PlanResult after = moved(young, plan, levelling);
        assertEquals(above(after), levelling.unmet().stream().map(CapLevelling.Unmet::year).toList());
        for (CapLevelling.Unmet unmet : levelling.unmet()) {
            assertEquals(after.finance().budget().get(unmet.year()).appropriation() - 120_000, unmet.above(), 1e-6);
        }
        assertTrue(!levelling.unmet().isEmpty());
    }

    /** Both are fifteen years old in year 2: neither stays longer, so one must come earlier. */
    @Test
    void noBusStaysLongerThanItsRuleAllows() {
        StudyInput old = TinyDistrict.withBuses(young, List.of(bus("1", -13, 0), bus("2", -13, 1), bus("3", -3, 0)));
        PlanInput plan = plan(250_000, step(2, 0), step(2, 1));
        CapLevelling levelling = levelled(old, plan);
        assertEquals(1, levelling.shifts().size(), levelling.toString());
        assertEquals(1, levelling.shifts().get(0).to());
    }

    @Test
    void theWindowOfAProgrammeIsKeptWhereThatIsPossible() {
        Programme early = paying(0, 1);
        StudyInput funded = TinyDistrict.withFunding(young, FundingInput.of(List.of(early)));
        PlanInput plan = plan(400_000, electric(1, 0, 0), electric(1, 1, 0));
        CapLevelling levelling = levelled(funded, plan);
        assertEquals(1, levelling.shifts().size(), levelling.toString());
        assertEquals(0, levelling.shifts().get(0).to());
        assertEquals(List.of(), levelling.shifts().get(0).lost());
    }

    @Test
    void anAwardThatIsLostIsNamed() {
        StudyInput funded = TinyDistrict.withFunding(young, FundingInput.of(List.of(paying(1, 1))));
        PlanInput plan = plan(400_000, electric(1, 0, 0), electric(1, 1, 0));
        CapLevelling levelling = levelled(funded, plan);
        assertEquals(1, levelling.shifts().size(), levelling.toString());
        assertEquals(List.of(0), levelling.shifts().get(0).lost());
        assertEquals(List.of(), above(moved(funded, plan, levelling)));
    }

    private static Programme paying(int first, int last) {
        Programme all = SampleProgramme.named("P").forBuses(new BusAward(50_000, 0, 0, 50_000)).built();
        return new Programme(all.name(), all.kind(), all.priority(), first, last, all.probability(), all.offer(), all.budget(),
                all.match(), all.conditions(), all.payout());
    }

    @Test
    void theSameQuestionHasTheSameAnswer() {
        PlanInput plan = plan(CAP, step(0, 0), step(0, 1), step(1, 2));
        assertEquals(levelled(young, plan), levelled(young, plan));
    }

    @Test
    void withoutACapThereIsNothingToKeep() {
        StudyResult result = evaluated(young, plan(CAP).paid(PaymentPlan.CASH));
        assertThrows(IllegalArgumentException.class, () -> CapLevelling.of(result, 1, Progress.NONE));
    }

    @Test
    void aSearchThatNobodyWaitsForEnds() {
        StudyResult result = evaluated(young, plan(CAP, step(1, 0), step(1, 1)));
        assertThrows(CancellationException.class, () -> CapLevelling.of(result, 1, share -> {
            throw new CancellationException();
        }));
    }
}
