package org.amberyard.core.tariff;

import java.util.Set;
import org.amberyard.core.math.Checks;

/**
 * The charges of a month are lifted to a minimum before taxes.
 *
 * @param amount least charges, money/month; 0 for no minimum
 * @param counts components that count towards it
 */
public record MinimumBill(double amount, Set<BillComponent> counts) {

    /** No minimum. */
    public static final MinimumBill NONE = new MinimumBill(0, Set.of());

    public MinimumBill {
        Checks.notNegative("minimum bill", amount);
        counts = Set.copyOf(counts);
    }

    /** The same at a price over that of the base date. */
    MinimumBill times(double index) {
        return new MinimumBill(index * amount, counts);
    }

    /** A minimum to which all charges before taxes count. */
    public static MinimumBill ofCharges(double amount) {
        return new MinimumBill(amount,
                Set.of(BillComponent.CUSTOMER, BillComponent.ENERGY, BillComponent.DEMAND, BillComponent.RIDER));
    }
}
