package org.amberyard.charts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.BillUnit;
import org.amberyard.core.tariff.BilledDemand;
import org.amberyard.core.tariff.DemandRule;
import org.amberyard.core.tariff.PeakMoment;
import org.amberyard.core.yard.YardYear;

/**
 * A month's bill step by step. On a meter that is shared with the building it begins with the bill of the building alone, and
 * each line counts with what charging adds to it.
 *
 * @param steps steps in the order of the bill
 * @param building bill of the building alone, where the meter is shared, money
 * @param total the bill, money
 */
record BillSteps(List<Step> steps, Optional<Double> building, double total) {

    /**
     * A line of the bill.
     *
     * @param label what is charged
     * @param price quantity and price
     * @param cause what set a demand; empty for other lines
     * @param peak when a demand was set, if it was by one
     * @param amount money that charging adds; the whole line where the meter is its own
     */
    record Step(String label, String price, String cause, Optional<PeakMoment> peak, double amount) {

        /** Quantity and price, and what set a demand. */
        String detail() {
            return cause.isEmpty() ? price : price + ", " + cause;
        }
    }

    static BillSteps of(YardYear yard, int month) {
        Bill bill = yard.bills().bills().get(month);
        Optional<Bill> without = yard.withoutCharging().map(w -> w.bills().get(month));
        Map<String, BillLine> lines = new LinkedHashMap<>();
        bill.lines().forEach(l -> lines.put(key(l), l));
        without.ifPresent(b -> b.lines().forEach(l -> lines.putIfAbsent(key(l), l)));
        List<Step> steps = new ArrayList<>();
        lines.forEach((key, line) -> steps.add(new Step(line.label(), price(line),
                line.demand().map(BillSteps::words).orElse(""), line.demand().flatMap(BilledDemand::peak),
                amount(bill, key) - without.map(b -> amount(b, key)).orElse(0.0))));
        return new BillSteps(steps, without.map(Bill::total), bill.total());
    }

    /** True for a line that asks money for a demand. */
    static boolean onDemand(BillLine line) {
        return line.demand().isPresent() && line.amount() > 0;
    }

    private static String key(BillLine line) {
        return line.component() + " " + line.label();
    }

    private static double amount(Bill bill, String key) {
        return bill.lines().stream().filter(l -> key(l).equals(key)).mapToDouble(BillLine::amount).sum();
    }

    private static String price(BillLine line) {
        if (line.unit() == BillUnit.MONEY) {
            return Figures.percent(line.price()) + " of " + Figures.whole(line.quantity());
        }
        String size = line.unit() == BillUnit.MONTH ? "" : Figures.whole(line.quantity()) + " " + line.unit().label() + " × ";
        return size + Figures.pattern(line.price() < 1 ? "0.000" : "#,##0.00").format(line.price());
    }

    /** What set a demand; its size stands before. */
    private static String words(BilledDemand demand) {
        return demand.rule() == DemandRule.MEASURED ? demand.peak().map(p -> "set " + p.label()).orElse("no demand")
                : demand.explanation();
    }

    /** Steps that change the bill. */
    List<Step> shown() {
        return steps.stream().filter(s -> Math.abs(s.amount()) >= 0.005).toList();
    }
}
