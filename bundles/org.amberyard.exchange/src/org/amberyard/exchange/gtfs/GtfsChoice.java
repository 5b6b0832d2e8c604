package org.amberyard.exchange.gtfs;

import java.util.Set;

/**
 * What of a schedule is wanted.
 *
 * @param days days on which the vehicles do what is imported
 * @param blocks ids of the blocks
 */
public record GtfsChoice(GtfsDays days, Set<String> blocks) {

    public GtfsChoice {
        blocks = Set.copyOf(blocks);
    }
}
