package org.amberyard.report.papers;

import java.util.List;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Any table of results as a table of a document. */
final class PrintedResults {
    private static final double WORDS = 1.6;
    /** Column of money over masses, which has no more digits than they. */
    private static final String COST_OF_A_TON = "cost_per_short_ton";
    /** Table that has every category in every year; on paper most of its rows would say nothing. */
    private static final String BY_CATEGORY = "cost_by_year";
    private static final CellFormat FINEST = CellFormat.decimals(4);

    private PrintedResults() {
    }

    /**
     * The rows about a plan, or all of a table that is about no plan.
     *
     * @param number number of the table in the document
     */
    static DataTable of(ResultTable table, String plan, int number) {
        boolean sparse = table.name().equals(BY_CATEGORY);
        List<ResultLine> lines = ResultLine.all(table, plan).stream().filter(l -> !sparse || l.number("amount").orElse(0) != 0).toList();
        TableBuilder<ResultLine> printed = new TableBuilder<ResultLine>(table.name(), "Table " + number + ". " + table.title())
                .mark(table.watermark());
        for (ResultColumn column : table.columns()) {
            if (!column.name().equals("plan")) {
                add(printed, column);
            }
        }
        return (sparse ? printed.note("Categories without an amount in a year are left out.") : printed).of(lines);
    }

    private static void add(TableBuilder<ResultLine> printed, ResultColumn column) {
        String name = column.name();
        switch (column.type()) {
            case TEXT, FIGURE -> printed.text(column.label(), WORDS, l -> l.text(name));
            case INTEGER -> {
                if (column.unit().equals("calendar year")) {
                    printed.year(column.label(), l -> l.year(name));
                } else {
                    printed.optional(column.label(), "", CellFormat.WHOLE, l -> l.number(name));
                }
            }
            case MONEY -> {
                if (name.equals(COST_OF_A_TON)) {
                    printed.value(column.label() + " (" + column.unit() + ")", WORDS, l -> CostOfATon.printed(l.number(name)
                            .orElse(Double.NaN), FINEST.rounded(l.number("reduced").orElse(0))));
                } else {
                    printed.optional(column.label(), column.unit(), CellFormat.CENTS, l -> l.number(name));
                }
            }
            case NUMBER -> printed.optional(column.label(), column.unit(), CellFormat.decimals(decimals(column.unit())), l -> l.number(name));
        }
    }

    /** By the unit, whatever the currency and the system of units: what goes by distance is small. */
    static int decimals(String unit) {
        return switch (unit) {
            case "%", "h", "mi", "km", "gal", "L", "yr", "count", "d" -> 1;
            case "short ton" -> 4;
            default -> unit.endsWith("/mi") || unit.endsWith("/km") ? 4 : 2;
        };
    }
}
