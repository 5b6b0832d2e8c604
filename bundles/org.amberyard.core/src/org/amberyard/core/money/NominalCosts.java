package org.amberyard.core.money;

/**
 * The costs of a ledger in money of the time at which each falls, whatever money the study states. What is borrowed, owed,
 * taxed and appropriated is fixed in such money.
 *
 * @param ledger the ledger
 */
public record NominalCosts(CostLedger ledger) {

    /** One cell. */
    public double amount(int row, int year, CostCategory category) {
        return ledger.amount(row, year, category) * inflation(year, category);
    }

    /** Sum over the rows of one year and category. */
    public double amount(int year, CostCategory category) {
        return ledger.amount(year, category) * inflation(year, category);
    }

    private double inflation(int year, CostCategory category) {
        MoneyRules rules = ledger.rules();
        return rules.basis() == MoneyBasis.NOMINAL ? 1 : rules.rates().inflationFactor(rules.time(category, year));
    }
}
