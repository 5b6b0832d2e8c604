package org.amberyard.core.money;

import java.util.Map;

/**
 * A funding programme; its amounts are in money of the year in which it pays.
 *
 * @param name name
 * @param firstYear first year of the study in which it pays
 * @param lastYear last year of the study in which it pays
 * @param maxBuses most buses paid for in the whole study
 * @param infrastructureShare share paid of ports and site works
 * @param capPerPort most paid per port
 * @param scrapsOldBus true when the outgoing bus must be scrapped, so that it brings no sale
 * @param busAwards what is paid per electric bus, by trade letter of the body type
 */
public record Programme(String name, int firstYear, int lastYear, int maxBuses, double infrastructureShare,
        double capPerPort, boolean scrapsOldBus, Map<String, BusAward> busAwards) {

    /**
     * What is paid for one bus.
     *
     * @param amount fixed amount
     * @param priceDifferenceShare share of the difference to the like-for-like bus
     * @param cap most that is paid
     */
    public record BusAward(double amount, double priceDifferenceShare, double cap) {
    }

    public Programme {
        busAwards = Map.copyOf(busAwards);
    }

    /** True when it pays in a year of the study. */
    public boolean paysIn(int year) {
        return year >= firstYear && year <= lastYear;
    }

    /** Paid for one electric bus; never more than its price. All money is of the year of payment. */
    public double forBus(String bodyType, double price, double likeForLikePrice) {
        BusAward award = busAwards.get(bodyType);
        if (award == null) {
            return 0;
        }
        double difference = Math.max(0, price - likeForLikePrice);
        double asked = award.amount() + award.priceDifferenceShare() * difference;
        return Math.min(price, Math.min(award.cap(), asked));
    }

    /** Paid for a number of ports at a cost. All money is of the year of payment. */
    public double forPorts(double cost, int ports) {
        return Math.min(infrastructureShare * cost, capPerPort * ports);
    }

    /** Paid for a site work at a cost. */
    public double forWork(double cost) {
        return infrastructureShare * cost;
    }
}
