package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.plan.BillPaths;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.tariff.BillYear;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.report.LastYears.LastYear;
import org.amberyard.report.ResultRows.OfYear;

/** What the rows of the tables of bills are made from. */
final class BillRows {
    private BillRows() {
    }

    /** A printed line of a month's bill. */
    record OfLine(LastYear at, boolean charging, Bill bill, BillLine line) {
        static List<OfLine> all(List<LastYear> years) {
            List<OfLine> rows = new ArrayList<>();
            for (LastYear year : years) {
                add(year, true, year.yard().printed(), rows);
                year.yard().printedWithoutCharging().ifPresent(w -> add(year, false, w, rows));
            }
            return rows;
        }

        private static void add(LastYear year, boolean charging, BillYear bills, List<OfLine> rows) {
            bills.bills().forEach(b -> b.lines().forEach(l -> rows.add(new OfLine(year, charging, b, l))));
        }

        String explanation() {
            return BillRows.explanation(at.yard(), line, charging).orElse(null);
        }
    }

    /** A line of a month's bill in any year, not rounded. */
    record OfBilled(OfYear at, boolean charging, Bill bill, BillLine line) {
        static List<OfBilled> all(StudyResult result) {
            List<OfBilled> rows = new ArrayList<>();
            for (OfYear year : YardRows.years(result)) {
                add(year, true, YardRows.yard(year).bills(), rows);
                YardRows.yard(year).withoutCharging().ifPresent(w -> add(year, false, w, rows));
            }
            return rows;
        }

        private static void add(OfYear year, boolean charging, BillYear bills, List<OfBilled> rows) {
            bills.bills().forEach(b -> b.lines().forEach(l -> rows.add(new OfBilled(year, charging, b, l))));
        }
    }

    /** What set the demand of a line and who drew then; nothing for lines that do not charge demand. */
    static Optional<String> explanation(YardDetail yard, BillLine line, boolean charging) {
        return line.demand().map(d -> d.explanation()
                + (charging ? d.peak().map(p -> "; " + yard.at(p).words()).orElse("") : ""));
    }

    /** The printed bill of a month beside that without charging. */
    record OfBill(LastYear at, Bill bill, Optional<Bill> without) {
        static List<OfBill> all(List<LastYear> years) {
            List<OfBill> rows = new ArrayList<>();
            for (LastYear year : years) {
                Optional<BillYear> without = year.yard().printedWithoutCharging();
                for (Bill bill : year.yard().printed().bills()) {
                    rows.add(new OfBill(year, bill, without.map(w -> w.bills().get(bill.month()))));
                }
            }
            return rows;
        }

        double ofCharging() {
            return bill.total() - without.map(Bill::total).orElse(0.0);
        }
    }

    /** What a plan's charging is billed in a year. */
    record OfYearBill(OfYear at) {
        static List<OfYearBill> all(StudyResult result) {
            return YardRows.years(result).stream().map(OfYearBill::new).toList();
        }

        BillParts base() {
            return YardRows.yard(at).parts();
        }

        BillParts paid() {
            return YardRows.yard(at).parts(BillPaths.of(at.result().input(), at.year()));
        }

        double kwh() {
            return YardRows.yard(at).yardKwh();
        }

        OptionalDouble perKwh(BillParts bill) {
            return kwh() > 0 ? OptionalDouble.of(bill.total() / kwh()) : OptionalDouble.empty();
        }
    }
}
