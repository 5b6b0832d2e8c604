package org.amberyard.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardInput;
import org.amberyard.report.ResultColumn.Type;

/**
 * The bill of a month of a plan's last year line by line, under any charging policy and on any tariff of the study.
 *
 * @param plan place of the plan
 * @param policy how the yard charges
 * @param tariff place of the tariff, 0 for the one in use, then the others in their order
 * @param month month, 0 for January
 */
public record ChosenBill(int plan, ChargePolicy policy, int tariff, int month) {
    private static final String NAME = "chosen_bill";
    private static final String TITLE = "Bill line by line";

    /** The table: lines as printed, their sum, and what the bill would be without charging on a meter that the building shares. */
    public ResultTable table(StudyResult result) {
        YardInput input = result.plans().get(plan).yardComparison().last(policy, tariff);
        YardDetail yard = YardDetail.of(input);
        Bill bill = yard.printed().bills().get(month);
        List<List<Object>> rows = new ArrayList<>();
        bill.lines().forEach(line -> rows.add(row(yard, line)));
        rows.add(sum("Bill of " + MonthNames.full(month), bill.total()));
        yard.printedWithoutCharging().ifPresent(without -> {
            double total = without.bills().get(month).total();
            rows.add(sum("Without charging", total));
            rows.add(sum("Charging adds", bill.total() - total));
        });
        return new ResultTable(NAME, TITLE, columns(result.input().currency()), rows, "", 1);
    }

    private static List<ResultColumn> columns(String currency) {
        return List.of(new ResultColumn("line", "Line", "", Type.TEXT, "What is charged."),
                new ResultColumn("component", "Part", "", Type.TEXT, "Part of the bill."),
                new ResultColumn("quantity", "Quantity", "", Type.FIGURE, "Quantity, in the unit that the row names."),
                new ResultColumn("unit", "Unit", "", Type.TEXT, "Unit of the quantity."),
                new ResultColumn("price", "Price per unit", "", Type.FIGURE,
                        "Base-date price per unit; where the unit is money, the share of it that is charged."),
                new ResultColumn("amount", "Amount", currency, Type.FIGURE, "Amount as printed, in whole cents."),
                new ResultColumn("explanation", "What set the demand", "", Type.TEXT,
                        "For lines on demand: the hour and the day that set it, and which buses drew power then."));
    }

    private static List<Object> row(YardDetail yard, BillLine line) {
        return Arrays.asList(line.label(), line.component().label(), BillText.quantity(line), line.unit().label(),
                BillText.price(line.price()), money(line.amount()),
                BillRows.explanation(yard, line, true).orElse(null));
    }

    private static String money(double amount) {
        return String.format(Locale.ROOT, "%,.2f", amount);
    }

    private static List<Object> sum(String label, double amount) {
        return Arrays.asList(label, null, null, null, null, money(amount), null);
    }
}
