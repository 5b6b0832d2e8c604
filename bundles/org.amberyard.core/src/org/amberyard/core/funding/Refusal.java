package org.amberyard.core.funding;

/**
 * A rule by which a programme takes no part in a purchase.
 *
 * @param limit kind of rule
 * @param field field of the programme that states it, as the model names it
 * @param words what the rule says of the purchase, as a clause
 * @param notTold true where nothing speaks against the purchase but that nobody has told what the programme asks for
 */
public record Refusal(Limit limit, String field, String words, boolean notTold) {

    /** A rule that the purchase breaks. */
    public Refusal(Limit limit, String field, String words) {
        this(limit, field, words, false);
    }

    /** A rule of which nobody has told whether the purchase keeps it. */
    static Refusal notTold(String field, String words) {
        return new Refusal(Limit.CONDITION, field, words, true);
    }
}
