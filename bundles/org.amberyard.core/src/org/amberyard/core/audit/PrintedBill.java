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
 * @param total amount due for the period; empty for the sum of the lines
 */
public record PrintedBill(String name, BillingPeriod period, OptionalDouble kwh, OptionalDouble kw, List<PrintedLine> lines,
        OptionalDouble total) {

    public PrintedBill {
        lines = List.copyOf(lines);
    }

    /** Amount due for the period. */
    public double due() {
        return total.orElseGet(() -> lines.stream().mapToDouble(PrintedLine::amount).sum());
    }
}
