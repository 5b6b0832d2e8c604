package org.amberyard.core.funding;

import java.util.Optional;

/**
 * What the rule of a programme asks for a line, and its cap.
 *
 * @param amount fixed amount for each
 * @param count number of things bought
 * @param costShare share of the cost
 * @param differenceShare share of the difference to the like-for-like bus
 * @param capEach most that is paid for each
 */
record Ask(double amount, int count, double costShare, double differenceShare, double capEach) {
    private static final double UNLIMITED = Double.POSITIVE_INFINITY;

    static Ask of(Programme programme, Purchase purchase) {
        Offer offer = programme.offer();
        return switch (purchase.kind()) {
            case BUS -> ofBus(purchase.bus().map(b -> offer.buses().get(b.bodyType())).orElse(null),
                    purchase.bus().filter(NewBus::electric).isPresent());
            case PORTS -> new Ask(offer.ports().amountPerPort(), purchase.count(), offer.ports().share(), 0, offer.ports().capPerPort());
            case SITE_WORK -> new Ask(0, 1, offer.works().share(), 0, offer.works().cap());
            case TRAINING -> new Ask(0, 1, offer.training().share(), 0, offer.training().cap());
        };
    }

    private static Ask ofBus(BusAward award, boolean electric) {
        if (award == null) {
            return new Ask(0, 1, 0, 0, UNLIMITED);
        }
        return electric ? new Ask(award.amount(), 1, award.priceShare(), award.differenceShare(), award.cap())
                : new Ask(0, 1, 0, 0, award.cap());
    }

    /** Why the rule of a programme gives nothing for a line, whoever pays besides; empty when it gives something. */
    static Optional<Refusal> refusal(Programme programme, Purchase purchase) {
        double likeForLike = purchase.bus().map(b -> b.likeForLike().value()).orElse(0.0);
        if (of(programme, purchase).of(purchase.covered(programme).value(), likeForLike) > 0) {
            return Optional.empty();
        }
        boolean bus = purchase.kind() == Purchase.Kind.BUS;
        boolean training = purchase.kind() == Purchase.Kind.TRAINING;
        return Optional.of(new Refusal(Limit.NO_AWARD, bus ? "busAwards" : training ? "trainingShare" : "infrastructureShare",
                purchase.bus().map(b -> nothingFor(programme, b)).orElse("it pays nothing for " + purchase.kind().label())));
    }

    private static String nothingFor(Programme programme, NewBus bus) {
        if (!programme.offer().buses().containsKey(bus.bodyType())) {
            return "it has no award for body type " + bus.bodyType();
        }
        return bus.electric() ? "its award comes to nothing at this price" : "it pays for electric buses only";
    }

    /**
     * What it comes to.
     *
     * @param cost cost that shares are taken of
     * @param likeForLike price of the like-for-like bus
     */
    double of(double cost, double likeForLike) {
        return amount * count + costShare * cost + differenceShare * Math.max(0, cost - likeForLike);
    }

    /** Most that is paid for the line. */
    double cap() {
        return capEach * count;
    }
}
