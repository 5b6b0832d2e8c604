package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.charging.PortOption;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.tariff.BillIndex;
import org.amberyard.core.yard.PortChoice;
import org.amberyard.core.yard.YardYear;

/**
 * What remedies of an electric service cost per year at the prices of the base date, in money of that date. A study may state its
 * prices in money of an earlier year. A battery beside the building is priced as the site's other works are.
 */
record RemedyPrices(StudyInput study) {

    private double atBaseDate(PriceDeck.Subject subject) {
        return study.prices().path(subject).atBaseDate();
    }

    private BillIndex bills() {
        return new BillIndex(atBaseDate(PriceDeck.Subject.ELECTRIC_ENERGY), atBaseDate(PriceDeck.Subject.ELECTRIC_DEMAND),
                atBaseDate(PriceDeck.Subject.ELECTRIC_FIXED));
    }

    private double recovery(double lifeYears) {
        return DiscountFactor.capitalRecovery(study.money().rates().real(), lifeYears);
    }

    /** The bill of charging. */
    double bill(YardYear yard) {
        return yard.parts(bills()).total();
    }

    /** Ports, plug swaps and the bill; the ports are some of those on offer. */
    double ports(PortChoice choice) {
        double upkeep = atBaseDate(PriceDeck.Subject.UPKEEP);
        List<PortOption> offered = PortOffers.of(study, atBaseDate(PriceDeck.Subject.INFRASTRUCTURE), upkeep).options();
        double cost = upkeep * choice.mix().swapCost() + bills().of(choice.bill()).total();
        for (int option = 0; option < offered.size(); option++) {
            cost += choice.mix().counts().get(option) * offered.get(option).costPerYear();
        }
        return cost;
    }

    /** A battery of a size. */
    double battery(double kwh) {
        BatteryOffer offer = study.depot().charging().battery();
        return atBaseDate(PriceDeck.Subject.INFRASTRUCTURE) * kwh * offer.pricePerKwh() * recovery(offer.lifeYears());
    }

    /** A work at the site. */
    double work(DepotInput.SiteWork work) {
        return atBaseDate(PriceDeck.Subject.INFRASTRUCTURE) * work.price() * recovery(work.lifeYears());
    }
}
