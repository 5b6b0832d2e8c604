package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.tariff.BillIndex;

/** Price paths of the parts of a bill. */
public final class BillPaths {
    private BillPaths() {
    }

    /** Prices in a year, counted from the base year, over those of the base date. */
    public static BillIndex of(StudyInput study, int year) {
        return new BillIndex(index(study, PriceDeck.Subject.ELECTRIC_ENERGY, CostCategory.ELECTRIC_ENERGY, year),
                index(study, PriceDeck.Subject.ELECTRIC_DEMAND, CostCategory.ELECTRIC_DEMAND, year),
                index(study, PriceDeck.Subject.ELECTRIC_FIXED, CostCategory.ELECTRIC_FIXED, year));
    }

    private static double index(StudyInput study, PriceDeck.Subject subject, CostCategory category, int year) {
        return study.prices().index(subject, year, study.money().time(category, year));
    }
}
