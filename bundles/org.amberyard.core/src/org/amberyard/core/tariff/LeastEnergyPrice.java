package org.amberyard.core.tariff;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The price below which no kWh at the meter costs: at the cheapest hour of the cheapest month, in the cheapest block of each charge,
 * riders and percentages included, demand and fixed charges left out.
 */
public final class LeastEnergyPrice {
    private static final int MONTHS = 12;
    private static final int STEP_MIN = 15;
    private static final int DAY_MIN = 24 * 60;

    private LeastEnergyPrice() {
    }

    /** Least price of a tariff in any year of its contract, money/kWh; below zero where a tariff pays for what is drawn. */
    public static double of(Tariff tariff) {
        return IntStream.rangeClosed(1, tariff.settledYear())
                .mapToDouble(year -> IntStream.range(0, MONTHS).mapToDouble(month -> of(tariff.inForce(month, year))).min().orElse(0))
                .min().orElse(0);
    }

    private static double of(TariffMonth terms) {
        double least = Double.POSITIVE_INFINITY;
        for (DayClass day : DayClass.values()) {
            for (int from = 0; from < DAY_MIN; from += STEP_MIN) {
                least = Math.min(least, at(terms, BillComponent.ENERGY, day, from) + at(terms, BillComponent.RIDER, day, from));
            }
        }
        return least;
    }

    private static double at(TariffMonth terms, BillComponent component, DayClass day, int fromMin) {
        List<ChargeTerms> charges = terms.energyTerms(component);
        double sum = charges.stream().mapToDouble(c -> c.hours().share(day, fromMin, fromMin + STEP_MIN) * cheapest(c.prices())).sum();
        return sum * terms.tariff().lossFactor() * MarginalPrices.withShares(terms.tariff(), component);
    }

    private static double cheapest(BlockPrices prices) {
        return prices.blocks().stream().mapToDouble(PriceBlock::price).min().orElse(0);
    }
}
