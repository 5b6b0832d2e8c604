package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.depot.Port;

/** The tiny district with a further port type, which its electric plan buys. */
final class TinyPorts {
    private TinyPorts() {
    }

    static StudyInput withPort(StudyInput study, Port port) {
        DepotInput depot = study.depot();
        List<Port> ports = new ArrayList<>(depot.ports());
        ports.add(port);
        DepotInput more = new DepotInput(ports, depot.works(), depot.service(), depot.window(), depot.metering(),
                depot.alternatives(), depot.charging());
        PlanInput plan = study.plans().get(1);
        List<PlanInput.PortPurchase> bought = plan.ports().stream()
                .map(p -> new PlanInput.PortPurchase(p.year(), ports.size() - 1, p.count(), p.programmes())).toList();
        PlanInput changed = new PlanInput(plan.name(), plan.replacements(), bought, plan.works(), plan.oneOffs());
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), more, study.prices(), study.funding(), study.air(), study.rules(),
                List.of(study.plans().get(0), changed), study.baseline(), study.trips());
    }
}
