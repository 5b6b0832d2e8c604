package org.amberyard.report.papers;

import java.util.List;
import java.util.Set;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;
import org.amberyard.report.document.Block;
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
    /** Columns of factors and of prices of bills: inputs, with the digits that they were given. */
    private static final Set<String> AS_GIVEN = Set.of("emission_factors.value", "emission_factors.value_us", "bill_lines.price",
            "billed_quantities.price");
    /** What a column says for the unit that another one names. */
    private static final String OF_ROW = "unit of the row";
    private static final List<String> PER_SMALL = List.of("/mi", "/km", "/kWh");
    /** Longer tables are for a workbook alone. */
    private static final int LONGEST_ON_PAPER = 400;

    private PrintedResults() {
    }

    /**
     * The rows about a plan, or all of a table that is about no plan.
     *
     * @param number number of the table in the document
     */
    static DataTable of(ResultTable table, String plan, int number) {
        boolean sparse = table.name().equals(BY_CATEGORY);
        return printed(table, number, ResultLine.all(table, plan).stream().filter(l -> !sparse || l.number("amount").orElse(0) != 0).toList(),
                sparse ? List.of("Categories without an amount in a year are left out.") : List.of());
    }

    private static DataTable printed(ResultTable table, int number, List<ResultLine> lines, List<String> notes) {
        TableBuilder<ResultLine> printed = new TableBuilder<ResultLine>(table.name(), "Table " + number + ". " + table.title())
                .mark(table.watermark());
        for (ResultColumn column : table.columns()) {
            if (!column.name().equals("plan")) {
                add(printed, column, AS_GIVEN.contains(table.name() + "." + column.name()));
            }
        }
        notes.forEach(printed::note);
        return printed.of(lines);
    }

    /** The same for a document that has it whole for programs and in short on pages; where to find it when it is too long for these. */
    static Block block(PaperInput in, ResultTable table, int number) {
        DataTable printed = of(table, in.plan().name(), number);
        if (printed.rows().isEmpty()) {
            return new Block.Paragraph(printed.title() + ": no rows for this plan.");
        }
        return switch (table.name()) {
            case BY_CATEGORY -> YearsAcross.of(printed, categories(table, in.plan().name()));
            case FactorPaper.TABLE -> FactorPaper.of(in, table, printed);
            default -> onPaper(printed);
        };
    }

    private static List<List<Object>> categories(ResultTable table, String plan) {
        return ResultLine.all(table, plan).stream().map(l -> List.<Object>of(l.text("group"), l.text("category"))).distinct().toList();
    }

    /** A table in short, or where to find it when it is too long for paper. */
    static Block onPaper(DataTable table) {
        return table.rows().size() > LONGEST_ON_PAPER ? new Block.OnSheet(table) : Block.Condensed.of(table);
    }

    private static void add(TableBuilder<ResultLine> printed, ResultColumn column, boolean asGiven) {
        String name = column.name();
        if (asGiven) {
            printed.value(column.label(), 1, l -> InputFigure.orWords(l, name));
            return;
        }
        switch (column.type()) {
            case TEXT, FIGURE -> printed.text(column.label(), WORDS, l -> l.text(name));
            case INTEGER -> {
                if (column.unit().equals("calendar year")) {
                    printed.year(column.label(), l -> l.year(name));
                } else {
                    printed.optional(column.label(), "", CellFormat.WHOLE, l -> l.number(name));
                }
            }
            case MONEY -> addMoney(printed, column);
            case NUMBER -> printed.optional(column.label(), column.unit().equals(OF_ROW) ? "" : column.unit(), CellFormat.decimals(decimals(
                    column.unit())), l -> l.number(name));
        }
    }

    private static void addMoney(TableBuilder<ResultLine> printed, ResultColumn column) {
        if (column.name().equals(COST_OF_A_TON)) {
            printed.value(column.label() + " (" + column.unit() + ")", WORDS, l -> CostOfATon.printed(l.number(column.name())
                    .orElse(Double.NaN), FINEST.rounded(l.number("reduced").orElse(0))));
        } else {
            printed.optional(column.label(), column.unit(), CellFormat.CENTS, l -> l.number(column.name()));
        }
    }

    /** By the unit, whatever the currency and the system of units: what goes by distance is small. */
    static int decimals(String unit) {
        return switch (unit) {
            case "%", "h", "mi", "km", "gal", "L", "yr", "count", "d", "kWh", "kW", "kVA", "cycles" -> 1;
            case "short ton" -> 4;
            default -> PER_SMALL.stream().anyMatch(unit::endsWith) ? 4 : 2;
        };
    }
}
