package org.amberyard.core.funding;

import java.util.Map;

/**
 * What a programme pays for.
 *
 * @param buses per electric bus, by trade letter of the body type
 * @param ports for ports
 * @param works for site works
 * @param training for training and tools
 * @param afterOthers true when its shares are taken of what the programmes before it leave, as the basis of a tax credit is
 */
public record Offer(Map<String, BusAward> buses, PortAward ports, ShareAward works, ShareAward training,
        boolean afterOthers) {

    public Offer {
        buses = Map.copyOf(buses);
    }
}
