package org.amberyard.core.charging;

import java.util.Collections;
import java.util.List;
import org.amberyard.core.depot.Port;

/**
 * One port of the yard. Where it has several plugs, they share its power: every plug in use gets an equal part, and what one
 * bus cannot take goes to the others in equal parts; common practice of power-sharing cabinets, no source.
 *
 * @param port its type
 * @param plugs number of plugs that can be in use at once
 */
public record PortUnit(Port port, int plugs) {

    public PortUnit {
        if (plugs < 1) {
            throw new IllegalArgumentException("Port " + port.name() + " has " + plugs + " plugs but must have 1 or more");
        }
    }

    /** Several ports of a type. */
    public static List<PortUnit> of(Port port, int plugs, int count) {
        return Collections.nCopies(count, new PortUnit(port, plugs));
    }

    /** Power that a bus can draw at the meter while a number of buses share the port, kW. */
    double sharedKw(BusAcceptance bus, int sharing) {
        return Math.min(bus.meterKw(port), port.powerKw() / sharing);
    }
}
