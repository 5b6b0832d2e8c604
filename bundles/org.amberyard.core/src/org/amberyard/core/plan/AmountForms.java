package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;

/** Turns amounts into forms of prices. */
final class AmountForms {
    private final PricePoints points;

    AmountForms(PricePoints points) {
        this.points = points;
    }

    /** Adds a multiple of an amount in a year at the time of a category, constant money. */
    void add(Amount amount, double factor, int year, CostCategory category, PriceForm.Builder form) {
        amount.terms(factor, year, category, new Amount.Terms() {
            @Override
            public void add(double quantity, UnitPrice price, int at, CostCategory as, boolean insured) {
                points.add(insured(quantity, insured), price, at, as, form);
            }

            @Override
            public void addLesser(double times, Amount.Lesser lesser, int at, CostCategory as, boolean insured) {
                form.addLesser(insured(times, insured), of(lesser.one(), at, as), of(lesser.other(), at, as));
            }
        });
    }

    private double insured(double quantity, boolean insured) {
        return insured ? quantity * points.book().premiumRate() : quantity;
    }

    /** An amount by itself. */
    PriceForm of(Amount amount, int year, CostCategory category) {
        PriceForm.Builder form = new PriceForm.Builder();
        add(amount, 1, year, category, form);
        return form.build();
    }
}
