package org.amberyard.core.tariff;

import java.util.Set;
import org.amberyard.core.math.Checks;

/**
 * A share of other charges: a percentage rider or a tax. It falls on the lines of its components that stand above it on the
 * bill.
 *
 * @param name name on the bill
 * @param share share, 0.06 for 6 %; below zero for a discount
 * @param of components on which it falls
 */
public record ShareCharge(String name, double share, Set<BillComponent> of) {

    public ShareCharge {
        Checks.rate(name, share);
        of = Set.copyOf(of);
    }

    /** A share of every line before taxes. */
    public static ShareCharge ofCharges(String name, double share) {
        return new ShareCharge(name, share, Set.of(BillComponent.CUSTOMER, BillComponent.ENERGY, BillComponent.DEMAND,
                BillComponent.RIDER, BillComponent.MINIMUM));
    }
}
