package org.amberyard.model.validation;

import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.study.Study;

/** A depot offers a port type and time to charge. */
final class DepotRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Depot depot = study.getDepot();
        if (depot == null) {
            return;
        }
        if (depot.getPortTypes().isEmpty()) {
            findings.error(depot, Literals.DEPOT__PORT_TYPES, "it has no port type; add one that plans can buy.");
        }
        if (depot.getChargeWindowStartMin() == depot.getChargeWindowEndMin()) {
            findings.error(depot, Literals.DEPOT__CHARGE_WINDOW_END_MIN, "charging starts and ends at "
                    + findings.value(depot, Literals.DEPOT__CHARGE_WINDOW_START_MIN)
                    + "; enter an end that leaves time to charge.");
        }
    }
}
