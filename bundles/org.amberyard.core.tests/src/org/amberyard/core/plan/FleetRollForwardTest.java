package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.DutyTable;
import org.junit.jupiter.api.Test;

class FleetRollForwardTest {
    private final StudyInput study = TinyDistrict.study();
    private final DutyTable duty = DutyTable.of(study.duty());

    private FleetHistory roll(StudyInput input, PlanInput plan) {
        return FleetRollForward.of(input, plan, duty, new PortFleet(input.depot(), plan.ports()));
    }

    private static List<String> bought(FleetHistory fleet) {
        return fleet.events().stream().filter(FleetEvent.Bought.class::isInstance)
                .map(e -> e.year() + " " + e.vehicle().unit()).toList();
    }

    @Test
    void markedYearRulesBeforeAge() {
        assertEquals(List.of("1 1-2"), bought(roll(study, TinyDistrict.dieselPlan())));
    }

    @Test
    void theRuleSellsTheOldBusInTheYearOfTheNewOne() {
        assertEquals(List.of("1 1"), roll(study, TinyDistrict.dieselPlan()).events().stream()
                .filter(FleetEvent.Sold.class::isInstance).map(e -> e.year() + " " + e.vehicle().unit()).toList());
    }

    @Test
    void aBusThatIsDueInTheBaseYearIsReplacedThen() {
        StudyInput due = withSecondBus(new BusInput("2", Role.ROUTE, 0, OptionalInt.of(1), -15, 0, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        assertEquals(List.of("0 2-2", "1 1-2"), bought(roll(due, TinyDistrict.dieselPlan())));
    }

    @Test
    void aBusThatMovesIntoAPlaceBeingFilledIsSoldForTheNewOne() {
        PlanInput both = new PlanInput("Both",
                List.of(new PlanInput.Replacement(1, 0, OptionalInt.of(1), OptionalInt.of(2), List.of()),
                        new PlanInput.Replacement(1, 2, OptionalInt.of(0), OptionalInt.empty(), List.of())),
                List.of(), List.of(), List.of());
        FleetHistory fleet = roll(study, both);
        assertEquals("3-2", fleet.fleetAtEnd().get(2).orElseThrow().unit());
        assertEquals(2, fleet.events().stream().filter(e -> e instanceof FleetEvent.Sold && e.year() == 1).count());
    }

    @Test
    void packOfABusOfTodayIsAsOldAsTheBus() {
        StudyInput electric = withSecondBus(new BusInput("2", Role.ROUTE, 1, OptionalInt.of(1), -5, 1000, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        assertEquals(5, roll(electric, TinyDistrict.dieselPlan()).inYear(0).get(1).vehicle().packYears(), 0);
    }

    @Test
    void ageRulesWhereNoYearIsMarked() {
        StudyInput old = withSecondBus(new BusInput("2", Role.ROUTE, 0, OptionalInt.of(1), -13, 0, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        assertEquals(List.of("1 1-2", "2 2-2"), bought(roll(old, TinyDistrict.dieselPlan())));
    }

    @Test
    void odometerRulesToo() {
        double kmPerYear = 0.95 * 180 * 2 * 40;
        StudyInput worn = withSecondBus(new BusInput("2", Role.ROUTE, 0, OptionalInt.of(1), -5, 400_000 - 1.5 * kmPerYear, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        assertEquals(List.of("1 1-2", "2 2-2"), bought(roll(worn, TinyDistrict.dieselPlan())));
    }

    @Test
    void spareIsKeptLonger() {
        List<BusInput> buses = new ArrayList<>(study.buses());
        buses.set(2, new BusInput("3", Role.SPARE, 0, OptionalInt.empty(), -22, 0, 4000, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        assertEquals(List.of("1 1-2", "1 3-2"), bought(roll(TinyDistrict.withBuses(study, buses), TinyDistrict.dieselPlan())));
    }

    @Test
    void planStepTakesTheMarkedYearsPlace() {
        PlanInput late = new PlanInput("Late",
                List.of(new PlanInput.Replacement(3, 0, OptionalInt.of(1), OptionalInt.empty(), List.of())), List.of(),
                List.of(), List.of());
        assertEquals(List.of("3 1-2"), bought(roll(study, late)));
    }

    @Test
    void cascadedBusTakesThePlaceAndTheOldOneIsSold() {
        FleetHistory fleet = roll(study, TinyDistrict.electricPlan());
        VehicleYear spare = fleet.inYear(1).get(2);
        assertEquals("1", spare.vehicle().unit());
        assertEquals(4000, spare.use().km(), 1e-9);
        assertTrue(fleet.events().stream().anyMatch(e -> e instanceof FleetEvent.Sold && e.vehicle().unit().equals("3")));
        assertTrue(fleet.events().stream().noneMatch(e -> e instanceof FleetEvent.Sold && e.vehicle().unit().equals("1")));
    }

    @Test
    void emptyNewTypeRetiresTheBus() {
        PlanInput fewer = new PlanInput("Fewer",
                List.of(new PlanInput.Replacement(1, 2, OptionalInt.empty(), OptionalInt.empty(), List.of())), List.of(),
                List.of(), List.of());
        FleetHistory fleet = roll(study, fewer);
        assertEquals(3, fleet.inYear(0).size());
        assertEquals(2, fleet.inYear(1).size());
        assertTrue(fleet.fleetAtEnd().get(2).isEmpty());
    }

    @Test
    void odometerAndCyclesAddUpOverTheYears() {
        FleetHistory fleet = roll(study, TinyDistrict.electricPlan());
        Vehicle end = fleet.fleetAtEnd().get(0).orElseThrow();
        List<VehicleYear> own = fleet.years().stream().filter(v -> v.place() == 0 && v.year() >= 1).toList();
        assertEquals(3, own.size());
        assertEquals(own.stream().mapToDouble(v -> v.use().km()).sum(), end.odometerKm(), 1e-6);
        assertEquals(own.stream().mapToDouble(VehicleYear::fullCycles).sum(), end.packCycles(), 1e-9);
        double drawnKwh = own.get(0).use().batteryKwh() + own.get(0).use().recoveredKwh();
        assertEquals(drawnKwh / 150, own.get(0).fullCycles(), 1e-12);
    }

    @Test
    void packIsReplacedInTheYearInWhichTheLimitIsReached() {
        double perYear = roll(study, TinyDistrict.electricPlan()).inYear(1).get(0).fullCycles();
        StudyInput shortLived = TinyPacks.withCycleLimit(study, 1.5 * perYear);
        FleetHistory fleet = FleetRollForward.of(shortLived, TinyDistrict.electricPlan(), DutyTable.of(shortLived.duty()),
                new PortFleet(shortLived.depot(), TinyDistrict.electricPlan().ports()));
        List<FleetEvent.PackReplaced> packs = fleet.events().stream().filter(FleetEvent.PackReplaced.class::isInstance)
                .map(FleetEvent.PackReplaced.class::cast).filter(p -> p.place() == 0).toList();
        assertEquals(2, packs.get(0).year(), "bought in year 1, limit reached in year 2");
        assertEquals(PackReplacement.Cause.CYCLE_LIMIT, packs.get(0).cause());
        assertEquals(150 * 250, PackBill.of(shortLived, packs.get(0)).paid(), 1e-9);
        assertEquals(2 * perYear, fleet.inYear(2).get(0).packCyclesEnd(), 1e-9);
        assertEquals(0.5 * perYear, fleet.inYear(3).get(0).vehicle().packCycles(), 1e-9, "cycles beyond the limit are carried");
    }

    @Test
    void measuredFuelEconomyCalibratesTheBusAndMovesWithIt() {
        List<BusInput> buses = new ArrayList<>(study.buses());
        BusInput old = buses.get(0);
        buses.set(0, new BusInput("1", Role.ROUTE, 0, old.route(), -12, 200_000, 0, 100, OptionalDouble.of(2.5), OptionalInt.of(1)));
        StudyInput measured = TinyDistrict.withBuses(study, buses);
        FleetHistory fleet = roll(measured, TinyDistrict.electricPlan());
        VehicleYear base = fleet.inYear(0).get(0);
        assertEquals(2.5, base.use().km() / base.use().fuelL(), 1e-9);
        double factor = base.vehicle().fuelFactor();
        double modelled = roll(study, TinyDistrict.electricPlan()).inYear(1).get(2).use().fuelL();
        assertEquals(factor * modelled, fleet.inYear(1).get(2).use().fuelL(), 1e-9, "as a spare it keeps its factor");
        assertEquals(1, fleet.inYear(1).get(0).vehicle().fuelFactor(), 0);
    }

    /** A log says nothing of a bus that only idles in the yard; it must not burn nothing for it. */
    @Test
    void aBusThatDoesNotDriveIsNotCalibrated() {
        StudyInput standing = withSecondBus(new BusInput("2", Role.SPARE, 0, OptionalInt.empty(), -5, 1000, 0, 100, OptionalDouble.of(2.5),
                OptionalInt.empty()));
        VehicleYear base = roll(standing, TinyDistrict.dieselPlan()).inYear(0).get(1);
        assertEquals(1, base.vehicle().fuelFactor(), 0);
        assertEquals(0, base.use().km(), 0);
        assertTrue(base.use().fuelL() > 0);
    }

    private StudyInput withSecondBus(BusInput bus) {
        List<BusInput> buses = new ArrayList<>(study.buses());
        buses.set(1, bus);
        return TinyDistrict.withBuses(study, buses);
    }

    /** A place in service from a later year; a plan may say what comes instead, and when. */
    @Test
    void theFleetGrowsIntoAPlace() {
        List<BusInput> buses = new ArrayList<>(study.buses());
        buses.add(new BusInput("G", Role.ROUTE, TinyDistrict.DIESEL, OptionalInt.of(0), 2, 0, 0, 0, OptionalDouble.empty(),
                OptionalInt.empty()));
        int place = buses.size() - 1;
        StudyInput grown = TinyDistrict.withBuses(study, buses);
        FleetHistory fleet = FleetRollForward.of(grown, TinyDistrict.dieselPlan(), DutyTable.of(grown.duty()),
                new PortFleet(grown.depot(), List.of()));
        assertEquals(List.of(2, 3), fleet.years().stream().filter(y -> y.place() == place).map(VehicleYear::year).toList());
        VehicleYear first = fleet.inYear(2).stream().filter(y -> y.place() == place).findFirst().orElseThrow();
        assertEquals("G", first.vehicle().unit());
        assertEquals(0, first.vehicle().odometerKm(), 0);
        assertEquals(1, fleet.events().stream().filter(e -> e.place() == place && e instanceof FleetEvent.Bought).count());
    }
}
