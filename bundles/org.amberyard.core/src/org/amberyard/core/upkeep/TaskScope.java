package org.amberyard.core.upkeep;

/**
 * Buses that a task applies to.
 *
 * @param powertrain what drives them
 * @param bodyTypes trade letters of the body types, as in {@code "AC"}; empty for all
 */
public record TaskScope(Powertrain powertrain, String bodyTypes) {

    /** True when the task applies to a bus of a powertrain and a body type. */
    public boolean covers(Powertrain bus, String bodyType) {
        return powertrain.covers(bus) && (bodyTypes.isEmpty() || bodyTypes.contains(bodyType));
    }
}
