package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.units.Unit;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.study.RoundedText;

/**
 * A log of fuel taken by each bus. Its fuel economy is the distance over the fuel: from the first odometer reading to the last with the
 * fuel taken after the first, or where there are no two readings, of the entries that tell their distance.
 */
final class FuelLogSheet implements SheetKind {
    /** No bus burns more or less on a distance; common practice, no source. */
    private static final double LEAST_KM_PER_L = Unit.KM_PER_MILE / Unit.L_PER_GALLON;
    private static final double MOST_KM_PER_L = 30 * LEAST_KM_PER_L;
    private static final String FUEL = "fuelTaken";
    private static final String PRODUCT = "product";
    private static final String DISTANCE = "distance";

    @Override
    public String id() {
        return "fuel-log";
    }

    @Override
    public String label() {
        return "Fuel log by bus";
    }

    @Override
    public String purpose() {
        return "Sets the measured fuel economy of the buses that the log names.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        List<SheetColumn> columns = new ArrayList<>(BusLog.columns());
        columns.add(SheetColumn.derived(FUEL, "Fuel taken", SheetColumn.Content.NUMBER, Unit.LITRE, "Fuel of the entry; below 0 for a credit.",
                "gallons", "fuel", "quantity", "volume", "liters", "litres", "fuel gallons").must());
        columns.add(SheetColumn.derived(PRODUCT, "Product", SheetColumn.Content.TEXT, Unit.NONE,
                "What was taken; entries of exhaust fluid (DEF) are left out.", "fuel type", "product name", "product description", "item", "grade"));
        columns.add(SheetColumn.derived(OdometerReadings.ODOMETER, "Odometer", SheetColumn.Content.NUMBER, Unit.KILOMETRE,
                "Reading when the fuel was taken.", "odometer reading", "mileage"));
        columns.add(SheetColumn.derived(DISTANCE, "Distance", SheetColumn.Content.NUMBER, Unit.KILOMETRE,
                "Distance driven on the fuel, where no odometer was read.", "miles", "miles driven", "trip miles"));
        return columns;
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(BusLog.BUS, "B07", BusLog.DATE, "2025-09-04", FUEL, "31.4", OdometerReadings.ODOMETER, "92305")
                .getOrDefault(column.id(), "");
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        Reading reading = new Reading(outcome);
        BusLog.of(sheet, outcome, FuelLogSheet::amounts).byBus().forEach(reading::bus);
        reading.tellLeftOut();
    }

    /** The fuel of an entry, l, and its distance where it has one. */
    private static Amounts amounts(MappedRow row, RowReading cells) {
        OptionalDouble km = cells.of(() -> row.number(DISTANCE), OptionalDouble.empty());
        if (km.orElse(0) < 0) {
            cells.wrong(row.fault(DISTANCE, "a distance of at least 0"));
        }
        cells.number(OdometerReadings.ODOMETER, 0);
        return new Amounts(FuelWords.isNoFuel(row.cell(PRODUCT).text()) ? 0 : cells.required(FUEL), km);
    }

    private record Amounts(double litres, OptionalDouble km) {
    }

    /**
     * Fuel of an entry.
     *
     * @param row number of its row in the file
     * @param km distance driven on it; empty where the entry has none
     */
    private record Fill(int row, double litres, OptionalDouble km) {
    }

    /** Fuel that was burnt on a distance. */
    private record Burnt(double km, double litres) {
    }

    /** One log being read. */
    private static final class Reading {
        private final SheetOutcome outcome;
        private int noFuel;
        private int outside;
        private int withoutDistance;

        Reading(SheetOutcome outcome) {
            this.outcome = outcome;
        }

        void bus(Bus bus, List<BusLog.Entry> entries) {
            if (!(bus.getType() instanceof CombustionType type)) {
                entries.forEach(e -> outcome.leftOut(e.row().number(), "its bus has no engine"));
                outcome.remark(bus.getName() + " has no engine; its entries are left out.");
                return;
            }
            List<Fill> fills = new ArrayList<>();
            entries.forEach(e -> fill(e.row(), bus, type).ifPresent(fills::add));
            OdometerReadings readings = OdometerReadings.of(entries, outcome);
            Burnt burnt = readings.km() > 0 ? between(readings.readings(), fills) : onDistances(fills);
            if (burnt.km() > 0 && burnt.litres() > 0) {
                set(bus, entries.get(entries.size() - 1).row().number(), burnt.km() / burnt.litres());
            } else {
                outcome.remark(bus.getName() + " has " + entries.size() + (entries.size() == 1 ? " entry" : " entries")
                        + " but no distance that fuel could be held against; its fuel economy stays as it is.");
            }
        }

        private void set(Bus bus, int row, double kmPerL) {
            if (kmPerL >= LEAST_KM_PER_L && kmPerL <= MOST_KM_PER_L) {
                outcome.set(row, bus, Literals.BUS__MEASURED_KM_PER_L, kmPerL);
            } else {
                outcome.problem(row, "The fuel of " + bus.getName() + " would come to " + economy(kmPerL) + ", which no bus does; it must be "
                        + economy(LEAST_KM_PER_L) + " to " + economy(MOST_KM_PER_L) + ". Look for a wrong amount or odometer reading in its rows.");
            }
        }

        private String economy(double kmPerL) {
            return new RoundedText(outcome.study()).shown(Literals.BUS__MEASURED_KM_PER_L, kmPerL);
        }

        /** What was taken; empty where something is wrong, which is told. */
        private Optional<Fill> fill(MappedRow row, Bus bus, CombustionType type) {
            RowReading cells = outcome.reading(row);
            String product = cells.of(() -> row.text(PRODUCT).orElse(""), "");
            if (FuelWords.isNoFuel(product)) {
                noFuel++;
                outcome.leftOut(row.number(), "no fuel");
                return Optional.of(new Fill(row.number(), 0, OptionalDouble.empty()));
            }
            if (FuelWords.isAnother(product, type.getFuel())) {
                cells.wrong(row.wrong(PRODUCT, bus.getName() + " runs on " + type.getFuel().getLiteral() + ", but the row says “" + product
                        + "”; mend the bus or the fuel, or delete the row."));
            }
            Amounts amounts = amounts(row, cells);
            return cells.isSound() ? Optional.of(new Fill(row.number(), amounts.litres(), amounts.km())) : Optional.empty();
        }

        /** What was filled up after the first reading, up to the last. */
        private Burnt between(List<OdometerReadings.Reading> readings, List<Fill> fills) {
            OdometerReadings.Reading first = readings.get(0);
            OdometerReadings.Reading last = readings.get(readings.size() - 1);
            int from = place(first, fills);
            int to = place(last, fills);
            List<Fill> beyond = IntStream.range(0, fills.size()).filter(i -> (i < from || i > to) && fills.get(i).litres() != 0).mapToObj(fills::get)
                    .toList();
            beyond.forEach(f -> outcome.leftOut(f.row(), "beyond the odometer readings of its bus"));
            outside += beyond.size();
            return new Burnt(last.km() - first.km(), IntStream.range(from + 1, to + 1).mapToDouble(i -> fills.get(i).litres()).sum());
        }

        private static int place(OdometerReadings.Reading reading, List<Fill> fills) {
            return IntStream.range(0, fills.size()).filter(i -> fills.get(i).row() == reading.row()).findFirst().orElse(-1);
        }

        /** The entries that have a distance, and credits. */
        private Burnt onDistances(List<Fill> fills) {
            List<Fill> counted = fills.stream().filter(f -> f.km().isPresent() || f.litres() < 0).toList();
            double km = counted.stream().mapToDouble(f -> f.km().orElse(0)).sum();
            List<Fill> without = fills.stream().filter(f -> km > 0 && f.km().isEmpty() && f.litres() > 0).toList();
            without.forEach(f -> outcome.leftOut(f.row(), "without a distance"));
            withoutDistance += without.size();
            return new Burnt(km, counted.stream().mapToDouble(Fill::litres).sum());
        }

        void tellLeftOut() {
            tell(noFuel, "of exhaust fluid, which is no fuel,");
            tell(outside, "before the first or after the last odometer reading of their bus");
            tell(withoutDistance, "without a distance");
        }

        private void tell(int entries, String words) {
            if (entries > 0) {
                outcome.remark("Fuel of " + entries + (entries == 1 ? " entry " : " entries ") + words + " is left out.");
            }
        }
    }
}
