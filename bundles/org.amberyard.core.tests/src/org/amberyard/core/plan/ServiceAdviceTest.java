package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.BuildingLoad;
import org.junit.jupiter.api.Test;

/** The tiny district on a service that its building nearly fills; invented. */
class ServiceAdviceTest {
    private static final int JULY = 6;

    private final StudyInput study = TinyDistrict.study();

    private ServiceAdvice advice(double transformerKva, DepotInput.SiteWork... upgrades) {
        DepotInput depot = study.depot();
        ServiceInput service = new ServiceInput(480, 800, transformerKva, 0.95, 80);
        List<DepotInput.SiteWork> works = new ArrayList<>(depot.works());
        works.addAll(List.of(upgrades));
        StudyInput small = TinyDistrict.withDepot(study, new DepotInput(depot.ports(), works, service, depot.window(),
                depot.metering(), depot.alternatives(), depot.charging()));
        return ServiceAdvice.of(small, TinyDistrict.evaluated(small, DutyTable.of(small.duty()), 1), Progress.NONE);
    }

    /** A plan beside 80 kW, with works on offer. */
    private StudyInput onService(PlanInput plan, double transformerKva, DepotInput.SiteWork... works) {
        DepotInput depot = study.depot();
        DepotInput on = new DepotInput(depot.ports(), List.of(works), new ServiceInput(480, 800, transformerKva, 0.95, 80),
                depot.window(), depot.metering(), depot.alternatives(), depot.charging());
        return TinyDistrict.withPlans(TinyDistrict.withDepot(study, on), study.plans().get(0), plan);
    }

    private static PlanInput with(List<PlanInput.PortPurchase> ports, List<PlanInput.WorkOrder> works) {
        PlanInput plan = TinyDistrict.electricPlan();
        return new PlanInput(plan.name(), plan.replacements(), ports, works, plan.oneOffs());
    }

    private static DepotInput.SiteWork larger(double leadMonths) {
        return new DepotInput.SiteWork("Larger", 118_000, 30, Optional.of(new DepotInput.Upgrade(750, 800, leadMonths)));
    }

    private static Optional<ServiceAdvice.Remedy> of(ServiceAdvice advice, ServiceAdvice.Kind kind) {
        return advice.remedies().stream().filter(r -> r.kind() == kind).findFirst();
    }

    @Test
    void withinTheServiceNothingIsNeeded() {
        ServiceAdvice advice = advice(300);
        assertEquals(OptionalInt.empty(), advice.connectedFrom());
        assertEquals(List.of(), advice.remedies());
    }

    /** Two ports of 19.2 kW beside 80 kW are 118.4 kW, 124.6 kVA; charging spread over the night takes far less. */
    @Test
    void managedChargingComesForNothing() {
        ServiceAdvice advice = advice(110);
        assertEquals(OptionalInt.of(1), advice.connectedFrom());
        assertEquals(OptionalInt.empty(), advice.plannedFrom());
        ServiceAdvice.Remedy managed = of(advice, ServiceAdvice.Kind.MANAGED_CHARGING).orElseThrow();
        assertEquals(0, managed.costPerYear(), 0);
        assertTrue(managed.loadKva() < 110);
    }

    @Test
    void anUpgradeIsOrderedInTime() {
        DepotInput.SiteWork larger = new DepotInput.SiteWork("Larger", 118_000, 30,
                Optional.of(new DepotInput.Upgrade(750, 800, 14)));
        DepotInput.SiteWork tooSmall = new DepotInput.SiteWork("Too small", 10_000, 30,
                Optional.of(new DepotInput.Upgrade(115, 800, 14)));
        ServiceAdvice advice = advice(110, larger, tooSmall);
        List<ServiceAdvice.Remedy> upgrades = advice.remedies().stream().filter(r -> r.kind() == ServiceAdvice.Kind.UPGRADE).toList();
        assertEquals(List.of("Larger"), upgrades.stream().map(ServiceAdvice.Remedy::words).toList());
        assertEquals(OptionalInt.of(1 - 2), upgrades.get(0).orderYear());
        assertEquals(118_000 * DiscountFactor.capitalRecovery(study.money().rates().real(), 30), upgrades.get(0).costPerYear(), 1e-6);
        assertTrue(advice.remedies().get(0).costPerYear() <= upgrades.get(0).costPerYear(), "cheapest first");
    }

    /** The building alone takes 84.2 kVA: nothing but a larger service helps when the transformer is smaller. */
    @Test
    void aServiceThatTheBuildingFillsNeedsAnUpgrade() {
        DepotInput.SiteWork larger = new DepotInput.SiteWork("Larger", 118_000, 30,
                Optional.of(new DepotInput.Upgrade(750, 800, 14)));
        ServiceAdvice advice = advice(80, larger);
        assertEquals(OptionalInt.of(0), advice.plannedFrom());
        assertEquals(List.of(ServiceAdvice.Kind.UPGRADE), advice.remedies().stream().map(ServiceAdvice.Remedy::kind).toList());
    }

    @Test
    void aBatteryCarriesWhatTheServiceDoesNot() {
        ServiceAdvice.Remedy battery = of(advice(95), ServiceAdvice.Kind.BATTERY).orElseThrow();
        assertTrue(battery.words().startsWith("Battery of ") && battery.costPerYear() > 0, battery.words());
    }

    /** Ordered at the start of year 1 and 14 months under way, the larger transformer is there from year 3. */
    @Test
    void anOrderedUpgradeCarriesNothingBeforeItIsInService() {
        StudyInput small = onService(with(TinyDistrict.electricPlan().ports(), List.of(new PlanInput.WorkOrder(1, 0, List.of()))),
                110, larger(14));
        PlanResult plan = TinyDistrict.evaluated(small, DutyTable.of(small.duty()), 1);
        assertEquals(List.of(110.0, 110.0, 110.0, 750.0), plan.service().stream().map(s -> s.transformerKva()).toList());
    }

    /** Two ports overload 110 kVA in year 1; in year 2 four stand behind a service that carries them. */
    @Test
    void remediesAreJudgedWhereTheServiceIsMostOverloaded() {
        PlanInput plan = with(List.of(new PlanInput.PortPurchase(1, 0, 2, List.of()), new PlanInput.PortPurchase(2, 0, 2, List.of())),
                List.of(new PlanInput.WorkOrder(2, 0, List.of())));
        StudyInput small = onService(plan, 110, larger(0));
        ServiceAdvice advice = ServiceAdvice.of(small, TinyDistrict.evaluated(small, DutyTable.of(small.duty()), 1), Progress.NONE);
        assertEquals(1, advice.year());
        assertEquals((80 + 2 * 19.2) / 0.95, of(advice, ServiceAdvice.Kind.UPGRADE).orElseThrow().loadKva(), 1e-9);
    }

    /** Electric buses, no port yet, and a building that alone overloads the service. */
    @Test
    void aPlanWithoutPortsHasNoOtherPorts() {
        StudyInput small = onService(with(List.of(), List.of()), 80, larger(14));
        ServiceAdvice advice = ServiceAdvice.of(small, TinyDistrict.evaluated(small, DutyTable.of(small.duty()), 1), Progress.NONE);
        assertEquals(List.of(ServiceAdvice.Kind.UPGRADE), advice.remedies().stream().map(ServiceAdvice.Remedy::kind).toList());
    }

    /** A building that draws 140 kW once in July, in which no bus drives, asks for a battery of 140 - 110 * 0.95 kW. */
    @Test
    void aBatteryCarriesTheBuildingOnDaysWithoutService() {
        double[] day = new double[96];
        Arrays.fill(day, 60);
        double[] peak = day.clone();
        Arrays.fill(peak, 40, 48, 140);
        List<double[]> days = Collections.nCopies(12, day);
        List<double[]> peaks = IntStream.range(0, 12).mapToObj(month -> month == JULY ? peak : day).toList();
        ServiceAdvice advice = advice(withoutJuly(), new BuildingLoad(days, days, peaks));
        String words = of(advice, ServiceAdvice.Kind.BATTERY).orElseThrow().words();
        assertTrue(words.contains(String.format(Locale.ROOT, "%.0f kW beside", 140 - 110 * 0.95)), words);
    }

    private StudyInput withoutJuly() {
        List<Integer> school = IntStream.range(0, 12).map(month -> month == JULY ? 0 : 15).boxed().toList();
        List<RunInput> runs = List.of(SampleBus.run("AM", 390, 70, 24, 20, 25, 64, 60, school));
        DutyInput duty = study.duty();
        List<RouteInput> routes = duty.routes().stream()
                .map(r -> new RouteInput(r.name(), r.bodyType(), runs, r.energyModel())).toList();
        return TinyDistrict.withDuty(study, new DutyInput(duty.climate(), duty.style(), duty.riderMassKg(), routes,
                duty.vehicles(), duty.habit(), duty.measured()));
    }

    private static ServiceAdvice advice(StudyInput study, BuildingLoad building) {
        ChargingRules spread = study.depot().charging();
        ChargingRules rules = new ChargingRules(spread.rule(), spread.stepMin(), building, spread.swaps(), spread.swapCost(),
                spread.battery());
        DepotInput depot = study.depot();
        StudyInput small = TinyDistrict.withDepot(study, new DepotInput(depot.ports(), depot.works(),
                new ServiceInput(480, 800, 110, 0.95, 80), depot.window(), depot.metering(), depot.alternatives(), rules));
        return ServiceAdvice.of(small, TinyDistrict.evaluated(small, DutyTable.of(small.duty()), 1), Progress.NONE);
    }

    /** Prices stated three years before the base date, when money was worth a tenth more, that of a battery among them. */
    @Test
    void allRemediesCostMoneyOfTheBaseDate() {
        Map<ServiceAdvice.Kind, Double> now = costs(110, 1, 800);
        Map<ServiceAdvice.Kind, Double> then = costs(110, 1.1, 800);
        for (ServiceAdvice.Kind kind : Set.of(ServiceAdvice.Kind.WITHIN_THE_SERVICE, ServiceAdvice.Kind.OTHER_PORTS, ServiceAdvice.Kind.UPGRADE)) {
            assertTrue(Math.abs(now.get(kind)) > 0.01, kind + " " + now);
            assertEquals(1.1 * now.get(kind), then.get(kind), 1e-9, kind.name());
        }
        double billed = costs(95, 1, 0).get(ServiceAdvice.Kind.BATTERY);
        double withBattery = costs(95, 1, 800).get(ServiceAdvice.Kind.BATTERY);
        assertTrue(billed > 1 && withBattery - billed > 1, billed + " of " + withBattery);
        assertEquals(1.1 * withBattery, costs(95, 1.1, 800).get(ServiceAdvice.Kind.BATTERY), 1e-6);
    }

    private Map<ServiceAdvice.Kind, Double> costs(double transformerKva, double inflation, double batteryPrice) {
        PriceDeck deck = study.prices();
        DepotInput depot = study.depot();
        ChargingRules spread = depot.charging();
        ChargingRules rules = new ChargingRules(spread.rule(), spread.stepMin(), spread.building(), spread.swaps(), spread.swapCost(),
                new BatteryOffer(batteryPrice, 0.25, 12));
        StudyInput small = TinyDistrict.withDepot(study.at(new PriceDeck(deck.fuels(), deck.exhaustFluid(), deck.pack(), Map.of(),
                PricePath.FLAT.stated(3, inflation))), new DepotInput(depot.ports(), List.of(larger(14)),
                        new ServiceInput(480, 800, transformerKva, 0.95,
                                80),
                        depot.window(), depot.metering(), depot.alternatives(), rules));
        PlanInput plan = with(TinyDistrict.electricPlan().ports(), List.of());
        small = TinyDistrict.withPlans(small, study.plans().get(0), plan);
        return ServiceAdvice.of(small, TinyDistrict.evaluated(small, DutyTable.of(small.duty()), 1), Progress.NONE).remedies().stream()
                .collect(Collectors.toMap(ServiceAdvice.Remedy::kind, ServiceAdvice.Remedy::costPerYear));
    }
}
