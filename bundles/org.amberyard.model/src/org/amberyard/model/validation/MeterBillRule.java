package org.amberyard.model.validation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.model.depot.MeterBillLine;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** A printed bill is of days in their order, and its lines add up to its total. */
final class MeterBillRule implements Rule {
    /** Longer ones are two bills, or a mistyped year (common practice, no source). */
    private static final int LONGEST_DAYS = 100;
    /** Half a cent, below which sums of cents are the same. */
    private static final double SAME_MONEY = 0.005;

    @Override
    public void check(Study study, Findings findings) {
        if (study.getDepot() != null) {
            study.getDepot().getMeterBills().forEach(bill -> check(bill, findings));
        }
    }

    private static void check(MeterBill bill, Findings findings) {
        Optional<LocalDate> first = day(bill, Literals.METER_BILL__FIRST_DAY, findings);
        Optional<LocalDate> last = day(bill, Literals.METER_BILL__LAST_DAY, findings);
        if (first.isPresent() && last.isPresent()) {
            checkOrder(bill, first.get(), last.get(), findings);
        }
        if (bill.getLines().isEmpty() && bill.getTotal() == null) {
            findings.warning(bill, Literals.METER_BILL__TOTAL, "it has neither lines nor a total; enter what is printed.");
        }
        List<MeterBillLine> without = bill.getLines().stream().filter(l -> l.getAmount() == null).toList();
        without.forEach(l -> findings.warning(l, Literals.METER_BILL_LINE__AMOUNT,
                "its amount has not been entered, and the line is left out; enter what is printed, 0 where the bill says 0."));
        if (!bill.getLines().isEmpty() && without.isEmpty() && bill.getTotal() != null) {
            checkSum(bill, findings);
        }
    }

    private static void checkSum(MeterBill bill, Findings findings) {
        double sum = bill.getLines().stream().mapToDouble(MeterBillLine::getAmount).sum();
        if (Math.abs(sum - bill.getTotal()) > SAME_MONEY) {
            findings.warning(bill, Literals.METER_BILL__TOTAL, findings.fact(bill, Literals.METER_BILL__TOTAL) + " but its lines sum to "
                    + findings.value(bill, Literals.METER_BILL__TOTAL, Math.rint(100 * sum) / 100)
                    + "; a line is missing or mistyped, or the total holds a balance of earlier bills.");
        }
    }

    private static Optional<LocalDate> day(MeterBill bill, EAttribute field, Findings findings) {
        Optional<LocalDate> day = IsoDay.of((String) bill.eGet(field));
        if (day.isEmpty()) {
            findings.fault(bill, field, bill.eGet(field) == null || ((String) bill.eGet(field)).isBlank()
                    ? Findings.label(field) + " is missing; enter it as year, month and day, such as 2026-01-08."
                    : findings.fact(bill, field) + "; it must be a day of the calendar as year, month and day, such as 2026-01-08.");
        }
        return day;
    }

    private static void checkOrder(MeterBill bill, LocalDate first, LocalDate last, Findings findings) {
        long days = ChronoUnit.DAYS.between(first, last) + 1;
        if (days < 1) {
            findings.fault(bill, Literals.METER_BILL__LAST_DAY, findings.fact(bill, Literals.METER_BILL__LAST_DAY) + ", before the first, " + first
                    + "; mend one of the two.");
        } else if (days > LONGEST_DAYS) {
            findings.warning(bill, Literals.METER_BILL__LAST_DAY, "the period has " + days + " days; check both years.");
        }
    }
}
