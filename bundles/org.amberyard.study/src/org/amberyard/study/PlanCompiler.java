package org.amberyard.study;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.SecondHand;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.depot.SiteWork;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.meta.UsedBus;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;

/** Compiles plans. */
final class PlanCompiler {
    private final Study study;
    private final int baseYear;
    private final Places<VehicleType> types;
    private final Places<Bus> buses;
    private final Places<PortType> ports;
    private final Places<SiteWork> works;
    private final Places<Programme> programmes;

    PlanCompiler(Study study, Places<VehicleType> types) {
        this.study = study;
        this.baseYear = study.getSettings().getBaseYear();
        this.types = types;
        this.buses = new Places<>(study.getBuses());
        this.ports = new Places<>(study.getDepot().getPortTypes());
        this.works = new Places<>(DepotCompiler.works(study.getDepot()));
        this.programmes = new Places<>(study.getProgrammes());
    }

    List<PlanInput> plans() {
        return study.getPlans().stream().map(this::plan).toList();
    }

    private PlanInput plan(Plan plan) {
        return new PlanInput(plan.getName(), plan.getReplacements().stream().filter(s -> studied(s.getYear())).map(this::replacement).toList(),
                plan.getPortPurchases().stream().filter(s -> begun(s.getYear())).map(this::purchase).toList(),
                plan.getWorkOrders().stream().filter(s -> begun(s.getYear())).map(this::order).toList(),
                plan.getOneOffCosts().stream().filter(s -> studied(s.getYear())).map(this::oneOff).toList(),
                plan.isCertainAwardsOnly(), new FinancingCompiler(study.getSettings()).payment(plan));
    }

    /** Steps outside the years of the study have no effect, as the finding on them says. */
    private boolean studied(int calendarYear) {
        return calendarYear >= baseYear && begun(calendarYear);
    }

    /** Ports and works of the years before the base year stand already. */
    private boolean begun(int calendarYear) {
        return calendarYear - baseYear < study.getSettings().getHorizonYears();
    }

    private PlanInput.Replacement replacement(Replacement step) {
        return new PlanInput.Replacement(step.getYear() - baseYear, buses.of(step.getBus()),
                types.ofOptional(step.getNewType()), buses.ofOptional(step.getCascadeTo()),
                programmes(step.getProgrammes()), used(step));
    }

    private static Optional<SecondHand> used(Replacement step) {
        return UsedBus.isBoughtBy(step) ? Optional.of(new SecondHand(step.getUsedAgeYears(), step.getUsedOdometerKm(),
                step.getUsedPrice(), step.getNewType() instanceof ElectricType ? step.getUsedHealth() : 1)) : Optional.empty();
    }

    private PlanInput.PortPurchase purchase(PortPurchase step) {
        return new PlanInput.PortPurchase(step.getYear() - baseYear, ports.of(step.getPortType()), step.getCount(),
                programmes(step.getProgrammes()));
    }

    private PlanInput.WorkOrder order(WorkOrder step) {
        return new PlanInput.WorkOrder(step.getYear() - baseYear, works.of(step.getWork()),
                programmes(step.getProgrammes()));
    }

    private PlanInput.OneOff oneOff(OneOffCost cost) {
        return new PlanInput.OneOff(cost.getYear() - baseYear, cost.getName(), cost.getAmount(),
                programmes(cost.getProgrammes()));
    }

    private List<Integer> programmes(List<Programme> named) {
        return named.stream().map(programmes::of).toList();
    }
}
