package org.amberyard.core.finance;

import java.util.Optional;
import org.amberyard.core.why.Derivation;

/** Terms on which a purchase is paid for over time. Rates are nominal yearly rates; a period's rate is its part of the year. */
public sealed interface Borrowing permits Amortisation, Lease, Bond {

    /**
     * Payments on a sum.
     *
     * @param amount sum borrowed, or price of what is leased
     */
    DebtSchedule schedule(double amount);

    /**
     * How the payment that stays the same comes about; empty where payments differ.
     *
     * @param amount how the sum comes about
     */
    Optional<Derivation> whyPayment(Derivation amount);
}
