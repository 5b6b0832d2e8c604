package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.amberyard.core.units.Unit;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;

/** A log of odometer readings. */
final class OdometerSheet implements SheetKind {

    @Override
    public String id() {
        return "odometers";
    }

    @Override
    public String label() {
        return "Odometer readings";
    }

    @Override
    public String purpose() {
        return "Sets the odometers to the last readings, and the other distance of buses whose readings span half a year or more.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        List<SheetColumn> columns = new ArrayList<>(BusLog.columns());
        columns.add(SheetColumn.derived(OdometerReadings.ODOMETER, "Odometer", SheetColumn.Content.NUMBER, Unit.KILOMETRE, "Reading on the date.",
                "odometer reading", "reading", "mileage").must());
        return columns;
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(BusLog.BUS, "B07", BusLog.DATE, "2026-06-30", OdometerReadings.ODOMETER, "98210").getOrDefault(column.id(), "");
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        BusLog.of(sheet, outcome, (row, cells) -> cells.number(OdometerReadings.ODOMETER, 0)).byBus().forEach((bus, entries) -> {
            long blank = entries.stream().filter(e -> !e.row().has(OdometerReadings.ODOMETER)).count();
            if (blank > 0) {
                outcome.remark(bus.getName() + " has " + blank + (blank == 1 ? " entry" : " entries") + " without a reading; nothing is taken from "
                        + (blank == 1 ? "it." : "them."));
            }
            OdometerReadings readings = OdometerReadings.of(entries, outcome);
            if (!readings.readings().isEmpty()) {
                set(bus, readings, entries.get(entries.size() - 1).row().number(), outcome);
            }
        });
    }

    private static void set(Bus bus, OdometerReadings readings, int row, SheetOutcome outcome) {
        OdometerReadings.Reading last = readings.readings().get(readings.readings().size() - 1);
        OdometerReadings.tellBelow(last.row(), last.km(), bus.getName(), bus.getOdometerKm(), outcome);
        outcome.set(last.row(), OdometerReadings.ODOMETER, bus, Literals.BUS__ODOMETER_KM, last.km());
        if (RouteYear.isUnknown(bus.getRoute())) {
            outcome.remark("The route of " + bus.getName() + " has no runs yet, so its other distance stays as it is; import the route sheet, then "
                    + "these readings again.");
        } else if (readings.kmPerYear().isPresent()) {
            outcome.set(row, bus, Literals.BUS__OTHER_KM_PER_YEAR,
                    Math.max(0, readings.kmPerYear().getAsDouble() - RouteYear.km(bus.getRoute())));
        } else {
            outcome.remark("The readings of " + bus.getName() + " span less than half a year, so its other distance stays as it is.");
        }
    }
}
