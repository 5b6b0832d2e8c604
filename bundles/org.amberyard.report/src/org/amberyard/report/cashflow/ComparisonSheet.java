package org.amberyard.report.cashflow;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;

/** The sheet that answers: present cost, saving and payback of each plan, beside what the program computed. */
final class ComparisonSheet {
    private static final String TOLERANCE = "0.005";
    private static final String YEARS = "0.00";
    private static final List<String> HEADS = List.of("Plan", "Present cost", "Annual equivalent", "Saving against the baseline",
            "Simple payback, years", "Discounted payback, years", "Present cost by the program", "Difference, relative");
    private static final int PRESENT = 1;
    private static final int SAVING = 3;
    private static final int SIMPLE = 4;
    private static final int PROGRAM = 6;

    private final FormulaSheet sheet;
    private final StudyResult result;
    private final List<LedgerSheet> ledgers;
    private final List<Integer> rows = new ArrayList<>();

    ComparisonSheet(FormulaSheet sheet, StudyResult result, List<LedgerSheet> ledgers) {
        this.sheet = sheet;
        this.result = result;
        this.ledgers = ledgers;
    }

    void write(String footer) {
        sheet.title(result.input().name() + ": plans compared, " + result.input().currency());
        int head = sheet.row();
        for (int i = 0; i < HEADS.size(); i++) {
            sheet.head(head, i, HEADS.get(i), i > 0);
        }
        for (int plan = 0; plan < ledgers.size(); plan++) {
            rows.add(sheet.row());
        }
        for (int plan = 0; plan < ledgers.size(); plan++) {
            writePlan(plan);
        }
        result.comparisons().forEach(this::writePaybacks);
        sheet.widths(44, 18, 18, 18, 14, 14, 18, 14);
        sheet.print(footer, 1, head, HEADS.size());
    }

    private void writePlan(int plan) {
        int row = rows.get(plan);
        PlanResult of = result.plans().get(plan);
        sheet.words(row, 0, of.name() + (plan == result.input().baseline() ? " (baseline)" : ""));
        sheet.formula(row, PRESENT, ledgers.get(plan).presentCost(), FormulaSheet.MONEY);
        sheet.formula(row, PRESENT + 1, ledgers.get(plan).annual(), FormulaSheet.MONEY);
        sheet.formula(row, SAVING, FormulaSheet.fixed(rows.get(result.input().baseline()), PRESENT) + "-" + FormulaSheet.here(row,
                PRESENT), FormulaSheet.MONEY);
        sheet.number(row, PROGRAM, of.measures().presentCost(), FormulaSheet.MONEY);
        sheet.formula(row, PROGRAM + 1, FormulaSheet.here(row, PRESENT) + "/" + FormulaSheet.here(row, PROGRAM) + "-1", "0.0E+00");
    }

    private void writePaybacks(Comparison comparison) {
        sheet.skip();
        sheet.title("Cumulative saving of “" + result.plans().get(comparison.plan()).name()
                + "”; what is left at the end does not pay back");
        int head = sheet.row();
        List<String> heads = List.of("Point in time", "Years", "Saving", "Discounted saving", "Last below zero",
                "Discounted, last below zero");
        for (int i = 0; i < heads.size(); i++) {
            sheet.head(head, i, heads.get(i), i > 0);
        }
        int first = sheet.next();
        int points = 2 * result.input().years();
        for (int point = 0; point < points; point++) {
            writePoint(comparison.plan(), point, first);
        }
        int row = rows.get(comparison.plan());
        sheet.formula(row, SIMPLE, payback(first, points, 2), YEARS);
        sheet.formula(row, SIMPLE + 1, payback(first, points, 3), YEARS);
    }

    private void writePoint(int plan, int point, int first) {
        int year = point / 2;
        FlowTime time = point % 2 == 0 ? FlowTime.START : FlowTime.RUNNING;
        int row = sheet.row();
        sheet.words(row, 0, PricesSheet.words(time) + ", " + (result.input().baseYear() + year));
        sheet.number(row, 1, time.years(year, false), "0");
        LedgerSheet baseline = ledgers.get(result.input().baseline());
        LedgerSheet of = ledgers.get(plan);
        String saved = baseline.total(time, year) + "-" + of.total(time, year);
        String discounted = "(" + saved + ")*" + of.present(time, year);
        sheet.formula(row, 2, before(row, first, 2) + saved, FormulaSheet.MONEY);
        sheet.formula(row, 3, before(row, first, 3) + discounted, FormulaSheet.MONEY);
        for (int column = 2; column <= 3; column++) {
            sheet.formula(row, column + 2, "IF(" + FormulaSheet.here(row, column) + "<-" + TOLERANCE + "," + (point + 1) + ",0)",
                    "0");
        }
    }

    private static String before(int row, int first, int column) {
        return row == first ? "" : FormulaSheet.here(row - 1, column) + "+";
    }

    /** By straight lines between the points, from the last point below zero to the next. */
    private static String payback(int first, int points, int column) {
        int last = first + points - 1;
        String savings = range(first, last, column);
        String times = range(first, last, 1);
        String below = "MAX(" + range(first, last, column + 2) + ")";
        String at = "INDEX(" + savings + "," + below + ")";
        String next = "INDEX(" + savings + "," + below + "+1)";
        String from = "INDEX(" + times + "," + below + ")";
        String to = "INDEX(" + times + "," + below + "+1)";
        return "IF(MAX(MAX(" + savings + "),-MIN(" + savings + "))<" + TOLERANCE + ",\"no difference\",IF("
                + FormulaSheet.fixed(last, column) + "<-" + TOLERANCE
                + ",\"never\",IF(" + below + "=0,0," + from + "-" + at + "/(" + next + "-" + at + ")*(" + to + "-" + from + "))))";
    }

    private static String range(int first, int last, int column) {
        return FormulaSheet.fixed(first, column) + ":" + FormulaSheet.fixed(last, column);
    }
}
