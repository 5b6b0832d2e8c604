package org.amberyard.core.plan;

/**
 * The price of one thing.
 *
 * @param kind what has the price
 * @param of which fuel, vehicle type, port type or site work; 0 where the kind is one thing
 */
record UnitPrice(PriceKind kind, int of) {
}
