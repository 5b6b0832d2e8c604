package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.why.Derivation;

/** Prices of a study of which some stand in an array; it tells only what they come to, not how. */
final class PointBook extends PriceBook {
    private final PricePoints points;
    private final double[] prices;
    private boolean moved;

    PointBook(PricePoints points, double[] prices) {
        super(points.book().study());
        this.points = points;
        this.prices = prices;
    }

    @Override
    double at(UnitPrice price, int year, CostCategory category) {
        int place = points.place(price, year, category.time());
        if (place == PricePoints.STAYS) {
            return super.at(price, year, category);
        }
        moved = true;
        return place < prices.length ? prices[place] : super.at(price, year, category);
    }

    @Override
    Derivation why(UnitPrice price, int year, CostCategory category) {
        return Derivation.of("price", at(price, year, category), "", "");
    }

    /** True when a price that moves has been asked for. */
    boolean asksWhatMoves() {
        return moved;
    }
}
