package org.amberyard.core.charging;

import org.amberyard.core.depot.Port;

/**
 * A type of port that a yard may buy.
 *
 * @param port the type
 * @param costPerYear capital and fees of one port, money per year
 */
public record PortOption(Port port, double costPerYear) {

    /** One port of the type. */
    PortUnit unit() {
        return new PortUnit(port, port.plugs());
    }
}
