package org.amberyard.core.plan;

import org.amberyard.core.charging.PortOption;
import org.amberyard.core.depot.Port;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.yard.PortOffer;

/** What the ports of a study cost per year: capital recovery of hardware and installation over their lives, and the fee. */
final class PortOffers {
    private PortOffers() {
    }

    static PortOffer of(StudyInput study) {
        return of(study, 1, 1);
    }

    /**
     * The same at other prices.
     *
     * @param built factor on hardware and installation
     * @param kept factor on fees and plug swaps
     */
    static PortOffer of(StudyInput study, double built, double kept) {
        return new PortOffer(study.depot().ports().stream()
                .map(port -> new PortOption(port, built * capitalPerYear(study, port) + kept * port.feePerYear())).toList(),
                kept * study.depot().charging().swapCost());
    }

    private static double capitalPerYear(StudyInput study, Port port) {
        double rate = study.money().rates().real();
        return port.hardwarePrice() * DiscountFactor.capitalRecovery(rate, port.lifeYears())
                + port.installationPrice() * DiscountFactor.capitalRecovery(rate, port.installationLifeYears());
    }
}
