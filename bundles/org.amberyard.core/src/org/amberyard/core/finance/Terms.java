package org.amberyard.core.finance;

import java.util.Set;
import org.amberyard.core.math.Checks;
import org.amberyard.core.why.Derivation;

/** Checks of the terms of a debt. */
final class Terms {
    private static final Set<Integer> PAYMENTS_PER_YEAR = Set.of(1, 2, 4, 12);

    private Terms() {
    }

    static void check(double yearlyRate, int years, int paymentsPerYear) {
        Checks.notNegative("Yearly rate", yearlyRate);
        Checks.positive("Years of repayment", years);
        require(PAYMENTS_PER_YEAR.contains(paymentsPerYear), "Payments per year are " + paymentsPerYear
                + " but must be 1, 2, 4 or 12");
    }

    static double share(String quantity, double value) {
        require(value >= 0 && value <= 1, quantity + " is " + value + " but must be from 0 to 1");
        return value;
    }

    static void require(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }

    static Derivation whyPeriodRate(double yearlyRate, int paymentsPerYear) {
        return Derivation.of("Rate of a period", yearlyRate / paymentsPerYear, "share", "yearly rate / payments per year",
                Derivation.of("Yearly rate", yearlyRate, "share", "of the offer"),
                Derivation.of("Payments per year", paymentsPerYear, "", "of the offer"));
    }
}
