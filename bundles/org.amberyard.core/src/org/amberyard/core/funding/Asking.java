package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** What the rule of a programme comes to for a line, before any limit. */
final class Asking {
    private static final String NAME = "Asked by the rule";

    private final Programme programme;
    private final Purchase purchase;
    private final LineStack stack;
    private final List<Derivation> terms = new ArrayList<>();

    private Asking(Programme programme, Purchase purchase, LineStack stack) {
        this.programme = programme;
        this.purchase = purchase;
        this.stack = stack;
    }

    /** What a programme asks for a line of which programmes before it have paid a part. */
    static Derivation of(Programme programme, Purchase purchase, LineStack stack) {
        Asking asking = new Asking(programme, purchase, stack);
        Ask ask = Ask.of(programme, purchase);
        switch (purchase.kind()) {
            case BUS -> purchase.bus().ifPresent(bus -> asking.addBus(bus, ask));
            case PORTS -> asking.addPorts(ask);
            case SITE_WORK -> asking.addShare(ask.costShare(), asking.cost(), "Share of cost", asking.ref("infrastructureShare"));
            case TRAINING -> asking.addShare(ask.costShare(), asking.cost(), "Share of cost", asking.ref("trainingShare"));
        }
        return Derivation.sum(NAME, Derivation.MONEY, asking.terms);
    }

    private void addBus(NewBus bus, Ask ask) {
        addAmount(ask, ref(bus, "amount"));
        addShare(ask.costShare(), cost(), "Share of price", ref(bus, "priceShare"));
        double difference = Math.max(0, cost().value() - bus.likeForLike().value());
        addShare(ask.differenceShare(), Derivation.of("Price difference", difference, Derivation.MONEY,
                "price less that of the like-for-like bus, not below zero", cost(), bus.likeForLike()),
                "Share of price difference", ref(bus, "priceDifferenceShare"));
    }

    private InputRef ref(NewBus bus, String field) {
        return new InputRef("BusAward", programme.name() + " / " + bus.bodyType(), field);
    }

    private void addPorts(Ask ask) {
        addAmount(ask, ref("amountPerPort"));
        addShare(ask.costShare(), cost(), "Share of infrastructure", ref("infrastructureShare"));
    }

    private InputRef ref(String field) {
        return new InputRef("Programme", programme.name(), field);
    }

    private void addAmount(Ask ask, InputRef ref) {
        if (ask.amount() != 0) {
            terms.add(Derivation.product("Fixed amount", Derivation.MONEY,
                    Derivation.input("Amount for each", ask.amount(), Derivation.MONEY, ref),
                    Derivation.of("Number bought", ask.count(), "", "step of the plan")));
        }
    }

    private void addShare(double share, Derivation of, String name, InputRef ref) {
        if (share != 0) {
            terms.add(Derivation.product(name, Derivation.MONEY, Derivation.input(name, share, "", ref), of));
        }
    }

    /** The cost that shares are taken of. */
    private Derivation cost() {
        Derivation covered = purchase.covered(programme);
        return programme.offer().afterOthers()
                ? Derivation.of("Cost left", stack.left(programme), Derivation.MONEY,
                        "cost less what the programmes before it pay", covered)
                : covered;
    }
}
