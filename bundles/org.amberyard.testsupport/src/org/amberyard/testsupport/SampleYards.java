package org.amberyard.testsupport;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.plan.ChargingRules;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.PriceDeck;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.yard.Metering;

/** Districts whose yards are easy to follow by hand. */
public final class SampleYards {
    private SampleYards() {
    }

    /** The electric plan buys its ports but no bus; the building of 60 kW is on the same meter or not. */
    public static StudyInput portsOnly(StudyInput study, boolean shared) {
        List<PlanInput> plans = study.plans().stream()
                .map(p -> new PlanInput(p.name(), List.of(), p.ports(), p.works(), p.oneOffs())).toList();
        DepotInput depot = study.depot();
        Metering metering = new Metering(depot.metering().tariff(), shared, List.of(), OptionalInt.empty());
        return with(study, with(depot, metering, depot.charging()), study.prices(), plans);
    }

    /** Buses are charged at once, and electricity grows dearer: energy, demand and fixed charges each on a path of its own. */
    public static StudyInput atOnceOnPaths(StudyInput study) {
        ChargingRules old = study.depot().charging();
        ChargingRules charging = new ChargingRules(ChargeRule.of(ChargePolicy.AT_ONCE), old.stepMin(), old.building(), old.swaps(),
                old.swapCost(), old.battery());
        PriceDeck deck = study.prices();
        PriceDeck prices = new PriceDeck(deck.fuels(), deck.exhaustFluid(), deck.pack(), Map.of(
                PriceDeck.Subject.ELECTRIC_ENERGY, new PricePath(0.02, List.of()),
                PriceDeck.Subject.ELECTRIC_DEMAND, new PricePath(0.05, List.of()),
                PriceDeck.Subject.ELECTRIC_FIXED, new PricePath(-0.01, List.of())));
        return with(study, with(study.depot(), study.depot().metering(), charging), prices, study.plans());
    }

    private static DepotInput with(DepotInput depot, Metering metering, ChargingRules charging) {
        return new DepotInput(depot.ports(), depot.works(), depot.service(), depot.window(), metering, List.of(), charging);
    }

    private static StudyInput with(StudyInput study, DepotInput depot, PriceDeck prices, List<PlanInput> plans) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), depot, prices, study.funding(), study.air(), study.rules(), plans,
                study.baseline(), study.trips());
    }
}
