package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.tariff.BillIndex;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.yard.YardYear;

/**
 * Fixed charges of a year's bills under a tariff with a minimum. What lifts a bill to the minimum shrinks as the
 * charges rise, so it
 * is no quantity at a price.
 *
 * @param yard the yard's year
 */
record LiftedCharges(YardYear yard) implements Amount {

    @Override
    public double at(PriceBook book, int year, CostCategory category) {
        return yard.parts(index(book, year, category)).fixed();
    }

    private static BillIndex index(PriceBook book, int year, CostCategory category) {
        return new BillIndex(book.at(PriceKind.ENERGY_CHARGES.one(), year, CostCategory.ELECTRIC_ENERGY),
                book.at(PriceKind.DEMAND_CHARGES.one(), year, CostCategory.ELECTRIC_DEMAND),
                book.at(PriceKind.FIXED_CHARGES.one(), year, category));
    }

    @Override
    public boolean linear() {
        return false;
    }

    @Override
    public void terms(double factor, int year, CostCategory category, Terms terms) {
        throw new IllegalStateException("Charges lifted to a minimum are no sum of quantities at prices");
    }

    @Override
    public Derivation why(PriceBook book, int year, CostCategory category) {
        return Derivation.of("fixed charges, and what lifts the year's bills to the minimum", at(book, year, category), Derivation.MONEY,
                "each month's charges at the prices of the year, then the minimum at the price of fixed charges",
                new BillWhy(yard, BillParts::fixed).at(index(book, year, category)).of("bills at the prices of the year"),
                book.why(PriceKind.ENERGY_CHARGES.one(), year, CostCategory.ELECTRIC_ENERGY),
                book.why(PriceKind.DEMAND_CHARGES.one(), year, CostCategory.ELECTRIC_DEMAND),
                book.why(PriceKind.FIXED_CHARGES.one(), year, category));
    }
}
