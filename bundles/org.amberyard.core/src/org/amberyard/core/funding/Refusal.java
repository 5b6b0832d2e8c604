package org.amberyard.core.funding;

/**
 * A rule by which a programme takes no part in a purchase.
 *
 * @param limit kind of rule
 * @param field field of the programme that states it, as the model names it
 * @param words what the rule says of the purchase, as a clause
 */
public record Refusal(Limit limit, String field, String words) {
}
