package org.amberyard.core.funding;

/**
 * What a programme asks for one electric bus of one body type: a fixed amount, a share of its price and a share of the
 * difference to the like-for-like engine bus, together.
 *
 * @param amount fixed amount, money of the year of purchase
 * @param priceShare share of the price
 * @param differenceShare share of the difference to the like-for-like bus
 * @param cap most that is paid; infinite for none
 */
public record BusAward(double amount, double priceShare, double differenceShare, double cap) {
}
