package org.amberyard.report.cashflow;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.plan.CostQuantities;
import org.amberyard.core.plan.StudyInput;

/** The sheet of prices by year in constant money: each price at each time of the year at which something is paid at it. */
final class PricesSheet {
    private static final int FIRST_YEAR = 2;

    private final FormulaSheet sheet;
    private final InputsSheet inputs;
    private final StudyInput study;
    private final List<CostQuantities.Price> prices = new ArrayList<>();
    private final Set<At> used = new HashSet<>();
    private final Map<At, Integer> rows = new LinkedHashMap<>();

    /** A price at a time of the year. */
    private record At(int price, FlowTime time) {
    }

    PricesSheet(FormulaSheet sheet, InputsSheet inputs, StudyInput study) {
        this.sheet = sheet;
        this.inputs = inputs;
        this.study = study;
    }

    /** Place of a price among all of the workbook, which plans share, when something is paid at it at a time of the year. */
    int place(CostQuantities.Price price, FlowTime time) {
        if (!prices.contains(price)) {
            prices.add(price);
        }
        int place = prices.indexOf(price);
        used.add(new At(place, time));
        return place;
    }

    /** All prices of the workbook. */
    List<CostQuantities.Price> prices() {
        return List.copyOf(prices);
    }

    /** When something is paid, in years from the base date, as a formula. */
    static String time(InputsSheet inputs, FlowTime time, int year) {
        return switch (time) {
            case START -> String.valueOf(year);
            case RUNNING -> year + "+" + inputs.running();
            case END -> String.valueOf(year + 1);
        };
    }

    void write(String footer) {
        sheet.title("Prices by year, constant money: computed from the sheet “Inputs”");
        int head = sheet.row();
        sheet.head(head, 0, "Price", false);
        sheet.head(head, 1, "Paid at", false);
        for (int year = 0; year <= study.years(); year++) {
            sheet.head(head, FIRST_YEAR + year, String.valueOf(study.baseYear() + year), true);
        }
        for (int place = 0; place < prices.size(); place++) {
            for (FlowTime time : FlowTime.values()) {
                if (used.contains(new At(place, time))) {
                    writeRow(place, time);
                }
            }
        }
        sheet.widths(44, 14);
        sheet.widthsFrom(FIRST_YEAR, study.years() + 1, 13);
        sheet.print(footer, 2, head, FIRST_YEAR + study.years() + 1);
    }

    private void writeRow(int place, FlowTime time) {
        int row = sheet.row();
        rows.put(new At(place, time), row);
        sheet.words(row, 0, prices.get(place).name());
        sheet.words(row, 1, words(time));
        for (int year = 0; year <= study.years(); year++) {
            sheet.formula(row, FIRST_YEAR + year, inputs.price(prices.get(place), place, year, time(inputs, time, year)),
                    FormulaSheet.FIGURE);
        }
    }

    static String words(FlowTime time) {
        return switch (time) {
            case START -> "start of year";
            case RUNNING -> "over the year";
            case END -> "end of year";
        };
    }

    /** A price in a year, in formulas of other sheets. */
    String at(int price, FlowTime time, int year) {
        return sheet.at(rows.get(new At(price, time)), FIRST_YEAR + year);
    }
}
