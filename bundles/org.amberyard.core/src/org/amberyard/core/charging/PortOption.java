package org.amberyard.core.charging;

import org.amberyard.core.depot.Port;

/**
 * A type of port that a yard may buy.
 *
 * @param port the type
 * @param plugs plugs of one port
 * @param costPerYear capital and fees of one port, money per year
 * @param most most ports of the type
 */
public record PortOption(Port port, int plugs, double costPerYear, int most) {
}
