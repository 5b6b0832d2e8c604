package org.amberyard.workbench.plan;

import java.util.Optional;
import org.amberyard.model.vehicles.VehicleType;

/**
 * What stands in a place of the fleet in a year.
 *
 * @param kind how it has come there
 * @param type its type; null where no bus stands
 * @param from place that it has come from, where it has moved
 * @param settled true when it is known from results; false when it follows from the steps of the plan alone, as long as the
 *            results are not there
 */
record Standing(Kind kind, VehicleType type, String from, boolean settled) {

    /** How a bus has come to stand in its place. */
    enum Kind {
        /** It stood there before. */
        KEPT(""),
        /** Bought by a step of the plan. */
        BY_PLAN("●"),
        /** Bought by the rule of its type. */
        BY_RULE("○"),
        /** Moved there from another place. */
        MOVED("↳"),
        /** No bus: a step of the plan has retired it. */
        RETIRED("×"),
        /** No bus. */
        NONE("");

        private final String sign;

        Kind(String sign) {
            this.sign = sign;
        }

        /** Sign that tells the kind without colour; blank where nothing happens. */
        String sign() {
            return sign;
        }
    }

    Optional<VehicleType> bus() {
        return Optional.ofNullable(type);
    }
}
