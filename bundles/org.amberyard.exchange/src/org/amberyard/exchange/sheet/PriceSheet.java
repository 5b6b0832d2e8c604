package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
                    + ElementIndex.names(outcome.study().getPrices()) + ". Name a column so, or choose the column that holds it.");
        } else {
            outcome.remark("Prices are taken as in constant money; take general inflation out of those that include it. Only their ratios to "
                    + outcome.study().getSettings().getBaseYear() + " count; the price of that year stays as the study has it.");
        }
    }

    private static void path(PricePath path, MappedSheet sheet, SheetOutcome outcome) {
        String id = PATH + ElementNames.of(path);
        TreeMap<Integer, Double> prices = new TreeMap<>();
        Map<Integer, Integer> rows = new TreeMap<>();
        sheet.rows().stream().filter(row -> row.has(id)).forEach(row -> take(row, id, prices, rows, outcome));
        if (prices.isEmpty()) {
            outcome.remark("Nothing stands in “" + sheet.header(id) + "”; that price stays as it is.");
            return;
        }
        int base = outcome.study().getSettings().getBaseYear();
        if (!prices.containsKey(base)) {
            outcome.problem(sheet.mapping().headerRow(), "“" + sheet.header(id) + "” has no figure for " + base
                    + ", the base year of the study, to which the others are held; add a row for it.");
            return;
        }
        new PriceDoubts(sheet.header(id), base, prices, rows).tell(outcome);
        set(path, prices, rows, id, outcome);
    }

    private static void take(MappedRow row, String id, Map<Integer, Double> prices, Map<Integer, Integer> rows, SheetOutcome outcome) {
        RowReading cells = outcome.reading(row);
        double price = cells.of(() -> price(row, id), 0.0);
        int year = cells.of(() -> year(row), 0);
        if (cells.isSound() && prices.putIfAbsent(year, price) != null) {
            cells.wrong(row.fault(YEAR, "a year that no other row has; it stands in row " + rows.get(year) + " too"));
        }
        rows.putIfAbsent(year, row.number());
    }

    private static double price(MappedRow row, String id) throws CellFault {
        double price = row.required(id);
        if (price <= 0) {
            throw row.fault(id, "a price above 0");
        }
        return price;
    }

    private static int year(MappedRow row) throws CellFault {
        double year = row.number(YEAR).orElseThrow(() -> row.wrong(YEAR, "A year is missing; enter one, or delete the row."));
        if (year != Math.rint(year)) {
            throw row.fault(YEAR, "a whole year such as 2026");
        }
        return (int) year;
    }

    private static void set(PricePath path, Map<Integer, Double> prices, Map<Integer, Integer> rows, String id, SheetOutcome outcome) {
        double base = prices.get(outcome.study().getSettings().getBaseYear());
        path.getPoints().stream().filter(p -> !prices.containsKey(p.getYear())).toList()
                .forEach(p -> outcome.removed(outcome.headerRow(), p, List.of(Literals.PRICE_POINT__FACTOR)));
        prices.forEach((year, price) -> {
            PricePoint point = path.getPoints().stream().filter(p -> p.getYear() == year).findFirst()
                    .orElseGet(() -> added(path, year, rows.get(year), outcome));
            outcome.set(rows.get(year), id, point, Literals.PRICE_POINT__FACTOR, price / base);
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
