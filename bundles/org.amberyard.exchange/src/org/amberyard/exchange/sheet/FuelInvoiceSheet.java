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
import org.amberyard.study.NearWords;

/** Invoices of fuel delivered to the yard's tank: the price is their sum over the fuel. */
final class FuelInvoiceSheet implements SheetKind {
    private static final String NO_FUEL = "no fuel";
    private static final String INVOICE = "invoice";
    private static final String DATE = "date";
    private static final String TANK = "tank";
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
                SheetColumn.derived(INVOICE, "Invoice", SheetColumn.Content.TEXT, Unit.NONE,
                        "Number of the invoice; those without one are told apart by all else that they say.", "invoice number", "ticket"),
                SheetColumn.derived(DATE, "Date", SheetColumn.Content.DATE, Unit.NONE, "Day of the delivery.", "delivery date", "invoice date", "day"),
                SheetColumn.derived(TANK, "Tank", SheetColumn.Content.TEXT, Unit.NONE, "Tank or vehicle that was filled.", "vehicle", "bus", "site",
                        "location"),
                SheetColumn.derived(FUEL, "Fuel", SheetColumn.Content.TEXT, Unit.NONE, "Name of the fuel.", "fuel type", "product").must(),
                SheetColumn.derived(QUANTITY, "Quantity", SheetColumn.Content.NUMBER, Unit.LITRE, "Fuel delivered; below 0 for a credit note.",
                        "gallons", "liters", "litres", "volume", "net gallons").must(),
                SheetColumn.derived(TOTAL, "Total", SheetColumn.Content.NUMBER, Unit.MONEY,
                        "What was paid, delivery and the taxes that the district pays included.", "total usd", "amount", "invoice total", "net total")
                        .must());
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(INVOICE, "HF-4401", DATE, "2025-09-04", FUEL, "diesel", QUANTITY, "2690", TOTAL, "9567.50").getOrDefault(column.id(), "");
    }

    /** What was bought of a fuel. */
    private static final class Bought {
        private double litres;
        private double money;
        private int lastRow;
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        InvoiceKeys keys = new InvoiceKeys(new RowKeys(sheet, INVOICE), INVOICE, List.of(DATE, TANK, FUEL, QUANTITY, TOTAL));
        Map<String, Bought> fuels = new TreeMap<>();
        sheet.rows().forEach(row -> row(row, keys, fuels, outcome));
        keys.remarks().forEach(outcome::remark);
        fuels.forEach((fuel, bought) -> set(fuel, bought, outcome));
    }

    private static void row(MappedRow row, InvoiceKeys keys, Map<String, Bought> fuels, SheetOutcome outcome) {
        RowReading cells = outcome.reading(row);
        String fuel = cells.of(() -> row.text(FUEL).orElseThrow(() -> row.wrong(FUEL, "The row names no fuel; enter one, or delete the row.")), "");
        if (FuelWords.isNoFuel(fuel)) {
            outcome.leftOut(row.number(), NO_FUEL);
            outcome.remark("Row " + row.number() + " is left out; “" + fuel + "” is no fuel.");
            return;
        }
        cells.of(() -> keys.of(row), "");
        cells.of(() -> row.date(DATE), null);
        if (!fuel.isEmpty()) {
            cells.of(() -> price(row, fuel, outcome.study()), null);
        }
        double litres = cells.required(QUANTITY);
        double money = cells.required(TOTAL);
        if (cells.isSound()) {
            Bought bought = fuels.computeIfAbsent(fuel.toLowerCase(Locale.ROOT), f -> new Bought());
            bought.litres += litres;
            bought.money += money;
            bought.lastRow = row.number();
        }
    }

    private static FuelPrice price(MappedRow row, String fuel, Study study) throws CellFault {
        List<String> priced = study.getPrices().stream().filter(FuelPrice.class::isInstance).map(p -> ((FuelPrice) p).getFuel().getLiteral()).toList();
        return of(fuel, study).orElseThrow(() -> row.wrong(FUEL, "“" + fuel + "” is no fuel with a price in the study; it has "
                + String.join(", ", priced) + "." + NearWords.hint(fuel, priced)));
    }

    private static Optional<FuelPrice> of(String fuel, Study study) {
        return study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                .filter(p -> p.getFuel().getLiteral().equalsIgnoreCase(fuel)).findFirst();
    }

    private static void set(String fuel, Bought bought, SheetOutcome outcome) {
        if (bought.litres <= 0 || bought.money <= 0) {
            outcome.problem(bought.lastRow, "The invoices of " + fuel + " sum to no fuel or no money, so they tell no price; look for a wrong "
                    + "sign, or delete credit notes of other invoices.");
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
