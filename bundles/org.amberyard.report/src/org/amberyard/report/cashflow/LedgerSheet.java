package org.amberyard.report.cashflow;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.plan.CostQuantities;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;

/**
 * The ledger of a plan by formulas: quantities at prices, what is no such product, funding; then sums by category, their present
 * value and the present cost of the plan.
 */
final class LedgerSheet {
    private static final int FIRST_YEAR = 3;

    private final FormulaSheet sheet;
    private final InputsSheet inputs;
    private final StudyInput study;
    private final Map<FlowTime, Integer> times = new EnumMap<>(FlowTime.class);
    private final Map<FlowTime, Integer> stated = new EnumMap<>(FlowTime.class);
    private final Map<FlowTime, Integer> present = new EnumMap<>(FlowTime.class);
    private final Map<FlowTime, Integer> totals = new EnumMap<>(FlowTime.class);
    private int firstLine;
    private int lastLine;
    private int presentCost;
    private int annual;

    LedgerSheet(FormulaSheet sheet, InputsSheet inputs, StudyInput study) {
        this.sheet = sheet;
        this.inputs = inputs;
        this.study = study;
    }

    void write(PlanResult plan, CostQuantities costs, QuantitiesSheet quantities, PricesSheet prices, String footer) {
        sheet.title("Ledger of “" + plan.name() + "”, " + study.currency() + ": quantities at prices, discounted");
        int head = sheet.row();
        sheet.head(head, 0, "Line", false);
        sheet.head(head, 1, "Category", false);
        sheet.head(head, 2, "Present value", true);
        for (int year = 0; year < study.years(); year++) {
            sheet.head(head, FIRST_YEAR + year, String.valueOf(study.baseYear() + year), true);
        }
        writeFactors();
        firstLine = sheet.next();
        quantities.lines().forEach(l -> writePriced(l, quantities, prices));
        for (CostCategory category : CostCategory.values()) {
            writeFixed(category, costs.fixed().stream().filter(f -> f.category() == category).toList());
        }
        Map<Flow, Double> flows = new LinkedHashMap<>();
        plan.funding().flows().forEach(f -> flows.merge(new Flow(f.kind(), f.source(), f.year()), f.amount(), Double::sum));
        flows.forEach(this::writeFlow);
        lastLine = Math.max(firstLine, sheet.next() - 1);
        writeSums();
        sheet.widths(52, 26, 16);
        sheet.widthsFrom(FIRST_YEAR, study.years(), 14);
        sheet.print(footer, 2, head, FIRST_YEAR + study.years());
    }

    private void writeFactors() {
        for (FlowTime time : FlowTime.values()) {
            times.put(time, factor("Time of what falls at the " + PricesSheet.words(time) + ", years", "0.0", y -> PricesSheet.time(inputs, time, y)));
        }
        for (FlowTime time : FlowTime.values()) {
            stated.put(time, factor("Money stated over constant money, " + PricesSheet.words(time), FormulaSheet.FACTOR,
                    y -> "IF(" + inputs.isNominal() + ",(1+" + inputs.inflation() + ")^" + at(times.get(time), y) + ",1)"));
        }
        for (FlowTime time : FlowTime.values()) {
            present.put(time, factor("Present over stated money, " + PricesSheet.words(time), FormulaSheet.FACTOR, y -> "(1+IF("
                    + inputs.isNominal() + "," + inputs.nominal() + "," + inputs.real() + "))^(-" + at(times.get(time), y) + ")"));
        }
    }

    /** What a source pays in a year. */
    private record Flow(FundingFlow.Kind kind, String source, int year) {
    }

    private interface OfYear {
        String formula(int year);
    }

    private int factor(String label, String format, OfYear of) {
        int row = sheet.row();
        sheet.words(row, 0, label);
        for (int year = 0; year < study.years(); year++) {
            sheet.formula(row, FIRST_YEAR + year, of.formula(year), format);
        }
        return row;
    }

    private static String at(int row, int year) {
        return FormulaSheet.fixed(row, FIRST_YEAR + year);
    }

    private void writePriced(QuantitiesSheet.Line line, QuantitiesSheet quantities, PricesSheet prices) {
        int row = named(prices.prices().get(line.price()).name() + (line.insured() ? ", premium for it" : ""), line.category());
        for (int year = 0; year < study.years(); year++) {
            String price = prices.at(line.price(), line.pricedAt(), line.pricedIn().orElse(year));
            sheet.formula(row, FIRST_YEAR + year, quantities.at(line.row(), year) + "*" + price + (line.insured() ? "*"
                    + inputs.premium() : "")
                    + "*" + at(stated.get(line.category().time()), year), FormulaSheet.MONEY);
        }
    }

    private int named(String name, CostCategory category) {
        int row = sheet.row();
        sheet.words(row, 0, name);
        sheet.words(row, 1, category.label());
        return row;
    }

    private void writeFixed(CostCategory category, List<CostQuantities.Fixed> fixed) {
        if (!fixed.isEmpty()) {
            int row = named("amounts that are no quantity at a price", category);
            Map<Integer, Double> byYear = new TreeMap<>();
            fixed.forEach(f -> byYear.merge(f.year(), f.constant(), Double::sum));
            byYear.forEach((year, constant) -> sheet.formula(row, FIRST_YEAR + year, constant + "*"
                    + at(stated.get(category.time()), year),
                    FormulaSheet.MONEY));
        }
    }

    /** Money of its time is brought to constant money; what moves only after the study counts at its end with what it is worth then. */
    private void writeFlow(Flow flow, double amount) {
        boolean within = flow.year() < study.years();
        CostCategory due = flow.kind() == FundingFlow.Kind.AID ? CostCategory.AID_DUE : CostCategory.AWARDS_DUE;
        CostCategory category = within ? flow.kind().category() : due;
        int year = Math.min(flow.year(), study.years() - 1);
        String time = "(" + PricesSheet.time(inputs, flow.kind().category().time(), flow.year()) + ")";
        String wait = within ? "" : "*(1+" + inputs.real() + ")^(-(" + time + "-" + study.years() + "))";
        int row = named(flow.source() + ", money of " + (study.baseYear() + flow.year()), category);
        sheet.formula(row, FIRST_YEAR + year, "-(" + amount + ")" + wait + "/(1+" + inputs.inflation() + ")^" + time + "*"
                + at(stated.get(category.time()), year), FormulaSheet.MONEY);
    }

    private void writeSums() {
        sheet.skip();
        int first = sheet.next();
        for (CostCategory category : CostCategory.values()) {
            writeCategory(category);
        }
        int last = sheet.next() - 1;
        int total = sheet.row();
        sheet.words(total, 0, "All costs");
        for (int column = FIRST_YEAR - 1; column < FIRST_YEAR + study.years(); column++) {
            sheet.formula(total, column, "SUM(" + FormulaSheet.here(first, column) + ":" + FormulaSheet.here(last, column) + ")",
                    FormulaSheet.MONEY, true);
        }
        presentCost = total;
        annual = sheet.row();
        sheet.words(annual, 0, "Annual equivalent: level yearly cost in constant money with the same present value");
        sheet.formula(annual, 2, annualFormula(), FormulaSheet.MONEY);
        for (FlowTime time : FlowTime.values()) {
            totals.put(time, factor("Of these " + PricesSheet.words(time), FormulaSheet.MONEY, y -> sumOf(time, first, FIRST_YEAR
                    + y)));
        }
    }

    private void writeCategory(CostCategory category) {
        int row = sheet.row();
        sheet.words(row, 0, category.label());
        for (int year = 0; year < study.years(); year++) {
            int column = FIRST_YEAR + year;
            sheet.formula(row, column, "SUMIF(" + FormulaSheet.fixed(firstLine, 1) + ":" + FormulaSheet.fixed(lastLine, 1) + ","
                    + FormulaSheet.fixed(row, 0) + "," + FormulaSheet.here(firstLine, column) + ":" + FormulaSheet.here(lastLine,
                            column)
                    + ")",
                    FormulaSheet.MONEY);
        }
        int end = FIRST_YEAR + study.years() - 1;
        sheet.formula(row, 2, "SUMPRODUCT(" + FormulaSheet.across(row, FIRST_YEAR, end) + ","
                + FormulaSheet.across(present.get(category.time()), FIRST_YEAR, end) + ")", FormulaSheet.MONEY);
    }

    private static String sumOf(FlowTime time, int first, int column) {
        StringBuilder sum = new StringBuilder("0");
        for (CostCategory category : CostCategory.values()) {
            if (category.time() == time) {
                sum.append('+').append(FormulaSheet.here(first + category.ordinal(), column));
            }
        }
        return sum.toString();
    }

    private String annualFormula() {
        String cost = FormulaSheet.here(presentCost, 2);
        return "IF(" + inputs.real() + "=0," + cost + "/" + study.years() + "," + cost + "*" + inputs.real() + "/(1-(1+"
                + inputs.real() + ")^(-"
                + study.years() + ")))";
    }

    /** Present cost of the plan. */
    String presentCost() {
        return sheet.at(presentCost, 2);
    }

    String annual() {
        return sheet.at(annual, 2);
    }

    /** Costs that fall at a time of a year, stated money. */
    String total(FlowTime time, int year) {
        return sheet.at(totals.get(time), FIRST_YEAR + year);
    }

    /** Present over stated money. */
    String present(FlowTime time, int year) {
        return sheet.at(present.get(time), FIRST_YEAR + year);
    }
}
