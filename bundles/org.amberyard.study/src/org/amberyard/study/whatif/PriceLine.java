package org.amberyard.study.whatif;

import org.amberyard.core.plan.PriceField;

/**
 * A price that follows an uncertain input along a straight line.
 *
 * @param input place of the input
 * @param field the price
 * @param present the price where the input leaves the study as it is
 * @param atZero the price where the input is zero
 * @param slope what the price rises by for 1 of the input
 */
record PriceLine(int input, PriceField field, double present, double atZero, double slope) {

    double at(double value) {
        return Double.isNaN(value) ? present : atZero + slope * value;
    }
}
