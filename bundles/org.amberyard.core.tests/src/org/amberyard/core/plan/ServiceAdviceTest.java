package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.progress.Progress;
import org.junit.jupiter.api.Test;

/** The tiny district on a service that its building nearly fills; invented. */
class ServiceAdviceTest {
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
}
