package org.amberyard.core.plan;

import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** What is paid for a bus that a step of a plan buys used: its own price, which moves as those of new buses of its kind do. */
final class UsedPrice {
    private final StudyInput study;
    private final PlanInput plan;
    private final FleetEvent.Bought bought;
    private final SecondHand used;

    UsedPrice(StudyInput study, PlanInput plan, FleetEvent.Bought bought, SecondHand used) {
        this.study = study;
        this.plan = plan;
        this.bought = bought;
        this.used = used;
    }

    Amount amount() {
        return Amount.of(used.price(), path(), this::input);
    }

    /** The price of the path on which it moves. */
    UnitPrice path() {
        return PriceKind.BUS_PRICES.of(bought.vehicle().type());
    }

    Derivation input() {
        String step = plan.name() + " / " + (study.baseYear() + bought.year()) + " " + study.buses().get(bought.place()).name();
        return Derivation.input("price of " + bought.vehicle().unit() + ", a used bus", used.price(), Derivation.MONEY,
                new InputRef("Replacement", step, "usedPrice"));
    }
}
