package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SampleAir;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.CostCategory;
import org.junit.jupiter.api.Test;

class ReplacedBusesTest {
    private static final Map<String, Integer> ENGINES = Map.of("1", 2007, "2", 2018, "3", 2006);
    private static final DutyTable DUTY = DutyTable.of(TinyDistrict.duty());

    private final StudyResult result = evaluated(TinyDistrict.buses());
    private final PlanResult plan = result.plans().get(1);
    private final List<ReplacedBus> replaced = ReplacedBuses.of(result, 1);

    private static StudyResult evaluated(List<BusInput> buses) {
        AirInput whole = SampleAir.whole();
        StudyInput study = TinyDistrict.withAir(TinyDistrict.withBuses(TinyDistrict.study(), buses),
                new AirInput(whole.factors(), ENGINES, whole.social(), whole.health(), whole.grants()));
        return StudyEvaluation.of(study, DUTY);
    }

    private ReplacedBus at(int place) {
        return replaced.stream().filter(r -> r.place() == place).findFirst().orElseThrow();
    }

    @Test
    void eachPlaceThatChangesOtherwiseThanInTheBaselineIsPartOfTheProject() {
        assertEquals(3, replaced.size());
        assertEquals(List.of("1", "2", "3"), replaced.stream().map(r -> r.old().vehicle().unit()).sorted().toList());
        assertEquals("1", at(2).now().vehicle().unit(), "the old route bus has become the spare");
        assertFalse(at(2).bought());
        assertTrue(ReplacedBuses.of(result, 0).isEmpty());
    }

    /** Bus 1 is marked for year 1, when the plan replaces it; bus 2 is fifteen years old in year 10; spare 3 is kept to age 23. */
    @Test
    void remainingLifeIsThatWithoutTheProject() {
        assertEquals(0, at(0).remainingYears());
        assertEquals(1, at(0).retires());
        assertEquals(TinyDistrict.DIESEL, at(0).instead().orElseThrow().vehicle().type(), "a new diesel would stand there");
        assertTrue(at(1).instead().isEmpty());
        assertEquals(10, at(1).retires());
        assertEquals(8, at(1).remainingYears());
        assertEquals(7, at(2).retires());
        assertEquals(6, at(2).remainingYears());
    }

    @Test
    void bothBusesDoTheDutyOfThePlace() {
        ReplacedBus bus = at(1);
        assertEquals(2, bus.year());
        assertEquals(bus.now().use().km(), bus.old().use().km(), 1e-9);
        assertEquals(bus.old().use().km() * 0.8 / 1000, bus.before().of(EmissionSource.DRIVING).kg(Pollutant.NOX), 1e-9);
        double nox = bus.old().use().km() * 0.8 / 1000 + 100 * 8 * 0.8 / 1000;
        assertEquals(nox, bus.reducedExhaust().kg(Pollutant.NOX), 1e-9);
        assertEquals(8 * nox, bus.lifetimeExhaust().kg(Pollutant.NOX), 1e-9);
        assertTrue(bus.reducedWear().kg(Pollutant.PM25) > 0);
    }

    @Test
    void theOldRouteBusSavesLittleAsASpare() {
        ReplacedBus spare = at(2);
        assertEquals(0, spare.reducedExhaust().kg(Pollutant.NOX), 1e-9, "both engines are of the same group");
        assertEquals(0, ProjectCost.of(plan, spare).capital());
    }

    @Test
    void sumsAreThoseOfTheBuses() {
        double annual = replaced.stream().mapToDouble(r -> r.reducedExhaust().kg(Pollutant.PM25)).sum();
        double life = replaced.stream().mapToDouble(r -> r.remainingYears() * r.reducedExhaust().kg(Pollutant.PM25)).sum();
        assertEquals(annual, ReplacedBuses.reducedPerYear(replaced).kg(Pollutant.PM25), 1e-12);
        assertEquals(life, ReplacedBuses.reducedInLife(replaced).kg(Pollutant.PM25), 1e-12);
    }

    @Test
    void aSpareWithoutDistanceReducesNothing() {
        List<BusInput> buses = new ArrayList<>(TinyDistrict.buses());
        buses.set(2, new BusInput("3", Role.SPARE, TinyDistrict.DIESEL, OptionalInt.empty(), -16, 150_000, 0, 40,
                OptionalDouble.empty(), OptionalInt.empty()));
        PlanInput scrapsSpare = new PlanInput("Spare", List.of(new PlanInput.Replacement(1, 2, OptionalInt.of(TinyDistrict.ELECTRIC),
                OptionalInt.empty(), List.of())), List.of(new PlanInput.PortPurchase(1, 0, 1, List.of())),
                List.of(), List.of());
        StudyInput study = TinyDistrict.withPlans(evaluated(buses).input(), TinyDistrict.dieselPlan(), scrapsSpare);
        ReplacedBus spare = ReplacedBuses.of(StudyEvaluation.of(study, DUTY), 1).get(0);
        assertEquals(Masses.NONE, spare.reducedExhaust(), "its idling must not be sold as a reduction either");
        assertEquals(6, spare.remainingYears());
    }

    @Test
    void theProjectCostsItsBusesAndWhatTheYardNeeds() {
        ProjectCost cost = ProjectCost.of(result, plan, replaced);
        double buses = plan.ledger().amount(1, CostCategory.BUS_PURCHASE) + plan.ledger().amount(2, CostCategory.BUS_PURCHASE);
        double renewed = plan.ledger().amount(3, CostCategory.PORTS);
        assertTrue(renewed > 0, "hardware of the ports is renewed, which is no part of the project");
        double yard = plan.ledger().amount(CostCategory.PORTS) - renewed + plan.ledger().amount(CostCategory.SITE_WORKS)
                + plan.ledger().amount(CostCategory.TRAINING_AND_TOOLS);
        assertEquals(buses + yard, cost.capital(), 1e-6);
        assertEquals(-plan.ledger().amount(CostCategory.FUNDING), cost.grant(), 1e-6);
        assertTrue(cost.grant() > 0 && cost.grant() < cost.capital());
    }
}
