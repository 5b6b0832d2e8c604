package org.amberyard.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.ChargingRules;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.StudyInput;

/** A study many times the size of another: each bus and each step of a plan stands in it many times. */
final class LargeFleet {
    private final StudyInput study;
    private final int times;

    LargeFleet(StudyInput study, int times) {
        this.study = study;
        this.times = times;
    }

    /** The large study, charged at once so that its yard is planned in a moment. */
    StudyInput of(int plans, int years) {
        List<PlanInput> all = IntStream.range(0, plans).mapToObj(i -> large(study.plans().get(i % study.plans().size()), i)).toList();
        return new StudyInput(study.name(), study.currency(), study.baseYear(), years, study.money(), study.duty(), study.types(),
                buses(), depot(), study.prices(), study.funding(), study.air(), study.rules(), all, study.baseline(), List.of());
    }

    private List<BusInput> buses() {
        List<BusInput> buses = new ArrayList<>();
        for (int copy = 0; copy < times; copy++) {
            for (BusInput bus : study.buses()) {
                buses.add(new BusInput(bus.name() + "/" + copy, bus.role(), bus.type(), bus.route(), bus.inServiceYear(), bus.odometerKm(),
                        bus.otherKmPerYear(), bus.idleHoursPerYear(), bus.measuredKmPerL(), bus.retirementYear(), bus.measuredPack()));
            }
        }
        return buses;
    }

    private DepotInput depot() {
        DepotInput depot = study.depot();
        ChargingRules rules = depot.charging();
        return new DepotInput(depot.ports(), depot.works(), depot.service(), depot.window(), depot.metering(), List.of(),
                new ChargingRules(rules.rule().with(ChargePolicy.AT_ONCE), rules.stepMin(), rules.building(), rules.swaps(),
                        rules.swapCost(), rules.battery()));
    }

    private PlanInput large(PlanInput plan, int number) {
        List<PlanInput.Replacement> steps = new ArrayList<>();
        List<PlanInput.PortPurchase> ports = new ArrayList<>();
        for (int copy = 0; copy < times; copy++) {
            int offset = copy * study.buses().size();
            plan.replacements().forEach(step -> steps.add(new PlanInput.Replacement(step.year(), offset + step.place(), step.newType(),
                    step.cascadeTo().isPresent() ? OptionalInt.of(offset + step.cascadeTo().getAsInt()) : OptionalInt.empty(),
                    step.programmes(), Optional.empty())));
        }
        plan.ports().forEach(p -> ports.add(new PlanInput.PortPurchase(p.year(), p.port(), times * p.count(), p.programmes())));
        return new PlanInput(plan.name() + " " + number, steps, ports, plan.works(), plan.oneOffs(), plan.certainAwardsOnly(),
                plan.payment());
    }
}
