package org.amberyard.core.charging;

/**
 * What a month costs when charged at least cost.
 *
 * @param levelsKw demand up to which each demand charge is used, kW
 * @param energyCost energy, the load that cannot be moved included, money
 * @param demandCost demand charges, money
 * @param lowerBound cost below which no schedule comes, money
 */
public record LeastCostBill(double[] levelsKw, double energyCost, double demandCost, double lowerBound) {

    /** Cost of energy and demand, money. */
    public double cost() {
        return energyCost + demandCost;
    }

    /** How much the cost lies above the lower bound, money: rounding. */
    public double gap() {
        return cost() - lowerBound;
    }
}
