package org.amberyard.core.funding;

import java.util.List;

/**
 * A line with what programmes pay for it, in the order in which they were applied.
 *
 * @param purchase the line
 * @param awards what each programme that the plan names for it asks and pays
 */
public record FundedLine(Purchase purchase, List<Award> awards) {

    public FundedLine {
        awards = List.copyOf(awards);
    }

    /** What programmes pay together. */
    public double funded() {
        return awards.stream().mapToDouble(Award::paid).sum();
    }

    /** What is left to pay from own money. */
    public double own() {
        return Math.max(0, purchase.cost() - funded());
    }
}
