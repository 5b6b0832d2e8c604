package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.upkeep.BrakeWear;
import org.amberyard.core.upkeep.MaintenanceTask;
import org.amberyard.core.upkeep.Powertrain;
import org.amberyard.core.upkeep.SampleTasks;
import org.amberyard.core.upkeep.TaskTrigger;
import org.amberyard.core.upkeep.UpkeepCalibration;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.core.upkeep.WearYear;
import org.junit.jupiter.api.Test;

class FleetUpkeepTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final MaintenanceTask OIL = SampleTasks.task("Oil", UpkeepCause.ENGINE, Powertrain.ENGINE,
            new TaskTrigger(INF, 6, INF, BrakeWear.NONE));
    private static final MaintenanceTask BRAKES = SampleTasks.task("Linings", UpkeepCause.BRAKES, Powertrain.ALL,
            new TaskTrigger(INF, INF, INF, new BrakeWear(3000)));
    private final StudyInput plain = TinyDistrict.study();
    private final DutyTable duty = DutyTable.of(plain.duty());

    private PlanResult plan(int plan, List<MaintenanceTask> tasks, Map<String, Double> measured) {
        FleetRules old = plain.rules();
        FleetRules rules = new FleetRules(old.spareCoverShare(), old.insuranceShare(), old.reserveShare(),
                new UpkeepRules(tasks, 58, 300, 0, measured));
        return TinyDistrict.evaluated(TinyDistrict.withRules(plain, rules), duty, plan);
    }

    private static UpkeepYear of(PlanResult result, int place, int year) {
        return result.upkeep().stream().filter(u -> u.record().place() == place && u.record().year() == year).findFirst()
                .orElseThrow();
    }

    @Test
    void aTypeWithoutTasksCostsByItsRate() {
        PlanResult byTasks = plan(1, List.of(OIL), Map.of());
        PlanResult byRate = TinyDistrict.evaluated(plain, duty, 1);
        assertEquals(byRate.ledger().amount(0, 1, CostCategory.UPKEEP), byTasks.ledger().amount(0, 1, CostCategory.UPKEEP), 1e-9);
        assertEquals(List.of(UpkeepCause.UNSPLIT), List.copyOf(of(byTasks, 0, 1).costs().keySet()));
    }

    @Test
    void tasksCostByTheirEvents() {
        PlanResult result = plan(0, List.of(OIL), Map.of());
        double ageFactor = 1 + 12 * 0.1;
        assertEquals(2 * ageFactor * (100 + 2 * 58), result.ledger().amount(0, 0, CostCategory.UPKEEP), 1e-6);
        assertEquals(1, of(result, 0, 0).factor(), 0);
    }

    @Test
    void measuredCostCalibratesAllBusesOfTheTypeAndNoOtherType() {
        PlanResult free = plan(1, List.of(OIL), Map.of());
        double perKm = free.ledger().amount(0, 0, CostCategory.UPKEEP) / of(free, 0, 0).record().use().km();
        PlanResult measured = plan(1, List.of(OIL), Map.of("1", 2 * perKm));
        assertEquals(2, of(measured, 0, 0).factor(), 1e-9);
        assertEquals(2, of(measured, 1, 0).factor(), 1e-9, "another diesel bus");
        assertEquals(1, of(measured, 0, 1).factor(), 0, "an electric bus since year 1");
    }

    @Test
    void busesOfATypeArePooledSoThatTogetherTheyCostWhatWasMeasured() {
        PlanResult free = plan(0, List.of(OIL), Map.of());
        double one = of(free, 0, 0).cost();
        double two = of(free, 1, 0).cost();
        PlanResult measured = plan(0, List.of(OIL), Map.of("1", 3 * one / of(free, 0, 0).record().use().km(),
                "2", two / of(free, 1, 0).record().use().km()));
        assertEquals(3 * one + two, of(measured, 0, 0).cost() + of(measured, 1, 0).cost(), 1e-6);
    }

    @Test
    void ridersWearTheTyres() {
        WearYear north = new BusWear(plain.duty()).of(new TypeUpkeep(plain.types().get(0), UpkeepRules.BY_RATE),
                duty.use(0, 0).orElseThrow().year(), 0, OptionalInt.of(0));
        double riders = plain.duty().routes().get(0).runs().get(0).meanRiders();
        assertTrue(riders > 5);
        assertEquals(plain.types().get(0).spec().body().curbMassKg() + riders * plain.duty().riderMassKg(), north.massKg(), 1e-9);
    }

    @Test
    void measuredCostCalibratesARateToo() {
        double perKm = 0.5;
        PlanResult result = plan(0, List.of(), Map.of("2", perKm));
        assertEquals(perKm * of(result, 1, 0).record().use().km(), of(result, 1, 0).cost(), 1e-6);
    }

    /** A bus that comes in a later year has driven nothing yet that could have been measured. */
    @Test
    void placesWhereNoBusStandsCalibrateNothing() {
        assertEquals(1, calibration(-5).buses());
        assertEquals(0, calibration(1).buses());
    }

    private UpkeepCalibration calibration(int inServiceYear) {
        BusInput old = plain.buses().get(1);
        List<BusInput> buses = List.of(plain.buses().get(0), new BusInput(old.name(), old.role(), old.type(), old.route(), inServiceYear,
                inServiceYear > 0 ? 0 : old.odometerKm(), old.otherKmPerYear(), old.idleHoursPerYear(), old.measuredKmPerL(),
                old.retirementYear()), plain.buses().get(2));
        FleetRules rules = plain.rules();
        StudyInput study = TinyDistrict.withRules(TinyDistrict.withBuses(plain, buses), new FleetRules(rules.spareCoverShare(),
                rules.insuranceShare(), rules.reserveShare(), new UpkeepRules(List.of(OIL), 58, 300, 0, Map.of("2", 0.5))));
        return UpkeepCalibrations.of(study, duty).of(TinyDistrict.DIESEL);
    }

    @Test
    void anElectricBusSparesItsBrakes() {
        double diesel = lifeOfBrakes(plan(0, List.of(BRAKES), Map.of()));
        double electric = lifeOfBrakes(plan(1, List.of(BRAKES), Map.of()));
        assertTrue(electric < 0.7 * diesel, electric + " of " + diesel);
    }

    private static double lifeOfBrakes(PlanResult result) {
        return result.upkeep().stream().filter(u -> u.record().place() == 0 && u.record().year() > 0)
                .mapToDouble(u -> u.calendar().due().stream().mapToDouble(e -> e.times()).sum()).sum();
    }

    @Test
    void causesAddUpToTheLedger() {
        PlanResult result = plan(1, List.of(OIL, BRAKES), Map.of("1", 0.4));
        for (UpkeepYear year : result.upkeep()) {
            double index = plain.prices().index(PriceDeck.Subject.UPKEEP, year.record().year(), year.record().year() + 1.0);
            assertEquals(year.cost() * index,
                    result.ledger().amount(year.record().place(), year.record().year(), CostCategory.UPKEEP), 1e-6);
        }
    }
}
