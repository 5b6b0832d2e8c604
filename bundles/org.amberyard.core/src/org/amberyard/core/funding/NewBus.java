package org.amberyard.core.funding;

import java.util.Optional;
import org.amberyard.core.why.Derivation;

/**
 * What programmes ask about a bus that is bought, new or used.
 *
 * @param unit its number
 * @param bodyType trade letter of its body type
 * @param electric true for an electric bus
 * @param used true when it is bought used
 * @param likeForLike price of the engine bus that would have been bought, money of the year of purchase
 * @param old bus whose place it takes, if one stood there
 * @param oneLeaves true when a bus leaves the fleet for it, be it the old one or one that the old one takes the place of
 */
public record NewBus(String unit, String bodyType, boolean electric, boolean used, Derivation likeForLike,
        Optional<OldBus> old, boolean oneLeaves) {
}
