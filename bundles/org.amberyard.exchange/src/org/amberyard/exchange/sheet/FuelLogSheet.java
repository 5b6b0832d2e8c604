package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.amberyard.core.units.Unit;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;

/**
 * A log of fuel taken by each bus. Its fuel economy is the distance over the fuel; where the distance comes from odometer readings the
 * fuel of the first entry was burnt before it and does not count.
 */
final class FuelLogSheet implements SheetKind {
    private static final String FUEL = "fuelTaken";
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
        BusLog.of(sheet, outcome).byBus().forEach((bus, entries) -> bus(bus, entries, outcome));
    }

    private static void bus(Bus bus, List<BusLog.Entry> entries, SheetOutcome outcome) {
        int row = entries.get(entries.size() - 1).row().number();
        double given = sum(entries, DISTANCE, outcome);
        OdometerReadings readings = OdometerReadings.of(entries, outcome);
        double km = given > 0 ? given : readings.km();
        List<BusLog.Entry> burnt = given > 0 ? entries : entries.subList(1, entries.size());
        double litres = sum(burnt, FUEL, outcome);
        if (!(bus.getType() instanceof CombustionType)) {
            outcome.remark(bus.getName() + " has no engine; its entries are left out.");
        } else if (km > 0 && litres > 0) {
            outcome.set(row, bus, Literals.BUS__MEASURED_KM_PER_L, km / litres);
        } else {
            outcome.remark(bus.getName() + " has " + entries.size() + (entries.size() == 1 ? " entry" : " entries")
                    + " but no distance that fuel could be held against; its fuel economy stays as it is.");
        }
    }

    private static double sum(List<BusLog.Entry> entries, String id, SheetOutcome outcome) {
        double[] sum = {0};
        entries.forEach(e -> outcome.attempt(e.row(), () -> sum[0] += e.row().number(id).orElse(0)));
        return sum[0];
    }
}
