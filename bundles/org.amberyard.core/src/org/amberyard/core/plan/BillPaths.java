package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.tariff.BillParts;

/**
 * Prices of the parts of a bill in one year over those of the base date, constant money.
 *
 * @param energy of what follows the energy
 * @param demand of what follows the demand
 * @param fixed of what follows neither
 */
public record BillPaths(double energy, double demand, double fixed) {

    /** The paths of a study in a year, counted from the base year. */
    public static BillPaths of(StudyInput study, int year) {
        return new BillPaths(index(study, PriceDeck.Subject.ELECTRIC_ENERGY, CostCategory.ELECTRIC_ENERGY, year),
                index(study, PriceDeck.Subject.ELECTRIC_DEMAND, CostCategory.ELECTRIC_DEMAND, year),
                index(study, PriceDeck.Subject.ELECTRIC_FIXED, CostCategory.ELECTRIC_FIXED, year));
    }

    private static double index(StudyInput study, PriceDeck.Subject subject, CostCategory category, int year) {
        return study.prices().index(subject, year, study.money().time(category, year));
    }

    /** A bill at base-date prices under the paths. */
    public BillParts of(BillParts bill) {
        return new BillParts(energy * bill.energy(), demand * bill.demand(), fixed * bill.fixed());
    }
}
