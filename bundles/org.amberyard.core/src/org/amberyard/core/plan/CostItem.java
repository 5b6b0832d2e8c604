package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;

/**
 * One cost of a plan.
 *
 * @param row row of the ledger
 * @param year year, counted from the base year
 * @param category category
 * @param amount what it comes to
 */
record CostItem(int row, int year, CostCategory category, Amount amount) {
}
