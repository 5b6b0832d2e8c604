package org.amberyard.core.plan;

import java.util.EnumSet;
import java.util.Set;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.funding.Withheld;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.NominalCosts;

/**
 * Purchases of a plan less what programmes award for them, whenever that is paid; money of the purchase.
 *
 * @param costs costs of the plan
 * @param funding funding of the plan
 */
record NetPurchases(NominalCosts costs, PlanFunding funding) {
    private static final Set<Purchase.Kind> INFRASTRUCTURE = EnumSet.of(Purchase.Kind.PORTS, Purchase.Kind.SITE_WORK);

    /** Buses bought for a place in a year. */
    double buses(int place, int year) {
        double awarded = funding.awards().lines().stream().filter(line -> line.purchase().row() == place
                && line.purchase().kind() == Purchase.Kind.BUS && line.purchase().year() == year)
                .mapToDouble(FundedLine::funded).sum();
        return Math.max(0, costs.amount(place, year, CostCategory.BUS_PURCHASE) - awarded);
    }

    /** Ports and site works of a year, renewals included. */
    double infrastructure(int year) {
        double bought = costs.amount(year, CostCategory.PORTS) + costs.amount(year, CostCategory.SITE_WORKS);
        return Math.max(0, bought - INFRASTRUCTURE.stream().mapToDouble(kind -> awarded(kind, year)).sum());
    }

    /** Training and tools of a year. */
    double training(int year) {
        return Math.max(0, costs.amount(year, CostCategory.TRAINING_AND_TOOLS) - awarded(Purchase.Kind.TRAINING, year));
    }

    private double awarded(Purchase.Kind kind, int year) {
        return funding.awards().lines().stream().filter(line -> line.purchase().kind() == kind && line.purchase().year() == year)
                .mapToDouble(FundedLine::funded).sum();
    }

    /** Awards that lowered the purchases but are withheld from a year on, because their bus leaves service at its start. */
    double withheld(int year) {
        return funding.withheld().stream().filter(w -> w.year() == year).mapToDouble(Withheld::amount).sum();
    }
}
