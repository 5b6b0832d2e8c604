package org.amberyard.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.BillUnit;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardInput;

/** A month's electric bill as a utility would print it, with what set each demand below its line. */
public final class BillText {
    private static final int LABEL = 30;
    private static final String INDENT = "    ";
    private static final int WIDTH = 88;
    private static final MathContext SHARE_DIGITS = new MathContext(6);

    private final StudyInput study;
    private final YardDetail yard;
    private final int month;
    private final StringBuilder text = new StringBuilder();

    private BillText(StudyInput study, YardDetail yard, int month) {
        this.study = study;
        this.yard = yard;
        this.month = month;
    }

    /**
     * The bill.
     *
     * @param title what it is a bill for, such as plan and year
     * @param month month, 0 for January
     */
    public static String of(StudyInput study, String title, YardDetail yard, int month) {
        return new BillText(study, yard, month).written(title);
    }

    private String written(String title) {
        YardInput input = yard.year().input();
        Bill bill = yard.printed().bills().get(month);
        line(study.name() + ", " + title);
        line("Electric bill for " + MonthNames.full(month) + ", tariff " + input.metering().tariff().name()
                + " as in year " + bill.contractYear() + " of its contract");
        line("Charging " + input.rule().policy().label() + (input.metering().shared() ? ", on the building's meter"
                : ", on a meter of its own") + "; base-date prices in " + study.currency());
        line("");
        bill.lines().forEach(this::add);
        line("-".repeat(WIDTH));
        line(row("Total", "", bill.total()));
        yard.printedWithoutCharging().ifPresent(w -> addDifference(bill, w.bills().get(month)));
        return text.toString();
    }

    private void addDifference(Bill with, Bill without) {
        line(row("Without charging", "", without.total()));
        line(row("Charging adds", "", with.total() - without.total()));
    }

    private void add(BillLine line) {
        line(row(line.label(), counted(line), line.amount()));
        BillRows.explanation(yard, line, true).ifPresent(this::addWrapped);
    }

    /** What a line multiplies in a few words, and what set its demand. */
    static String words(BillLine line) {
        return counted(line) + line.demand().map(d -> ", " + d.explanation()).orElse("");
    }

    private static String counted(BillLine line) {
        if (line.unit() == BillUnit.MONEY) {
            String percent = BigDecimal.valueOf(100 * line.price()).round(SHARE_DIGITS).stripTrailingZeros().toPlainString();
            return String.format(Locale.ROOT, "%s %% of %,.2f", percent, line.quantity());
        }
        return quantity(line) + " " + line.unit().label() + " at " + price(line.price());
    }

    /** The quantity as bills print it: months and days whole unless they are parts, demand for a part of a month to a thousandth, all else to a tenth. */
    static String quantity(BillLine line) {
        boolean whole = (line.unit() == BillUnit.MONTH || line.unit() == BillUnit.DAY) && line.quantity() == Math.rint(line.quantity());
        return String.format(Locale.ROOT, whole ? "%,.0f" : line.unit() == BillUnit.KW_MONTH ? "%,.3f" : "%,.1f", line.quantity());
    }

    /** As many decimals as the price has, two at least. */
    static String price(double price) {
        String full = String.format(Locale.ROOT, "%.5f", price);
        return full.replaceAll("(\\.\\d\\d\\d*?)0+$", "$1");
    }

    private static String row(String label, String counted, double amount) {
        return String.format(Locale.ROOT, "%-" + LABEL + "s  %-38s  %,16.2f", label, counted, amount);
    }

    private void addWrapped(String words) {
        List<String> lines = new ArrayList<>(List.of(""));
        for (String word : words.split(" ")) {
            String last = lines.get(lines.size() - 1);
            if (last.isEmpty() || last.length() + 1 + word.length() <= WIDTH - INDENT.length()) {
                lines.set(lines.size() - 1, last.isEmpty() ? word : last + " " + word);
            } else {
                lines.add(word);
            }
        }
        lines.forEach(l -> line(INDENT + l));
    }

    private void line(String line) {
        text.append(line).append(System.lineSeparator());
    }
}
