package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.amberyard.core.units.Unit;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;

/** Work orders of the shop. Warranty and accident work tells nothing about upkeep and is left out. */
final class UpkeepLogSheet implements SheetKind {
    private static final String TOTAL = "total";
    private static final String LABOUR = "labour";
    private static final String PARTS = "parts";
    private static final String WORK = "work";
    private static final Pattern NOT_UPKEEP = Pattern.compile("(?i)warrant|accident|collision|vandal|insurance claim");
    private static final double DAYS_PER_YEAR = 365.25;
    private static final int SHORTEST_DAYS = 300;
    private static final int YEAR_DAYS = 366;

    @Override
    public String id() {
        return "work-orders";
    }

    @Override
    public String label() {
        return "Work orders";
    }

    @Override
    public String purpose() {
        return "Sets the measured upkeep per distance of the buses that the work orders name; warranty and accident work is left out.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        List<SheetColumn> columns = new ArrayList<>(BusLog.columns());
        columns.add(money(TOTAL, "Total", "Labour, parts and work done by others.", "total usd", "cost", "total cost", "amount"));
        columns.add(money(LABOUR, "Labour cost", "Where no column holds the total.", "labor", "labour", "labor cost", "labor usd", "labour usd"));
        columns.add(money(PARTS, "Parts cost", "Where no column holds the total.", "parts", "materials", "parts usd"));
        columns.add(SheetColumn.derived(WORK, "Work", SheetColumn.Content.TEXT, Unit.NONE,
                "What was done; words such as warranty, accident or collision leave the row out.", "system", "description", "repair", "type", "category",
                "work type").must());
        return columns;
    }

    private static SheetColumn money(String id, String label, String meaning, String... also) {
        return SheetColumn.derived(id, label, SheetColumn.Content.NUMBER, Unit.MONEY, meaning, also);
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(BusLog.BUS, "B07", BusLog.DATE, "2025-10-02", TOTAL, "377.65", WORK, "12 V electrical").getOrDefault(column.id(), "");
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        BusLog log = BusLog.of(sheet, outcome, UpkeepLogSheet::cost);
        OptionalDouble years = years(log, outcome);
        double[] leftOut = {0, 0};
        log.byBus().forEach((bus, entries) -> bus(bus, entries, years, leftOut, outcome));
        if (leftOut[0] > 0) {
            outcome.remark(String.format(Locale.ROOT, "%.0f work orders over %,.2f are left out as warranty or accident work.", leftOut[0], leftOut[1]));
        }
    }

    /** Length of the log in years, of which about one counts as one; empty for a log of less, which tells nothing about a year. */
    private static OptionalDouble years(BusLog log, SheetOutcome outcome) {
        List<LocalDate> dates = log.byBus().values().stream().flatMap(List::stream).map(BusLog.Entry::date).sorted(Comparator.naturalOrder()).toList();
        if (dates.isEmpty()) {
            return OptionalDouble.empty();
        }
        String span = "Work orders from " + dates.get(0) + " to " + dates.get(dates.size() - 1);
        long days = ChronoUnit.DAYS.between(dates.get(0), dates.get(dates.size() - 1)) + 1;
        if (days < SHORTEST_DAYS) {
            outcome.remark(span + " span " + days + (days == 1 ? " day" : " days") + "; fewer than " + SHORTEST_DAYS
                    + " tell no upkeep of a year, so the upkeep of the buses stays as it is.");
            return OptionalDouble.empty();
        }
        double years = days <= YEAR_DAYS ? 1 : days / DAYS_PER_YEAR;
        outcome.remark(String.format(Locale.ROOT, "%s count as those of %.2f years.", span, years));
        return OptionalDouble.of(years);
    }

    private static void bus(Bus bus, List<BusLog.Entry> entries, OptionalDouble years, double[] leftOut, SheetOutcome outcome) {
        double sum = 0;
        for (BusLog.Entry entry : entries) {
            double cost = cost(entry.row(), outcome.reading(entry.row()));
            if (NOT_UPKEEP.matcher(entry.row().cell(WORK).text()).find()) {
                outcome.leftOut(entry.row().number(), "warranty or accident work");
                leftOut[0]++;
                leftOut[1] += cost;
            } else {
                sum += cost;
            }
        }
        if (years.isEmpty()) {
            return;
        }
        double kmPerYear = RouteYear.km(bus.getRoute()) + bus.getOtherKmPerYear();
        if (kmPerYear > 0) {
            outcome.set(entries.get(entries.size() - 1).row().number(), bus, Literals.BUS__MEASURED_UPKEEP_PER_KM, sum / years.getAsDouble() / kmPerYear);
        } else {
            outcome.remark(bus.getName() + " drives nothing in the study, so its work orders tell no upkeep per distance.");
        }
    }

    /** The cost of an order; 0 where something is wrong, which is told. */
    private static double cost(MappedRow row, RowReading cells) {
        if (!row.has(TOTAL) && !row.has(LABOUR) && !row.has(PARTS)) {
            cells.wrong(row.wrong(TOTAL, "The row has no cost; enter the total, or labour and parts."));
        }
        return row.has(TOTAL) ? cells.number(TOTAL, 0) : cells.number(LABOUR, 0) + cells.number(PARTS, 0);
    }
}
