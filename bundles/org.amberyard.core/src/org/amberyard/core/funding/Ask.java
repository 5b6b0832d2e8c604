package org.amberyard.core.funding;

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
