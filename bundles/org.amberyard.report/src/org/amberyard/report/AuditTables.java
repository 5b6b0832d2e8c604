package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.amberyard.core.audit.AuditLine;
import org.amberyard.core.audit.BillAudit;
import org.amberyard.core.audit.PrintedBill;
import org.amberyard.core.audit.PrintedLine;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.BillUnit;
import org.amberyard.core.tariff.BillingPeriod;
import org.amberyard.core.units.Unit;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** Tables of printed bills beside what their tariff asks for the metered load of the same days. */
final class AuditTables {

    private AuditTables() {
    }

    /** A line of a printed bill, of the computed one, or of both. */
    record OfLine(BillAudit audit, AuditLine line) {
        static List<OfLine> all(StudyResult result) {
            List<OfLine> rows = new ArrayList<>();
            result.billAudits().forEach(a -> a.lines().forEach(l -> rows.add(new OfLine(a, l))));
            return rows;
        }

        String match() {
            return line.printed().isEmpty() ? "not on the printed bill" : line.computed().isEmpty() ? "not in the tariff" : "both";
        }
    }

    private static PrintedBill printed(BillAudit audit) {
        return audit.bill().printed();
    }

    static TableDefinition<BillAudit> bills() {
        return new TableDefinition<>("bill_audit", "Printed bills beside the tariff", StudyResult::billAudits)
                .text("meter_bill", "Bill", "Name of the printed bill.", a -> printed(a).name())
                .text("period", "Period", "First and last day that are billed.", a -> printed(a).period().words())
                .heads()
                .text("tariff", "Tariff", "Tariff by which the bill is worked out again.", a -> a.bill().tariff().name())
                .text("verdict", "Verdict", "Whether the bills agree within 1 % of the printed one; where they do not, whether the metered data "
                        + "are what was billed. Nothing is worked out where a day of the period was not metered.", a -> a.verdict().label())
                .optionalMoney("printed", "Printed", "Amount due as printed; the sum of the lines where no total was entered.",
                        a -> OptionalDouble.of(printed(a).due()))
                .why(AuditTables::whyPrinted)
                .optionalMoney("computed", "By the tariff", "What the tariff asks for the metered load of these days, each line in whole cents.",
                        a -> a.computed().map(c -> OptionalDouble.of(c.total())).orElse(OptionalDouble.empty()))
                .why(AuditTables::whyComputed)
                .optionalMoney("difference", "Difference", "By the tariff less printed.", BillAudit::difference)
                .optional("difference_share", "Difference over printed", Unit.SHARE, "Difference over the printed amount.", BillAudit::differenceShare)
                .optional("printed_kwh", "Energy printed", Unit.KILOWATT_HOUR, "Energy on the bill; no figure where it does not say.",
                        a -> printed(a).kwh())
                .optional("metered_kwh", "Energy metered", Unit.KILOWATT_HOUR, "Energy by the interval data of these days.",
                        a -> metered(a, a.meteredKwh()))
                .optional("printed_kw", "Demand printed", Unit.KILOWATT, "Demand on the bill; no figure where it does not say.", a -> printed(a).kw())
                .optional("metered_kw", "Demand metered", Unit.KILOWATT, "Highest demand by the interval data of these days.",
                        a -> metered(a, a.meteredKw()))
                .text("remark", "Remark", "What to look at first, which days and amounts are missing, and which earlier months a ratchet cannot see.",
                        AuditTables::remark);
    }

    private static OptionalDouble metered(BillAudit audit, double figure) {
        return audit.computed().isPresent() ? OptionalDouble.of(figure) : OptionalDouble.empty();
    }

    private static String remark(BillAudit audit) {
        List<String> remarks = new ArrayList<>();
        if (!audit.missing().isEmpty()) {
            remarks.add("The meter’s data lack " + audit.missingWords() + ".");
        }
        if (!printed(audit).without().isEmpty()) {
            remarks.add("Lines whose amount has not been entered are left out: " + String.join(", ", printed(audit).without()) + ".");
        }
        if (audit.energyDiffers()) {
            remarks.add("The energy of the data is not that of the bill: look at the data first.");
        }
        if (audit.demandDiffers()) {
            remarks.add("The demand of the data is not that of the bill: look at the data first.");
        }
        if (!audit.unknownBefore().isEmpty()) {
            List<BillingPeriod> unknown = audit.unknownBefore();
            remarks.add("A ratchet looks back at earlier months; " + unknown.size() + " of them, from "
                    + unknown.get(unknown.size() - 1).first() + " to " + unknown.get(0).last() + ", are not metered whole.");
        }
        return remarks.isEmpty() ? null : String.join(" ", remarks);
    }

    private static Derivation whyPrinted(BillAudit audit) {
        PrintedBill bill = printed(audit);
        InputRef total = new InputRef("MeterBill", bill.name(), "total");
        return bill.total().isPresent() ? Derivation.input("Total of bill " + bill.name(), bill.due(), Derivation.MONEY, total)
                : Derivation.sum("Lines of bill " + bill.name(), Derivation.MONEY, bill.lines().stream().map(l -> whyLine(bill, l)).toList());
    }

    private static Derivation whyLine(PrintedBill bill, PrintedLine line) {
        return Derivation.input(line.name(), line.amount(), Derivation.MONEY, new InputRef("MeterBillLine", bill.name() + " / " + line.name(), "amount"));
    }

    private static Derivation whyComputed(BillAudit audit) {
        List<Derivation> lines = audit.computed().map(Bill::lines).orElse(List.of()).stream().map(l -> whyLine(audit, l)).toList();
        return Derivation.sum("Bill by the tariff " + audit.bill().tariff().name(), Derivation.MONEY, lines);
    }

    private static Derivation whyLine(BillAudit audit, BillLine line) {
        Derivation tariff = Derivation.inputsOf("Inputs of: Tariff " + audit.bill().tariff().name(),
                InputRef.allOf("Tariff", audit.bill().tariff().name()));
        String unit = line.unit() == BillUnit.KWH ? "kWh" : line.unit() == BillUnit.KW ? "kW" : line.unit() == BillUnit.MONEY ? Derivation.MONEY : "";
        String what = line.demand().map(d -> "billed: " + d.explanation()).orElse("metered in the hours of the line");
        return Derivation.of(line.label(), line.amount(), Derivation.MONEY, "quantity × price, rounded to the cent",
                Derivation.of(line.unit() == BillUnit.KW_MONTH ? "kW × months" : "quantity", line.quantity(), unit, what), tariff);
    }

    static TableDefinition<OfLine> lines() {
        return new TableDefinition<>("bill_audit_lines", "Printed bills beside the tariff, line by line", OfLine::all)
                .text("meter_bill", "Bill", "Name of the printed bill.", r -> printed(r.audit()).name())
                .text("line", "Printed line", "What the bill calls it; empty where it has no such line.", r -> emptyAsNone(r.line().printedName()))
                .heads()
                .text("charge", "Charge of the tariff", "What the tariff calls it; empty where it has no such charge. Lines are paired by their words, by "
                        + "equal amounts of one kind, and where one is alone of its kind by that; a line that the bill prints once stands beside all parts "
                        + "of its charge.", r -> emptyAsNone(r.line().computedName()))
                .text("match", "Found in", "Whether both have the line, or one alone.", OfLine::match)
                .optionalMoney("printed", "Printed", "Amount as printed.", r -> r.line().printedAmount())
                .optionalMoney("computed", "By the tariff", "Amount by the tariff, in whole cents.", r -> r.line().computedAmount())
                .why(r -> Derivation.sum("By the tariff", Derivation.MONEY, r.line().computed().stream().map(l -> whyLine(r.audit(), l)).toList()))
                .money("difference", "Difference", "By the tariff less printed.", r -> r.line().difference())
                .text("quantities", "Quantities and prices", "What the tariff multiplies, and what set the demand.",
                        r -> emptyAsNone(r.line().computed().stream().map(BillText::words).collect(Collectors.joining("; "))));
    }

    private static String emptyAsNone(String words) {
        return words.isEmpty() ? null : words;
    }
}
