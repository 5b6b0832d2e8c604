package org.amberyard.report;

import java.util.OptionalDouble;
import java.util.function.Function;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.report.BillRows.OfBill;
import org.amberyard.report.BillRows.OfBilled;
import org.amberyard.report.BillRows.OfLine;
import org.amberyard.report.BillRows.OfYearBill;

/** Tables of the electric bills. */
final class BillTables {
    private static final String BILL_MEANING =
            "The bill as metered or, on a meter shared with the building, what it would be without charging.";
    private static final String PRICE_MEANING =
            "Base-date price per unit; where the unit is money, the share of it that is charged.";

    private static final String TARIFF_MEANING = "The tariff in use, by which the plans are billed.";

    private BillTables() {
    }

    static TableDefinition<OfLine> billLines(LastYears years) {
        TableDefinition<OfLine> table = new TableDefinition<OfLine>("bill_lines", "Electric bills line by line",
                r -> OfLine.all(years.of(r)))
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().at().calendarYear())
                .text("month", "Month", "Month.", r -> MonthNames.full(r.bill().month())).heads()
                .text("bill", "Bill", BILL_MEANING, r -> bill(r.charging()))
                .text("tariff", "Tariff", TARIFF_MEANING, r -> r.at().input().metering().tariff().name())
                .text("component", "Part", "Part of the bill.", r -> r.line().component().label());
        return charged(table, OfLine::line)
                .money("amount", "Amount", "Amount as printed, in whole cents; those of a month sum up to its bill.",
                        r -> r.line().amount())
                .text("explanation", "What set the demand",
                        "For lines on demand: the hour and the day that set it, and which buses drew power then.",
                        OfLine::explanation);
    }

    static TableDefinition<OfBilled> billedQuantities() {
        TableDefinition<OfBilled> table = new TableDefinition<OfBilled>("billed_quantities", "What the bills of every year charge",
                OfBilled::all)
                .text("plan", "Plan", "Name of the plan; years in which it has neither electric buses nor ports are left out.",
                        r -> r.at().plan().name())
                .year("year", "Year", "Year.", r -> r.at().calendarYear())
                .text("month", "Month", "Month.", r -> MonthNames.full(r.bill().month())).heads()
                .text("bill", "Bill", BILL_MEANING, r -> bill(r.charging()));
        return charged(table, OfBilled::line)
                .money("amount", "Amount", "Amount at base-date prices before it is rounded, as calculations use it.",
                        r -> r.line().amount());
    }

    /** What a line charges, before its amount. */
    private static <R> TableDefinition<R> charged(TableDefinition<R> table, Function<R, BillLine> line) {
        return table.text("line", "Line", "What is charged.", r -> line.apply(r).label())
                .number("quantity", "Quantity", ColumnUnit.OF_LINE, "Quantity, in the unit that the row names.",
                        r -> line.apply(r).quantity())
                .text("unit", "Unit", "Unit of the quantity.", r -> line.apply(r).unit().label())
                .number("price", "Price per unit", Unit.MONEY, PRICE_MEANING, r -> line.apply(r).price());
    }

    private static String bill(boolean charging) {
        return charging ? "as metered" : "without charging";
    }

    static TableDefinition<OfBill> billByMonth(LastYears years) {
        return new TableDefinition<>("bill_by_month", "Electric bills by month", r -> OfBill.all(years.of(r)))
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().at().calendarYear())
                .text("month", "Month", "Month.", r -> MonthNames.full(r.bill().month())).heads()
                .text("tariff", "Tariff", TARIFF_MEANING, r -> r.at().input().metering().tariff().name())
                .money("total", "Bill", "Bill of the meter as printed, base-date prices.", r -> r.bill().total())
                .optionalMoney("without_charging", "Without charging",
                        "What the meter's bill would be without charging; no figure for a meter of its own.",
                        r -> r.without().map(Bill::total).map(OptionalDouble::of).orElse(OptionalDouble.empty()))
                .money("of_charging", "For charging", "The difference: what charging costs.", OfBill::ofCharging);
    }

    static TableDefinition<OfYearBill> billByYear() {
        return new TableDefinition<>("bill_by_year", "Electric bills by year", OfYearBill::all)
                .text("plan", "Plan", "Name of the plan; years in which it has neither electric buses nor ports are left out.",
                        r -> r.at().plan().name())
                .year("year", "Year", "Year.", r -> r.at().calendarYear()).heads()
                .text("tariff", "Tariff", TARIFF_MEANING, r -> YardRows.yard(r.at()).input().metering().tariff().name())
                .number("kwh", "Energy", Unit.KILOWATT_HOUR, "Energy of charging, heat and standby at the meter.", OfYearBill::kwh)
                .money("energy", "Energy charges", "What follows the energy, base-date prices; riders and taxes stand with the part "
                        + "on which they fall.", r -> r.base().energy())
                .money("demand", "Demand charges", "What follows the demand, base-date prices.", r -> r.base().demand())
                .money("fixed", "Fixed charges", "What follows neither, base-date prices.", r -> r.base().fixed())
                .money("total", "Bill", "All of it, base-date prices; on a meter shared with the building the part of charging.",
                        r -> r.base().total())
                .optional("price", "Average price", Unit.MONEY_PER_KWH, "Bill over energy, base-date prices; no figure without "
                        + "energy.", r -> r.perKwh(r.base()))
                .money("energy_paid", "Energy charges on their path", "After the price path, constant money.",
                        r -> r.paid().energy())
                .money("demand_paid", "Demand charges on their path", "After the price path, constant money.",
                        r -> r.paid().demand())
                .money("fixed_paid", "Fixed charges on their path", "After the price path, constant money.",
                        r -> r.paid().fixed())
                .money("total_paid", "Bill on the paths", "All of it after the price paths, constant money.",
                        r -> r.paid().total())
                .optional("price_paid", "Average price on the paths", Unit.MONEY_PER_KWH, "That bill over energy.",
                        r -> r.perKwh(r.paid()));
    }
}
