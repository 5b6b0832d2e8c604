package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.units.Unit;
import org.amberyard.model.fleet.Bus;

/**
 * Entries of a log, of which each names a bus and a date, gathered by bus and put in the order of their dates.
 *
 * @param byBus entries of each bus, in the order in which the buses first appear
 */
record BusLog(Map<Bus, List<Entry>> byBus) {
    static final String BUS = "bus";
    static final String DATE = "date";

    /** An entry of a bus. */
    record Entry(MappedRow row, LocalDate date) {
    }

    /** Columns that every such log has. */
    static List<SheetColumn> columns() {
        return List.of(
                SheetColumn.derived(BUS, "Bus", SheetColumn.Content.TEXT, Unit.NONE, "Number of a bus of the study.", "bus id", "bus number", "unit",
                        "unit number", "vehicle", "vehicle id", "vehicle number", "fleet number").must(),
                SheetColumn.derived(DATE, "Date", SheetColumn.Content.DATE, Unit.NONE, "Date of the entry.", "day", "date of service", "posted",
                        "transaction date", "completed", "opened").must());
    }

    /** The other cells of a row. */
    interface Others {
        /** Tells what is wrong with them. */
        void hold(MappedRow row, RowReading cells);
    }

    /**
     * Gathers the entries; rows that name no bus of the study, have no date or are repeated are told as problems.
     *
     * @param others the other cells of rows that are no entries, and of which nobody else would tell what is wrong
     */
    static BusLog of(MappedSheet sheet, SheetOutcome outcome, Others others) {
        Map<Bus, List<Entry>> byBus = new LinkedHashMap<>();
        ElementIndex<Bus> buses = new ElementIndex<>(outcome.study().getBuses());
        Map<List<SheetCell>, Integer> known = new HashMap<>();
        for (MappedRow row : sheet.rows()) {
            RowReading cells = outcome.reading(row);
            cells.of(() -> RepeatedRow.hold(row, BUS, known), 0);
            Bus bus = cells.of(() -> bus(row, buses, "The row names no bus; enter one, or delete the row."), null);
            LocalDate date = cells.of(() -> row.date(DATE).orElseThrow(() -> row.wrong(DATE, "A date is missing; enter one such as 2025-09-04.")), null);
            if (cells.isSound()) {
                byBus.computeIfAbsent(bus, b -> new ArrayList<>()).add(new Entry(row, date));
            } else {
                others.hold(row, cells);
            }
        }
        byBus.values().forEach(entries -> entries.sort(Comparator.comparing(Entry::date).thenComparingInt(e -> e.row().number())));
        return new BusLog(byBus);
    }

    /**
     * The bus that a row names.
     *
     * @param unnamed what to say of a row that names none
     */
    static Bus bus(MappedRow row, ElementIndex<Bus> buses, String unnamed) throws CellFault {
        String name = row.text(BUS).orElseThrow(() -> row.wrong(BUS, unnamed));
        return buses.find(name).orElseThrow(() -> row.wrong(BUS, buses.unknown(name, "bus")));
    }
}
