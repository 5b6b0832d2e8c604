package org.amberyard.report.cashflow;

import java.util.List;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.plan.CostQuantities;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** The sheet of what may be changed: rates, timing, and each price at the base date with its rise or its points by year. */
final class InputsSheet {
    private static final int VALUE = 1;
    private static final int BASE = 2;
    private static final int RISE = 3;
    private static final int PATH = 4;
    private static final int FIRST_POINT = 5;

    private final FormulaSheet sheet;
    private final StudyInput study;
    private final UnitSystem system;
    private int real;
    private int inflation;
    private int nominal;
    private int basis;
    private int running;
    private int premium;
    private int firstPrice;

    InputsSheet(FormulaSheet sheet, StudyInput study, UnitSystem system) {
        this.sheet = sheet;
        this.study = study;
        this.system = system;
    }

    void write(List<CostQuantities.Price> prices, String footer) {
        sheet.title("Inputs: change the figures in columns B to D and beyond; every other sheet follows");
        sheet.line("Quantities, awards, credits and aids stay as the program computed them; see the sheet “Read me”.");
        sheet.skip();
        writeRates();
        sheet.skip();
        writePrices(prices);
        sheet.widths(44, 16, 16, 18, 12);
        sheet.widthsFrom(FIRST_POINT, study.years() + 1, 10);
        sheet.print(footer, 1, firstPrice - 1, FIRST_POINT + study.years() + 1);
    }

    private void writeRates() {
        MoneyRules money = study.money();
        real = rate("Real discount rate a year", money.rates().real(), FormulaSheet.SHARE, "");
        inflation = rate("General inflation a year", money.rates().inflation(), FormulaSheet.SHARE, "");
        nominal = sheet.row();
        sheet.words(nominal, 0, "Nominal discount rate a year");
        sheet.formula(nominal, VALUE, "(1+" + FormulaSheet.here(real, VALUE) + ")*(1+" + FormulaSheet.here(inflation, VALUE)
                + ")-1", FormulaSheet.SHARE);
        sheet.words(nominal, BASE, "follows (Fisher)");
        basis = rate("Figures in nominal money: 1, in constant money: 0", money.basis() == MoneyBasis.NOMINAL ? 1 : 0, "0", "");
        running = rate("Running costs fall at this part of their year", money.midYear() ? 0.5 : 1, "0.0",
                "1 for its end, 0.5 for its middle");
        premium = rate("Insurance premium over the value of a bus", study.rules().insuranceShare(), FormulaSheet.SHARE, "a year");
    }

    private int rate(String label, double value, String format, String note) {
        int row = sheet.row();
        sheet.words(row, 0, label);
        sheet.number(row, VALUE, value, format);
        if (!note.isEmpty()) {
            sheet.words(row, BASE, note);
        }
        return row;
    }

    private void writePrices(List<CostQuantities.Price> prices) {
        int head = sheet.row();
        sheet.head(head, 0, "Price", false);
        sheet.head(head, VALUE, "Unit", false);
        sheet.head(head, BASE, "At the base date", true);
        sheet.head(head, RISE, "Rise a year above inflation", true);
        sheet.head(head, PATH, "Path", false);
        for (int year = 0; year <= study.years(); year++) {
            sheet.head(head, FIRST_POINT + year, "Points, " + (study.baseYear() + year), true);
        }
        firstPrice = sheet.next();
        prices.forEach(this::writePrice);
    }

    private void writePrice(CostQuantities.Price price) {
        int row = sheet.row();
        sheet.words(row, 0, price.name());
        sheet.words(row, VALUE, symbol(price));
        sheet.number(row, BASE, shown(price) * price.path().atBaseDate(), FormulaSheet.FIGURE);
        boolean points = hasPoints(price);
        sheet.words(row, PATH, points ? "by points" : "by rise");
        if (points) {
            for (int year = 0; year <= study.years(); year++) {
                sheet.number(row, FIRST_POINT + year, price.path().factor(year, year) / price.path().atBaseDate(), FormulaSheet.FACTOR);
            }
        } else {
            sheet.number(row, RISE, price.path().realRise(), FormulaSheet.SHARE);
        }
    }

    private static boolean hasPoints(CostQuantities.Price price) {
        return !price.path().points().isEmpty();
    }

    private String symbol(CostQuantities.Price price) {
        return Unit.ofToken(price.unit()).orElse(Unit.MONEY).symbol(system, study.currency());
    }

    private double shown(CostQuantities.Price price) {
        return Unit.ofToken(price.unit()).orElse(Unit.MONEY).show(price.base(), system);
    }

    /** A price in a year of the study as a formula. */
    String price(CostQuantities.Price price, int place, int year, String time) {
        int row = firstPrice + place;
        String base = sheet.at(row, BASE);
        return hasPoints(price) ? base + "*" + sheet.at(row, FIRST_POINT + year) : base + "*(1+" + sheet.at(row, RISE) + ")^("
                + time + ")";
    }

    String real() {
        return sheet.at(real, VALUE);
    }

    String inflation() {
        return sheet.at(inflation, VALUE);
    }

    String nominal() {
        return sheet.at(nominal, VALUE);
    }

    String isNominal() {
        return sheet.at(basis, VALUE) + "=1";
    }

    String running() {
        return sheet.at(running, VALUE);
    }

    String premium() {
        return sheet.at(premium, VALUE);
    }
}
