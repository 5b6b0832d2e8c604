package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ServiceUpgrade;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** A depot offers a port type and time to charge, in steps that make up an hour, and upgrades enlarge what is there. */
final class DepotRule implements Rule {
    private static final List<Integer> STEPS_MIN = List.of(5, 10, 15, 20, 30, 60);

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
        } else {
            checkHours(depot, findings);
        }
        if (!STEPS_MIN.contains(depot.getStepMin())) {
            findings.error(depot, Literals.DEPOT__STEP_MIN, findings.fact(depot, Literals.DEPOT__STEP_MIN)
                    + "; it must be 5, 10, 15, 20, 30 or 60 min.");
        }
        checkCap(depot, findings);
        depot.getUpgrades().forEach(upgrade -> check(upgrade, depot, findings));
    }

    /** A cap is a number, and counts for the size of the service by what keeps it. */
    private static void checkCap(Depot depot, Findings findings) {
        boolean capped = depot.getChargingPolicy() == ChargingPolicy.CAPPED;
        if (capped && depot.getChargingCapKw() <= 0) {
            findings.error(depot, Literals.DEPOT__CHARGING_CAP_KW, "charging is capped but no cap is given; enter the power that all charging "
                    + "together may draw, or choose another policy.");
        } else if (capped && (depot.getLoadManagement() == null || depot.getLoadManagement().isBlank())) {
            findings.warning(depot, Literals.DEPOT__LOAD_MANAGEMENT, "charging is capped but no listed load-management system that keeps the cap is "
                    + "named; without one all ports at full power count for the size of the service. Local code and a licensed electrician decide.");
        }
    }

    /** Whoever enters hours of charging must not take them for kept where the policy chooses its own. */
    private static void checkHours(Depot depot, Findings findings) {
        boolean entered = depot.eIsSet(Literals.DEPOT__CHARGE_WINDOW_START_MIN) || depot.eIsSet(Literals.DEPOT__CHARGE_WINDOW_END_MIN);
        if (entered && depot.getChargingPolicy() != ChargingPolicy.SET_TIME) {
            findings.warning(depot, Literals.DEPOT__CHARGING_POLICY, "the hours of charging, " + findings.value(depot, Literals.DEPOT__CHARGE_WINDOW_START_MIN)
                    + " to " + findings.value(depot, Literals.DEPOT__CHARGE_WINDOW_END_MIN) + ", count under “" + ChargingPolicy.SET_TIME.getLiteral()
                    + "” only; under “" + depot.getChargingPolicy().getLiteral() + "” buses charge whenever they are plugged in.");
        }
    }

    private static void check(ServiceUpgrade upgrade, Depot depot, Findings findings) {
        checkRise(upgrade, Literals.SERVICE_UPGRADE__TRANSFORMER_KVA, depot, Literals.DEPOT__TRANSFORMER_KVA, findings);
        checkRise(upgrade, Literals.SERVICE_UPGRADE__BREAKER_A, depot, Literals.DEPOT__MAIN_BREAKER_A, findings);
    }

    private static void checkRise(ServiceUpgrade upgrade, EAttribute after, Depot depot, EAttribute today, Findings findings) {
        if ((double) upgrade.eGet(after) < (double) depot.eGet(today)) {
            findings.error(upgrade, after, findings.fact(upgrade, after) + ", below the " + findings.value(depot, today)
                    + " of today; enter the rating after the upgrade.");
        }
    }
}
