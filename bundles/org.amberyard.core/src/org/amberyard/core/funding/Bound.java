package org.amberyard.core.funding;

import org.amberyard.core.why.Derivation;

/**
 * One of the limits of an award.
 *
 * @param limit kind of limit
 * @param words what it is, as a clause for tables and messages
 * @param amount most that it lets through, money of the year of purchase
 */
public record Bound(Limit limit, String words, Derivation amount) {

    /** A limit that lets nothing through. */
    static Bound refusal(Limit limit, String words) {
        return new Bound(limit, words, Derivation.of(words, 0, Derivation.MONEY, "pays nothing"));
    }
}
