package org.amberyard.report.cashflow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.plan.CostQuantities;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** The sheet of what a plan needs and does, counted by year; money comes in only with the prices. */
final class QuantitiesSheet {
    private static final int FIRST_YEAR = 4;
    /** Token of the unit of a price for each unit of a quantity. */
    private static final Map<String, Unit> COUNTED_IN = Map.of("money/L", Unit.LITRE, "money/kWh", Unit.KILOWATT_HOUR);

    private final FormulaSheet sheet;
    private final StudyInput study;
    private final UnitSystem system;
    private final List<Line> lines = new ArrayList<>();

    /** What a line of the sheet is about. */
    private record Key(CostCategory category, int price, OptionalInt pricedIn, FlowTime pricedAt, boolean insured) {
    }

    /**
     * A line of the sheet.
     *
     * @param price place of the price in the workbook
     * @param pricedIn year whose price is paid; empty where it is the year in which the quantity counts
     */
    record Line(int row, CostCategory category, int price, OptionalInt pricedIn, FlowTime pricedAt, boolean insured) {
    }

    QuantitiesSheet(FormulaSheet sheet, StudyInput study, UnitSystem system) {
        this.sheet = sheet;
        this.study = study;
        this.system = system;
    }

    List<Line> lines() {
        return lines;
    }

    String at(int row, int year) {
        return sheet.at(row, FIRST_YEAR + year);
    }

    void write(String plan, CostQuantities costs, PricesSheet prices, String footer) {
        sheet.title("Quantities of “" + plan + "”: counted by the program, by year in which they count");
        int head = sheet.row();
        sheet.head(head, 0, "Category", false);
        sheet.head(head, 1, "Paid at", false);
        sheet.head(head, 2, "Unit", false);
        sheet.head(head, 3, "Price of", false);
        for (int year = 0; year < study.years(); year++) {
            sheet.head(head, FIRST_YEAR + year, String.valueOf(study.baseYear() + year), true);
        }
        Map<Key, List<CostQuantities.Quantity>> byKey = new LinkedHashMap<>();
        costs.quantities().forEach(q -> byKey.computeIfAbsent(key(q, costs, prices), k -> new ArrayList<>()).add(q));
        for (CostCategory category : CostCategory.values()) {
            byKey.forEach((key, quantities) -> {
                if (key.category() == category) {
                    writeLine(key, quantities, prices);
                }
            });
        }
        sheet.widths(26, 44, 8, 26);
        sheet.widthsFrom(FIRST_YEAR, study.years(), 13);
        sheet.print(footer, 2, head, FIRST_YEAR + study.years());
    }

    private static Key key(CostQuantities.Quantity q, CostQuantities costs, PricesSheet prices) {
        return new Key(q.category(), prices.place(costs.prices().get(q.price()), q.pricedAt()), q.pricedIn() == q.year()
                ? OptionalInt.empty()
                : OptionalInt.of(q.pricedIn()), q.pricedAt(), q.insured());
    }

    private void writeLine(Key key, List<CostQuantities.Quantity> quantities, PricesSheet prices) {
        CostQuantities.Price price = prices.prices().get(key.price());
        Unit unit = COUNTED_IN.getOrDefault(price.unit(), Unit.ONE);
        int row = sheet.row();
        lines.add(new Line(row, key.category(), key.price(), key.pricedIn(), key.pricedAt(), key.insured()));
        sheet.words(row, 0, key.category().label());
        sheet.words(row, 1, price.name() + (key.insured() ? ", premium for it" : ""));
        sheet.words(row, 2, unit == Unit.ONE ? "" : unit.symbol(system, study.currency()));
        sheet.words(row, 3, (key.pricedIn().isPresent() ? String.valueOf(study.baseYear() + key.pricedIn().getAsInt()) : "the year")
                + ", " + PricesSheet.words(key.pricedAt()));
        quantities.forEach(q -> sheet.number(row, FIRST_YEAR + q.year(), unit.show(q.amount(), system), FormulaSheet.FIGURE));
    }
}
