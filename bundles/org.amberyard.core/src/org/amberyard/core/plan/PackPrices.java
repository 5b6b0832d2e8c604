package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.Warranty;

/**
 * What replacing a pack costs beside the pack itself, base-date money.
 *
 * @param labour work to change the pack
 * @param resalePerKwh what the old pack brings per kWh of the capacity that it has left, money/kWh
 * @param warranty the maker's promise
 * @param refurbished a refurbished pack that is bought in place of a new one, if that is the choice
 */
public record PackPrices(double labour, double resalePerKwh, Warranty warranty, Optional<Refurbished> refurbished) {

    /** Nothing beside the pack. */
    public static final PackPrices NONE = new PackPrices(0, 0, Warranty.NONE, Optional.empty());

    /** The same packs at the prices of another. */
    PackPrices at(PackPrices others) {
        return new PackPrices(others.labour, others.resalePerKwh, warranty, refurbished);
    }

    /**
     * A refurbished pack.
     *
     * @param priceShare price over that of a new pack
     * @param health present over nominal capacity when it is fitted
     */
    public record Refurbished(double priceShare, double health) {
    }
}
