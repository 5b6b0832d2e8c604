package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRules;

/**
 * What a cost of 1 adds to the present cost of a plan and to what must be appropriated in its year.
 *
 * @param money how amounts are stated and discounted
 */
record MoneyWeights(MoneyRules money) {

    /** To the present cost, of constant money. */
    double present(CostCategory category, int year) {
        return money.present(money.stated(1, category, year), category, year);
    }

    /** To the appropriation, of constant money; nothing of what is left at the end of the study. */
    double appropriation(CostCategory category, int year) {
        return category.time() == FlowTime.END ? 0 : money.rates().inflationFactor(money.time(category, year));
    }

    /** To the present cost, of money that the study states. */
    double presentOfStated(CostCategory category, int year) {
        return money.present(1, category, year);
    }

    /** To the appropriation, of money that the study states. */
    double appropriationOfStated(CostCategory category, int year) {
        return money.basis() == MoneyBasis.NOMINAL && category.time() != FlowTime.END ? 1 : appropriation(category, year);
    }
}
