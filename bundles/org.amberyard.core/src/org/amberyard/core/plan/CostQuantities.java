package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.PricePath;

/**
 * Costs of a plan without funding, taken apart: how much of what is paid at which price. The sum of quantities at prices and of
 * the amounts that are no such products is the ledger in constant money.
 *
 * @param prices the prices, each once
 * @param quantities quantities of all rows of the ledger together, each price, year and category once
 * @param fixed amounts that are no quantity at a price
 */
public record CostQuantities(List<Price> prices, List<Quantity> quantities, List<Fixed> fixed) {

    public CostQuantities {
        prices = List.copyOf(prices);
        quantities = List.copyOf(quantities);
        fixed = List.copyOf(fixed);
    }

    /**
     * A price.
     *
     * @param name what has the price
     * @param unit its unit, {@code money/L} or {@code money/kWh}; empty or {@code money} for money for each thing
     * @param base price at the base date
     * @param path price by year over that of the base date, constant money
     */
    public record Price(String name, String unit, double base, PricePath path) {
    }

    /**
     * A quantity paid at a price.
     *
     * @param category category in which it counts
     * @param year year in which it counts
     * @param price place of the price
     * @param pricedIn year whose price is paid
     * @param pricedAt time of that year whose price is paid
     * @param insured true where not the price but the premium for it counts
     * @param amount quantity in the unit of the price; negative for a credit
     */
    public record Quantity(CostCategory category, int year, int price, int pricedIn, FlowTime pricedAt, boolean insured,
            double amount) {
        private Quantity of(double other) {
            return new Quantity(category, year, price, pricedIn, pricedAt, insured, other);
        }
    }

    /**
     * An amount that is no quantity at a price.
     *
     * @param constant amount in constant money
     */
    public record Fixed(CostCategory category, int year, double constant) {
    }

    static CostQuantities of(PriceBook book, List<CostItem> items) {
        Map<UnitPrice, Integer> places = new LinkedHashMap<>();
        Map<Quantity, Double> sums = new LinkedHashMap<>();
        List<Fixed> fixed = new ArrayList<>();
        for (CostItem item : items) {
            if (item.amount().linear()) {
                item.amount().terms(1, item.year(), item.category(), (quantity, price, year, category, insured) -> sums.merge(
                        new Quantity(item.category(), item.year(), place(places, price), year, category.time(), insured, 0),
                        quantity,
                        Double::sum));
            } else {
                fixed.add(new Fixed(item.category(), item.year(), item.amount().at(book, item.year(), item.category())));
            }
        }
        List<Quantity> quantities = sums.entrySet().stream().map(e -> e.getKey().of(e.getValue())).toList();
        return new CostQuantities(places.keySet().stream().map(p -> price(book.study(), p)).toList(), quantities, fixed);
    }

    private static int place(Map<UnitPrice, Integer> places, UnitPrice price) {
        places.putIfAbsent(price, places.size());
        return places.get(price);
    }

    private static Price price(StudyInput study, UnitPrice price) {
        PriceKind kind = price.kind();
        return new Price(kind.name(study, price.of()), kind.unit(), kind.base(study, price.of()), kind.path(study, price.of()));
    }
}
