package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.study.Study;

/**
 * Bills of the site's meter before buses are charged. A billing period that is no calendar month gives each month its part by days; its
 * demand counts for the month in which most of its days lie.
 */
final class UtilityBillSheet implements SheetKind {
    private static final String FROM = "from";
    private static final String UNTIL = "until";
    private static final String ENERGY = "energy";
    private static final String DEMAND = "demand";
    private static final int KNOWN_DAYS = 20;

    @Override
    public String id() {
        return "utility-bills";
    }

    @Override
    public String label() {
        return "Utility bills of the site";
    }

    @Override
    public String purpose() {
        return "Sets energy and peak of the building by month; of several years the last counts.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        return List.of(
                SheetColumn.derived(FROM, "From", SheetColumn.Content.DATE, Unit.NONE,
                        "First day of the billing period, or any day of its month.", "start", "start date", "period start", "from date", "month", "date",
                        "service from", "read from").must(),
                SheetColumn.derived(UNTIL, "Until", SheetColumn.Content.DATE, Unit.NONE,
                        "Day of the reading that ends the period, which counts for the next, or the last day of the period; empty for a calendar month.", "end",
                        "end date", "period end",
                        "to", "to date", "service to", "read to", "read date"),
                SheetColumn.derived(ENERGY, "Energy", SheetColumn.Content.NUMBER, Unit.KILOWATT_HOUR, "Energy billed.", "kwh", "usage", "use",
                        "consumption", "energy use", "billed kwh").must(),
                SheetColumn.derived(DEMAND, "Demand", SheetColumn.Content.NUMBER, Unit.KILOWATT, "Highest demand billed.", "kw", "peak", "peak demand",
                        "billed demand", "max demand", "billed kw"));
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(FROM, "2025-07-01", UNTIL, "2025-08-01", ENERGY, "9840", DEMAND, "41.5").getOrDefault(column.id(), "");
    }

    /** What is known of a month. */
    private static final class Known {
        private double days;
        private double kwh;
        private double kw;
        private int row;
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        if (outcome.study().getDepot() == null) {
            outcome.problem(0, "The study has no depot whose building these bills could be of; add one on the page of the depot.");
            return;
        }
        List<Bill> bills = new ArrayList<>();
        sheet.rows().forEach(row -> bill(row, outcome.reading(row)).ifPresent(bills::add));
        boolean lastDayIncluded = lastDayIncluded(bills);
        if (lastDayIncluded) {
            outcome.remark("Each period ends on the day before the next begins, or on the last day of its month; that day is taken as part of it.");
        }
        TreeMap<YearMonth, Known> months = new TreeMap<>();
        bills.forEach(bill -> outcome.attempt(bill.row(), () -> spread(lastDayIncluded ? bill.longer() : bill, months)));
        Map<Month, YearMonth> last = new TreeMap<>();
        months.forEach((month, known) -> {
            if (known.days >= KNOWN_DAYS) {
                last.put(Month.get(month.getMonthValue() - 1), month);
            } else {
                outcome.remark(String.format(Locale.ROOT, "Of %s only %.0f days are billed; it is left out.", month, known.days));
            }
        });
        last.forEach((month, of) -> set(month, of, months.get(of), outcome));
    }

    /**
     * A bill of a period.
     *
     * @param until the day on which it ends, which counts for the next
     * @param monthly true where a whole month was named, and no end
     */
    private record Bill(MappedRow row, LocalDate first, LocalDate until, boolean monthly, double kwh) {

        /** The same with the day on which it ends as part of it. */
        Bill longer() {
            return monthly ? this : new Bill(row, first, until.plusDays(1), false, kwh);
        }

        private boolean isMonthButADay() {
            return first.getDayOfMonth() == 1 && until.equals(first.plusMonths(1).minusDays(1));
        }
    }

    /** The bill of a row; empty where something is wrong, which is told. */
    private static Optional<Bill> bill(MappedRow row, RowReading cells) {
        double kwh = cells.required(ENERGY);
        if (kwh < 0) {
            cells.wrong(row.fault(ENERGY, "an energy of at least 0"));
        }
        if (cells.number(DEMAND, 0) < 0) {
            cells.wrong(row.fault(DEMAND, "a demand of at least 0"));
        }
        LocalDate from = cells.of(() -> row.date(FROM).orElseThrow(() -> row.wrong(FROM, "A date is missing; enter the first day of the period.")), null);
        Optional<LocalDate> given = cells.of(() -> row.date(UNTIL), Optional.empty());
        if (from == null) {
            return Optional.empty();
        }
        LocalDate first = given.isPresent() ? from : from.withDayOfMonth(1);
        LocalDate until = given.orElse(first.plusMonths(1));
        if (!until.isAfter(first)) {
            cells.wrong(row.wrong(UNTIL, "The period ends on " + until + ", not after its start on " + first + "; mend one of the two."));
        }
        return cells.isSound() ? Optional.of(new Bill(row, first, until, given.isEmpty(), kwh)) : Optional.empty();
    }

    /**
     * Whether ends name the last day of the period instead of the day after: every period starts a day after the one before has ended, or
     * each is a month from its first day to its last.
     */
    private static boolean lastDayIncluded(List<Bill> bills) {
        List<Bill> periods = bills.stream().filter(b -> !b.monthly()).sorted(Comparator.comparing(Bill::first)).toList();
        Set<Long> gaps = IntStream.range(1, periods.size()).mapToObj(i -> ChronoUnit.DAYS.between(periods.get(i - 1).until(), periods.get(i).first()))
                .filter(gap -> gap == 0 || gap == 1).collect(Collectors.toSet());
        return gaps.equals(Set.of(1L)) || !periods.isEmpty() && gaps.isEmpty() && periods.stream().allMatch(Bill::isMonthButADay);
    }

    private static void spread(Bill bill, Map<YearMonth, Known> months) throws CellFault {
        MappedRow row = bill.row();
        LocalDate first = bill.first();
        LocalDate until = bill.until();
        double kw = row.number(DEMAND).orElse(0);
        long all = ChronoUnit.DAYS.between(first, until);
        YearMonth most = YearMonth.from(first.plusDays(all / 2));
        for (YearMonth month = YearMonth.from(first); !month.atDay(1).isAfter(until.minusDays(1)); month = month.plusMonths(1)) {
            LocalDate from = month.atDay(1).isBefore(first) ? first : month.atDay(1);
            LocalDate to = month.plusMonths(1).atDay(1).isAfter(until) ? until : month.plusMonths(1).atDay(1);
            long days = ChronoUnit.DAYS.between(from, to);
            Known known = months.computeIfAbsent(month, m -> new Known());
            known.days += days;
            known.kwh += bill.kwh() * days / all;
            known.kw = month.equals(most) ? Math.max(known.kw, kw) : known.kw;
            known.row = row.number();
            if (known.days > month.lengthOfMonth()) {
                throw row.wrong(FROM, "Days of " + month + " are billed twice, in this row and another; remove one of them.");
            }
        }
    }

    /** A month of which some days are not billed is filled up with days like the others. */
    private static void set(Month month, YearMonth of, Known known, SheetOutcome outcome) {
        BuildingMonth building = outcome.study().getDepot().getBuildingMonths().stream().filter(m -> m.getMonth() == month).findFirst()
                .orElseGet(() -> added(month, known.row, outcome));
        if (known.days < of.lengthOfMonth()) {
            outcome.remark(String.format(Locale.ROOT, "Of %s %.0f of %d days are billed; the others are taken as like them.", of, known.days,
                    of.lengthOfMonth()));
        }
        outcome.set(known.row, building, Literals.BUILDING_MONTH__ENERGY_KWH, known.kwh * of.lengthOfMonth() / known.days);
        if (known.kw > 0) {
            outcome.set(known.row, building, Literals.BUILDING_MONTH__PEAK_KW, known.kw);
        }
    }

    private static BuildingMonth added(Month month, int row, SheetOutcome outcome) {
        BuildingMonth building = DepotFactory.eINSTANCE.createBuildingMonth();
        building.setMonth(month);
        outcome.study().getDepot().getBuildingMonths().add(building);
        outcome.added(row, building);
        return building;
    }
}
