package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Map;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;

/** A list of field and activity trips, a row for each. */
final class TripSheet implements SheetKind {
    private static final String KEY = "name";

    @Override
    public String id() {
        return "trips";
    }

    @Override
    public String label() {
        return "List of trips";
    }

    @Override
    public String purpose() {
        return "Adds trips and updates those whose name it has; where a cell is empty, what stands stays.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        SheetColumn date = SheetColumn.of(Literals.TRIP__DATE, "trip date", "day");
        return List.of(
                SheetColumn.of(Literals.TRIP__NAME, "trip id", "trip", "trip number").must(),
                SheetColumn.of(Literals.TRIP__KIND, "type", "purpose", "activity"),
                new SheetColumn(date.id(), date.label(), SheetColumn.Content.DATE, date.unit(), false, date.meaning(), date.also(), date.field(),
                        date.looksLike(), Map.of(), date.vague()),
                SheetColumn.of(Literals.TRIP__DEPARTURE_MIN, "depart", "leaves", "start"),
                SheetColumn.of(Literals.TRIP__DURATION_H, "duration", "hours", "duration h"),
                SheetColumn.of(Literals.TRIP__ROUND_TRIP_KM, "round trip miles", "miles", "distance", "round trip distance"),
                SheetColumn.of(Literals.TRIP__BODY_TYPE, "body"),
                SheetColumn.of(Literals.TRIP__SEATS, "seats needed", "riders"),
                SheetColumn.of(Literals.TRIP__BUS, "assigned bus", "bus id", "unit"));
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(KEY, "T001", "kind", "athletics away", "date", "2026-09-03", "departureMin", "15:20", "durationH", "4.3",
                "roundTripKm", "61", "seats", "44").getOrDefault(column.id(), "");
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        List<SheetColumn> columns = columns(outcome.study()).stream().filter(c -> !c.id().equals(KEY)).toList();
        NamedRows<Trip> rows = new NamedRows<>(new RowKeys(sheet, KEY), columns, outcome.study().getTrips(), TripSheet::made, outcome);
        sheet.rows().forEach(rows::read);
    }

    private static Trip made(String name) {
        Trip trip = RoutesFactory.eINSTANCE.createTrip();
        trip.setName(name);
        return trip;
    }
}
