package org.amberyard.model.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import org.amberyard.model.SmallStudy;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.model.depot.MeterBillLine;
import org.amberyard.model.depot.MeterDay;
import org.junit.jupiter.api.Test;

class MeterBillRuleTest {
    private final SmallStudy small = new SmallStudy();
    private final Depot depot = small.study.getDepot();

    private MeterBill bill(String first, String last, Double total, double... amounts) {
        MeterBill bill = DepotFactory.eINSTANCE.createMeterBill();
        bill.setName("B-7");
        bill.setFirstDay(first);
        bill.setLastDay(last);
        bill.setTotal(total);
        for (double amount : amounts) {
            MeterBillLine line = DepotFactory.eINSTANCE.createMeterBillLine();
            line.setLine("Energy");
            line.setAmount(amount);
            bill.getLines().add(line);
        }
        depot.getMeterBills().add(bill);
        return bill;
    }

    private void day(String date, int steps) {
        MeterDay day = DepotFactory.eINSTANCE.createMeterDay();
        day.setDate(date);
        day.setLoadKw(String.join(" ", Collections.nCopies(steps, "20")));
        depot.getMeterDays().add(day);
    }

    @Test
    void aBillWhoseLinesAddUpIsFine() {
        bill("2026-01-08", "2026-02-06", 570.4, 68, 514.9, -12.5);
        Said.of(small);
    }

    @Test
    void daysMustBeOfTheCalendarAndInOrder() {
        bill("2026-02-30", "", 5.0);
        Said.of(small, "WARNING: Meter bill B-7: first day is 2026-02-30; it must be a day of the calendar as year, month and day, such as 2026-01-08.",
                "WARNING: Meter bill B-7: last day is missing; enter it as year, month and day, such as 2026-01-08.");
    }

    @Test
    void aPeriodEndsAfterItBegins() {
        bill("2026-02-06", "2026-01-08", 5.0);
        Said.of(small, "WARNING: Meter bill B-7: last day is 2026-01-08, before the first, 2026-02-06; mend one of the two.");
    }

    @Test
    void aLongPeriodIsAMistypedYear() {
        bill("2025-01-08", "2026-02-06", 5.0);
        Said.of(small, "WARNING: Meter bill B-7: the period has 395 days; check both years.");
    }

    @Test
    void linesAreHeldAgainstTheTotal() {
        bill("2026-01-08", "2026-02-06", 100.0, 68, 31.99);
        Said.of(small,
                "WARNING: Meter bill B-7: total is 100 money but its lines sum to 99.99 money; a line is missing or mistyped, or the total holds a balance "
                        + "of earlier bills.");
    }

    @Test
    void aBillSaysSomething() {
        bill("2026-01-08", "2026-02-06", null);
        Said.of(small, "WARNING: Meter bill B-7: it has neither lines nor a total; enter what is printed.");
    }

    @Test
    void daysOfTheMeterAreToldOnceInWholeSeries() {
        day("2026-01-08", 96);
        day("2026-01-08", 24);
        day("8 Jan", 25);
        Said.of(small, "WARNING: Meter day 2026-01-08: it appears more than once, and the first counts; keep one.",
                "WARNING: Meter day 8 Jan: date is 8 Jan; it must be a day of the calendar as year, month and day, such as 2026-01-15.",
                "WARNING: Meter day 8 Jan: loads: there are 25 numbers but there must be 24, 48 or 96, from midnight to midnight; import the meter's data "
                        + "again or correct it.");
    }

    private List<Finding> found() {
        return new StudyValidation(ValueText.PLAIN).check(small.study);
    }

    /** No plan rests on a bill, so one that is half entered is warned of only. */
    @Test
    void anUnfinishedBillStopsNoStudy() {
        bill("2026-01-08", "2026-02-06", 100.0, 68).setName("");
        MeterBill other = bill("2026-01-08", "2026-02-06", 100.0, 68, 32);
        other.getLines().get(1).setAmount(null);
        other.getLines().get(1).setLine(" ");
        assertEquals(List.of(), found().stream().filter(f -> f.severity() == Severity.ERROR).toList());
        assertEquals(1, found().stream().filter(f -> f.element() == other.getLines().get(1))
                .filter(f -> f.message().endsWith("its amount has not been entered, and the line is left out; enter what is printed, 0 where the bill says 0."))
                .count());
    }
}
