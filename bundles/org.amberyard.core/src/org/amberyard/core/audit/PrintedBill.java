package org.amberyard.core.audit;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.tariff.BillingPeriod;

/**
 * A bill as a utility has printed it.
 *
 * @param name name of the bill
 * @param period days that are billed
 * @param kwh energy, kWh; empty where the bill does not say
 * @param kw highest demand, kW; empty where the bill does not say
 * @param lines lines
 * @param without names of lines whose amount is not known, which are left out
 * @param total amount due for the period; empty for the sum of the lines
 */
public record PrintedBill(String name, BillingPeriod period, OptionalDouble kwh, OptionalDouble kw, List<PrintedLine> lines,
        List<String> without, OptionalDouble total) {

    public PrintedBill {
        lines = List.copyOf(lines);
        without = List.copyOf(without);
    }

    /** A bill of which every amount is known. */
    public PrintedBill(String name, BillingPeriod period, OptionalDouble kwh, OptionalDouble kw, List<PrintedLine> lines, OptionalDouble total) {
        this(name, period, kwh, kw, lines, List.of(), total);
    }

    /** True when what is due is not known: it is the sum of lines of which some have no amount. */
    public boolean incomplete() {
        return total.isEmpty() && !without.isEmpty();
    }

    /** Amount due for the period; of an incomplete bill what is known of it. */
    public double due() {
        return total.orElseGet(() -> lines.stream().mapToDouble(PrintedLine::amount).sum());
    }
}
