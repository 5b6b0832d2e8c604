package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.units.Unit;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.model.depot.MeterBillLine;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Bills of the building's meter as printed, a row for each of their lines. What a bill tells once, such as its period and its total, may stand
 * in its first row or in each.
 */
final class MeterBillSheet implements SheetKind {
    private static final String BILL = Literals.METER_BILL__NAME.getName();
    private static final String FROM = Literals.METER_BILL__FIRST_DAY.getName();
    private static final String UNTIL = Literals.METER_BILL__LAST_DAY.getName();
    private static final String LINE = Literals.METER_BILL_LINE__LINE.getName();
    private static final String AMOUNT = Literals.METER_BILL_LINE__AMOUNT.getName();

    @Override
    public String id() {
        return "printed-bills";
    }

    @Override
    public String label() {
        return "Printed bills, line by line";
    }

    @Override
    public String purpose() {
        return "Adds bills of the building’s meter, which are then worked out again by their tariff; of a bill that the study has, lines of the same "
                + "name are set.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        return List.of(
                SheetColumn.derived(BILL, "Bill", SheetColumn.Content.TEXT, Unit.NONE,
                        "Number or month of the bill; empty for the bill of the row above.", "invoice", "bill number", "invoice number", "bill name",
                        "statement"),
                SheetColumn.derived(FROM, "First day", SheetColumn.Content.DATE, Unit.NONE, "First day that is billed.", "from", "start", "start date",
                        "period start", "service from", "read from", "bill start").must(),
                SheetColumn.derived(UNTIL, "Last day", SheetColumn.Content.DATE, Unit.NONE,
                        "Last day that is billed. Where bills begin on the day on which the one before ends, that day counts for the later.", "until", "to",
                        "end",
                        "end date", "period end", "service to", "read to", "bill end").must(),
                SheetColumn.derived(LINE, "Line", SheetColumn.Content.TEXT, Unit.NONE, "What the line charges, in the words of the bill.", "charge",
                        "line item", "description", "item", "charge description").must(),
                SheetColumn.derived(AMOUNT, "Amount", SheetColumn.Content.NUMBER, Unit.MONEY, "Amount of the line; below 0 for a credit.", "charge amount",
                        "line amount", "cost", "usd").must(),
                SheetColumn.of(Literals.METER_BILL__ENERGY_KWH, "kwh", "usage", "billed kwh", "energy use"),
                SheetColumn.of(Literals.METER_BILL__DEMAND_KW, "kw", "peak", "billed kw", "billed demand", "max demand"),
                SheetColumn.of(Literals.METER_BILL__TOTAL, "total due", "amount due", "bill total", "current charges"),
                SheetColumn.of(Literals.METER_BILL__TARIFF, "rate", "rate schedule", "schedule"));
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(BILL, "2026-01", FROM, "2025-12-09", UNTIL, "2026-01-08", LINE, "Customer charge", AMOUNT, "68.00", "energyKwh", "28640", "demandKw",
                "86.4", "total", "4102.77").getOrDefault(column.id(), "");
    }

    /** The column of a day tells its field, though it reads dates as people write them. */
    @Override
    public Optional<String> telling(EStructuralFeature field) {
        return List.of(Literals.METER_BILL__NAME, Literals.METER_BILL__FIRST_DAY, Literals.METER_BILL__LAST_DAY, Literals.METER_BILL_LINE__LINE,
                Literals.METER_BILL_LINE__AMOUNT).contains(field) ? Optional.of(field.getName()) : Optional.empty();
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        if (outcome.study().getDepot() == null) {
            outcome.problem(0, "The study has no depot whose meter these bills could be of; add one on the page of the depot.");
            return;
        }
        new Reading(outcome, columns(outcome.study())).all(sheet.rows());
    }

    /** The rows of a bill. */
    private static final class Rows {
        private final List<MappedRow> rows = new ArrayList<>();
        private LocalDate first;
        private LocalDate last;
    }

    /** One table being read. */
    private static final class Reading {
        private final SheetOutcome outcome;
        private final FieldValue values;
        private final List<SheetColumn> once;
        private final Map<String, Rows> bills = new LinkedHashMap<>();

        Reading(SheetOutcome outcome, List<SheetColumn> columns) {
            this.outcome = outcome;
            this.values = new FieldValue(outcome.study());
            this.once = columns.stream().filter(c -> c.field().isPresent()).toList();
        }

        void all(List<MappedRow> rows) {
            String above = "";
            for (MappedRow row : rows) {
                above = row(row, above);
            }
            bills.values().removeIf(b -> b.rows.isEmpty());
            List<String> shortened = shorten();
            if (!shortened.isEmpty()) {
                outcome.remark("Bills begin on the day on which the one before ends; that day counts for the later, so the earlier ends a day before: "
                        + String.join(", ", shortened) + ".");
            }
            bills.forEach(this::write);
        }

        /** Has bills of the table and of the study end a day before where another begins on their last day; answers which. */
        private List<String> shorten() {
            List<MeterBill> kept = depot().getMeterBills().stream().filter(b -> bills.keySet().stream().noneMatch(n -> n.equalsIgnoreCase(b.getName())))
                    .toList();
            List<LocalDate> begins = Stream.concat(bills.values().stream().map(b -> b.first),
                    kept.stream().flatMap(b -> IsoDay.of(b.getFirstDay()).stream())).toList();
            List<String> shortened = new ArrayList<>();
            bills.forEach((name, bill) -> {
                if (bill.first.isBefore(bill.last) && begins.contains(bill.last)) {
                    bill.last = bill.last.minusDays(1);
                    shortened.add(name);
                }
            });
            kept.forEach(b -> shorten(b, shortened));
            return shortened;
        }

        /** Has a bill that the study has end a day before where one of the table begins on its last day. */
        private void shorten(MeterBill bill, List<String> shortened) {
            Optional<LocalDate> last = IsoDay.of(bill.getLastDay()).filter(l -> IsoDay.of(bill.getFirstDay()).filter(l::isAfter).isPresent());
            last.flatMap(l -> bills.values().stream().filter(b -> b.first.equals(l)).findFirst()).ifPresent(next -> {
                outcome.set(next.rows.get(0).number(), bill, Literals.METER_BILL__LAST_DAY, last.get().minusDays(1).toString());
                shortened.add(ElementNames.of(bill));
            });
        }

        /** Puts a row to its bill; answers the bill's name. */
        private String row(MappedRow row, String above) {
            RowReading cells = outcome.reading(row);
            String name = cells.of(() -> row.text(BILL), Optional.<String>empty()).orElse(above);
            LocalDate first = cells.of(() -> row.date(FROM), Optional.<LocalDate>empty()).orElse(null);
            LocalDate last = cells.of(() -> row.date(UNTIL), Optional.<LocalDate>empty()).orElse(null);
            cells.of(() -> row.text(LINE).orElseThrow(() -> row.wrong(LINE, "The row names no line of the bill; enter what it charges, or delete the row.")),
                    "");
            cells.required(AMOUNT);
            if (name.isEmpty() && first != null) {
                name = first.toString();
            }
            if (name.isEmpty()) {
                cells.wrong(row.wrong(BILL, "The row tells no bill; enter its number or its first day."));
            }
            Rows bill = bills.computeIfAbsent(name, n -> new Rows());
            bill.first = told(row, FROM, bill.first, first, cells);
            bill.last = told(row, UNTIL, bill.last, last, cells);
            checkPeriod(row, bill, last != null || first != null, cells);
            if (cells.isSound()) {
                bill.rows.add(row);
            }
            return name;
        }

        private static void checkPeriod(MappedRow row, Rows bill, boolean tellsDays, RowReading cells) {
            if (bill.first == null) {
                cells.wrong(row.wrong(FROM, "The first day of the bill is missing; enter it in the first row of the bill."));
            }
            if (bill.last == null) {
                cells.wrong(row.wrong(UNTIL, "The last day of the bill is missing; enter it in the first row of the bill."));
            }
            if (tellsDays && bill.first != null && bill.last != null && bill.last.isBefore(bill.first)) {
                cells.wrong(row.wrong(UNTIL, "The last day of the bill is " + bill.last + ", before the first, " + bill.first + "; mend one of the two."));
            }
        }

        private static LocalDate told(MappedRow row, String id, LocalDate before, LocalDate now, RowReading cells) {
            if (before != null && now != null && !before.equals(now)) {
                cells.wrong(row.wrong(id, "Another row of the same bill says " + before + "; mend one of the two, or give the bills names of their own."));
            }
            return before == null ? now : before;
        }

        private void write(String name, Rows rows) {
            int first = rows.rows.get(0).number();
            MeterBill bill = depot().getMeterBills().stream().filter(b -> name.equalsIgnoreCase(b.getName())).findFirst().orElseGet(() -> added(name, first));
            outcome.set(first, bill, Literals.METER_BILL__FIRST_DAY, rows.first.toString());
            outcome.set(first, bill, Literals.METER_BILL__LAST_DAY, rows.last.toString());
            List<MeterBillLine> left = new ArrayList<>(bill.getLines());
            for (MappedRow row : rows.rows) {
                once.forEach(c -> outcome.attempt(row, () -> values.of(row, c).ifPresent(v -> outcome.set(row.number(), bill, c.field().orElseThrow(), v))));
                outcome.attempt(row, () -> line(row, bill, left));
            }
            if (!left.isEmpty()) {
                outcome.remark("Lines of bill “" + name + "” that the table does not name are kept: " + ElementIndex.names(left) + ".");
            }
        }

        private void line(MappedRow row, MeterBill bill, List<MeterBillLine> left) throws CellFault {
            String words = row.text(LINE).orElse("");
            MeterBillLine line = left.stream().filter(l -> words.equalsIgnoreCase(l.getLine())).findFirst().orElse(null);
            left.remove(line);
            if (line == null) {
                line = DepotFactory.eINSTANCE.createMeterBillLine();
                bill.getLines().add(line);
                line.setLine(words);
                outcome.added(row.number(), line);
            }
            outcome.set(row.number(), line, Literals.METER_BILL_LINE__AMOUNT, row.required(AMOUNT));
        }

        private MeterBill added(String name, int row) {
            MeterBill bill = DepotFactory.eINSTANCE.createMeterBill();
            bill.setName(name);
            depot().getMeterBills().add(bill);
            outcome.added(row, bill);
            return bill;
        }

        private Depot depot() {
            return outcome.study().getDepot();
        }
    }
}
