package org.amberyard.core.plan;

/**
 * Whether a bus whose pack is due gets another or retires, and how that was decided.
 *
 * @param replacement the replacement that was looked at
 * @param renewed the bus with its next pack
 * @param bound true where the plan still has a step for the place, so that the bus may not retire
 * @param retires true when it retires
 */
record PackDecision(FleetEvent.PackReplaced replacement, Vehicle renewed, boolean bound, boolean retires) {
}
