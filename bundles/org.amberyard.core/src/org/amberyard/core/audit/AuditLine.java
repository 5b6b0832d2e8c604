package org.amberyard.core.audit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.amberyard.core.tariff.BillLine;

/**
 * Lines of a printed bill beside those of the computed one that charge the same; where none does, one side is empty.
 *
 * @param printed lines as printed
 * @param computed lines by the tariff
 */
public record AuditLine(List<PrintedLine> printed, List<BillLine> computed) {

    public AuditLine {
        printed = List.copyOf(printed);
        computed = List.copyOf(computed);
    }

    /** What the bill calls it; empty where it has no such line. */
    public String printedName() {
        return printed.stream().map(PrintedLine::name).collect(Collectors.joining(" + "));
    }

    /** What the tariff calls it; empty where it has no such charge. */
    public String computedName() {
        return computed.stream().map(BillLine::label).collect(Collectors.joining(" + "));
    }

    /** Money as printed. */
    public OptionalDouble printedAmount() {
        return printed.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(printed.stream().mapToDouble(PrintedLine::amount).sum());
    }

    /** Money by the tariff. */
    public OptionalDouble computedAmount() {
        return computed.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(computed.stream().mapToDouble(BillLine::amount).sum());
    }

    /** Computed less printed money; a side that is empty counts nothing. */
    public double difference() {
        return computedAmount().orElse(0) - printedAmount().orElse(0);
    }
}
