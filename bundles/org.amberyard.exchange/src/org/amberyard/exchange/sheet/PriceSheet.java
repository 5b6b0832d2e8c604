package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.prices.PricePoint;
import org.amberyard.model.prices.PricesFactory;
import org.amberyard.model.prices.PricesPackage.Literals;
import org.amberyard.model.study.Study;

/**
 * A table of prices by year, a column for each price path of the study. Only the ratio to the base year counts, so prices of any unit and
 * indices serve alike; they must be in constant money.
 */
final class PriceSheet implements SheetKind {
    private static final String YEAR = "year";
    private static final String PATH = "price of ";

    @Override
    public String id() {
        return "prices";
    }

    @Override
    public String label() {
        return "Prices by year";
    }

    @Override
    public String purpose() {
        return "Replaces the points of the price paths that it has columns for.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        List<SheetColumn> columns = new ArrayList<>();
        columns.add(SheetColumn.derived(YEAR, "Year", SheetColumn.Content.NUMBER, Unit.CALENDAR, "Fiscal year.", "fiscal year", "fy").must());
        study.getPrices().forEach(path -> columns.add(column(path)));
        return columns;
    }

    private static SheetColumn column(PricePath path) {
        String name = ElementNames.of(path);
        return SheetColumn.derived(PATH + name, "Price of " + name, SheetColumn.Content.NUMBER, Unit.ONE,
                "Price or index in constant money; a figure for the base year is needed.", name, name + " price", name + " index");
    }

    @Override
    public String example(SheetColumn column) {
        return column.id().equals(YEAR) ? "2026" : column.id().equals(PATH + "diesel") ? "3.66" : "";
    }

    /** Prices of years to come are a guess, wherever it is from. */
    @Override
    public Quality quality(String field) {
        return Quality.ASSUMED;
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        boolean any = false;
        for (PricePath path : outcome.study().getPrices()) {
            if (sheet.mapping().place(PATH + ElementNames.of(path)).isPresent()) {
                any = true;
                path(path, sheet, outcome);
            }
        }
        if (!any) {
            outcome.problem(sheet.mapping().headerRow(), "No column holds a price of the study; it has "
                    + ElementIndex.names(outcome.study().getPrices()) + ".");
        } else {
            outcome.remark("Prices are taken as in constant money; take general inflation out of those that include it.");
        }
    }

    private static void path(PricePath path, MappedSheet sheet, SheetOutcome outcome) {
        String id = PATH + ElementNames.of(path);
        TreeMap<Integer, Double> prices = new TreeMap<>();
        Map<Integer, Integer> rows = new TreeMap<>();
        sheet.rows().forEach(row -> outcome.attempt(row, () -> {
            OptionalDouble price = row.number(id);
            OptionalDouble year = row.number(YEAR);
            if (price.isEmpty() || year.isEmpty()) {
                return;
            }
            if (price.getAsDouble() <= 0) {
                throw row.fault(id, "a price above 0");
            }
            if (year.getAsDouble() != Math.rint(year.getAsDouble()) || prices.put((int) year.getAsDouble(), price.getAsDouble()) != null) {
                throw row.fault(YEAR, "a year that no other row has");
            }
            rows.put((int) year.getAsDouble(), row.number());
        }));
        if (prices.isEmpty()) {
            outcome.remark("Nothing stands in “" + sheet.header(id) + "”; that price stays as it is.");
            return;
        }
        int base = outcome.study().getSettings().getBaseYear();
        if (!prices.containsKey(base)) {
            outcome.problem(sheet.mapping().headerRow(), "“" + sheet.header(id) + "” has no figure for " + base
                    + ", the base year of the study, to which the others are held.");
            return;
        }
        set(path, prices, rows, prices.get(base), outcome);
    }

    private static void set(PricePath path, Map<Integer, Double> prices, Map<Integer, Integer> rows, double base, SheetOutcome outcome) {
        path.getPoints().stream().filter(p -> !prices.containsKey(p.getYear())).toList()
                .forEach(p -> outcome.removed(outcome.headerRow(), p, Literals.PRICE_POINT__FACTOR));
        prices.forEach((year, price) -> {
            PricePoint point = path.getPoints().stream().filter(p -> p.getYear() == year).findFirst()
                    .orElseGet(() -> added(path, year, rows.get(year), outcome));
            outcome.set(rows.get(year), point, Literals.PRICE_POINT__FACTOR, price / base);
        });
    }

    private static PricePoint added(PricePath path, int year, int row, SheetOutcome outcome) {
        PricePoint point = PricesFactory.eINSTANCE.createPricePoint();
        point.setYear(year);
        path.getPoints().add(point);
        outcome.added(row, point);
        return point;
    }
}
