package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.amberyard.core.units.Unit;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricesPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;

/** Invoices of fuel delivered to the yard's tank: the price is their sum over the fuel. */
final class FuelInvoiceSheet implements SheetKind {
    private static final String INVOICE = "invoice";
    private static final String FUEL = "fuel";
    private static final String QUANTITY = "quantity";
    private static final String TOTAL = "total";

    @Override
    public String id() {
        return "fuel-invoices";
    }

    @Override
    public String label() {
        return "Fuel invoices";
    }

    @Override
    public String purpose() {
        return "Sets the prices of fuels to the mean of the invoices, and holds the fuel against what the buses ask for.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        return List.of(
                SheetColumn.derived(INVOICE, "Invoice", SheetColumn.Content.TEXT, Unit.NONE, "Number of the invoice.", "invoice number", "ticket")
                        .must(),
                SheetColumn.derived(FUEL, "Fuel", SheetColumn.Content.TEXT, Unit.NONE, "Name of the fuel.", "fuel type", "product").must(),
                SheetColumn.derived(QUANTITY, "Quantity", SheetColumn.Content.NUMBER, Unit.LITRE, "Fuel delivered; below 0 for a credit note.",
                        "gallons", "liters", "litres", "volume", "net gallons").must(),
                SheetColumn.derived(TOTAL, "Total", SheetColumn.Content.NUMBER, Unit.MONEY,
                        "What was paid, delivery and the taxes that the district pays included.", "total usd", "amount", "invoice total", "net total")
                        .must());
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(INVOICE, "HF-4401", FUEL, "diesel", QUANTITY, "2690", TOTAL, "9567.50").getOrDefault(column.id(), "");
    }

    /** What was bought of a fuel. */
    private static final class Bought {
        private double litres;
        private double money;
        private int lastRow;
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        RowKeys keys = new RowKeys(sheet, INVOICE);
        Map<String, Bought> fuels = new TreeMap<>();
        sheet.rows().forEach(row -> outcome.attempt(row, () -> {
            keys.of(row);
            String fuel = row.text(FUEL).orElseThrow(() -> row.wrong(FUEL, "The row names no fuel; enter one, or delete the row."));
            if (FuelWords.isNoFuel(fuel)) {
                outcome.remark("Row " + row.number() + " is left out; “" + fuel + "” is no fuel.");
                return;
            }
            price(row, fuel, outcome.study());
            Bought bought = fuels.computeIfAbsent(fuel.toLowerCase(Locale.ROOT), f -> new Bought());
            bought.litres += row.required(QUANTITY);
            bought.money += row.required(TOTAL);
            bought.lastRow = row.number();
        }));
        fuels.forEach((fuel, bought) -> set(fuel, bought, outcome));
    }

    private static FuelPrice price(MappedRow row, String fuel, Study study) throws CellFault {
        return of(fuel, study).orElseThrow(() -> row.wrong(FUEL, "“" + fuel + "” is no fuel with a price in the study; it has "
                + ElementIndex.names(study.getPrices().stream().filter(FuelPrice.class::isInstance).toList()) + "."));
    }

    private static Optional<FuelPrice> of(String fuel, Study study) {
        return study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                .filter(p -> p.getFuel().getLiteral().equalsIgnoreCase(fuel)).findFirst();
    }

    private static void set(String fuel, Bought bought, SheetOutcome outcome) {
        if (bought.litres <= 0 || bought.money <= 0) {
            outcome.problem(bought.lastRow, "The invoices of " + fuel + " sum to no fuel or no money, so they tell no price.");
            return;
        }
        outcome.set(bought.lastRow, of(fuel, outcome.study()).orElseThrow(), Literals.FUEL_PRICE__PRICE_PER_L, bought.money / bought.litres);
        reconcile(fuel, bought.litres, outcome);
    }

    /** Fuel bought against the distances and fuel economies of the buses; buses without a measured one cannot be told. */
    private static void reconcile(String fuel, double boughtL, SheetOutcome outcome) {
        List<Bus> buses = outcome.study().getBuses().stream().filter(b -> b.getType() instanceof CombustionType t
                && t.getFuel().getLiteral().equalsIgnoreCase(fuel)).toList();
        if (buses.isEmpty() || buses.stream().anyMatch(b -> b.getMeasuredKmPerL() <= 0)) {
            outcome.remark("Not every bus on " + fuel + " has a measured fuel economy, so the invoices cannot be held against the buses.");
            return;
        }
        double askedL = buses.stream().mapToDouble(b -> (RouteYear.km(b.getRoute()) + b.getOtherKmPerYear()) / b.getMeasuredKmPerL()).sum();
        outcome.remark(String.format(Locale.ROOT, "Invoices of %s: %s; distances and fuel economies of the buses ask for %s, a gap of %.1f %%."
                + " Stock in the tank and idling may explain some.", fuel, WholeFigures.of(boughtL, Unit.LITRE, outcome.study()),
                WholeFigures.of(askedL, Unit.LITRE, outcome.study()),
                100 * (boughtL - askedL) / askedL));
    }
}
