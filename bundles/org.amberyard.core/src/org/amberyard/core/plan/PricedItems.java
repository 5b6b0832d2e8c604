package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.FlowTime;

/**
 * The costs of a plan laid out for pricing: a cell of the ledger is a sum of quantities at prices, so a plan is costed by one
 * pass over plain arrays once the few prices are known. Costs that are no such sums are worked out one by one.
 */
final class PricedItems {
    private final List<String> rows;
    private final int years;
    private final List<PriceAt> prices = new ArrayList<>();
    private final List<CostItem> others;
    private final int[] cells;
    private final int[] priceOf;
    private final double[] quantities;

    /** A price at a time, or the premium for it. */
    private record PriceAt(UnitPrice price, int year, FlowTime time, boolean insured) {
    }

    /** Terms as they come. */
    private static final class Growing {
        private final Map<PriceAt, Integer> places = new HashMap<>();
        private final List<Integer> cells = new ArrayList<>();
        private final List<Integer> priceOf = new ArrayList<>();
        private final List<Double> quantities = new ArrayList<>();
    }

    PricedItems(List<String> rows, int years, List<CostItem> items) {
        this.rows = List.copyOf(rows);
        this.years = years;
        this.others = items.stream().filter(i -> !i.amount().linear()).toList();
        Growing growing = new Growing();
        items.stream().filter(i -> i.amount().linear()).forEach(i -> add(i, growing));
        this.cells = growing.cells.stream().mapToInt(i -> i).toArray();
        this.priceOf = growing.priceOf.stream().mapToInt(i -> i).toArray();
        this.quantities = growing.quantities.stream().mapToDouble(q -> q).toArray();
    }

    private void add(CostItem item, Growing growing) {
        int cell = CostLedger.cell(years, item.row(), item.year(), item.category());
        item.amount().terms(1, item.year(), item.category(), (quantity, price, year, category, insured) -> {
            growing.cells.add(cell);
            growing.quantities.add(quantity);
            growing.priceOf.add(growing.places.computeIfAbsent(new PriceAt(price, year, category.time(), insured), at -> {
                prices.add(at);
                return prices.size() - 1;
            }));
        });
    }

    /** The ledger at the prices of a study. */
    CostLedger at(PriceBook book) {
        double[] known = new double[prices.size()];
        for (int i = 0; i < known.length; i++) {
            known[i] = at(book, prices.get(i));
        }
        double[] constant = new double[CostLedger.cells(rows.size(), years)];
        for (int i = 0; i < cells.length; i++) {
            constant[cells[i]] += quantities[i] * known[priceOf[i]];
        }
        for (CostItem item : others) {
            constant[CostLedger.cell(years, item.row(), item.year(), item.category())] +=
                    item.amount().at(book, item.year(), item.category());
        }
        return CostLedger.ofConstant(rows, years, book.study().money(), constant);
    }

    private static double at(PriceBook book, PriceAt price) {
        CostCategory category = CostCategory.at(price.time());
        double perUnit = book.at(price.price(), price.year(), category);
        return price.insured() ? perUnit * book.premiumRate() : perUnit;
    }
}
