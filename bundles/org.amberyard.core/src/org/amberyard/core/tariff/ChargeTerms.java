package org.amberyard.core.tariff;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.units.MonthNames;

/**
 * What a charge asks in one month.
 *
 * @param name name on the bill
 * @param prices prices
 * @param hours hours that it counts
 */
record ChargeTerms(String name, BlockPrices prices, MonthHours hours) {
    private static final int MONTHS = 12;

    /** The rates that are in force in a month of a contract year, as one; none when no rate is. */
    static Optional<ChargeTerms> of(String name, List<ChargeRate> rates, int month, int contractYear) {
        List<ChargeRate> inForce = inForce(rates, month, contractYear);
        return inForce.isEmpty() ? Optional.empty()
                : Optional.of(new ChargeTerms(name, inForce.get(0).prices(),
                        new MonthHours(inForce.stream().map(ChargeRate::period).toList(), month)));
    }

    private static List<ChargeRate> inForce(List<ChargeRate> rates, int month, int contractYear) {
        return rates.stream().filter(r -> r.inForce(month, contractYear)).toList();
    }

    /** True when another asks the same price in the same hours under the same name. */
    boolean sameAs(ChargeTerms other) {
        return name.equals(other.name) && prices.equals(other.prices) && hours.sameAs(other.hours);
    }

    /**
     * @throws IllegalArgumentException when there are no rates, or rates of the same month and year differ in price
     */
    static void requireOnePrice(String name, List<ChargeRate> rates) {
        if (rates.isEmpty()) {
            throw new IllegalArgumentException(name + " has no price");
        }
        for (ChargeRate rate : rates) {
            IntStream.range(0, MONTHS).forEach(m -> requireOnePrice(name, inForce(rates, m, rate.years().from()), m));
        }
    }

    private static void requireOnePrice(String name, List<ChargeRate> inForce, int month) {
        List<BlockPrices> prices = inForce.stream().map(ChargeRate::prices).distinct().toList();
        if (prices.size() > 1) {
            throw new IllegalArgumentException(name + " has different prices in " + MonthNames.full(month)
                    + ": charges of different prices need different names");
        }
    }
}
