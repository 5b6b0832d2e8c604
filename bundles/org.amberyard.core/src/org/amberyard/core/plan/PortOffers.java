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
        return new PortOffer(study.depot().ports().stream().map(port -> new PortOption(port, perYear(study, port)))
                .toList(), study.depot().charging().swapCost());
    }

    private static double perYear(StudyInput study, Port port) {
        double rate = study.money().rates().real();
        return port.hardwarePrice() * DiscountFactor.capitalRecovery(rate, port.lifeYears())
                + port.installationPrice() * DiscountFactor.capitalRecovery(rate, port.installationLifeYears())
                + port.feePerYear();
    }
}
