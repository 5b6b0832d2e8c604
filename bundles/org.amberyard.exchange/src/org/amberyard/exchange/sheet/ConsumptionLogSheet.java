package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.amberyard.core.units.Unit;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.fleet.LogMonth;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What buses were seen to use by trip, day or month, a row for each, from chargers, telematics or the drivers' sheets. Logs that the study has
 * are not added again, so that a longer table of the same buses can follow.
 */
final class ConsumptionLogSheet implements SheetKind {
    private static final String BUS = BusLog.BUS;
    private static final String DATE = BusLog.DATE;
    private static final String DISTANCE = Literals.CONSUMPTION_LOG__DISTANCE_KM.getName();

    private static final List<EStructuralFeature> DAY_AND_BUS = List.of(Literals.CONSUMPTION_LOG__DATE, Literals.CONSUMPTION_LOG__BUS);

    @Override
    public String id() {
        return "consumption-logs";
    }

    @Override
    public String label() {
        return "Logs of distance and energy";
    }

    @Override
    public String purpose() {
        return "Adds consumption logs, to which curves are fitted and with which routes are calibrated; logs that the study has are left out.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        return List.of(
                SheetColumn.derived(BUS, "Bus", SheetColumn.Content.TEXT, Unit.NONE,
                        "Number of a bus of the study, whose vehicle type the log is of where none is named.", "bus id", "bus number", "vehicle", "vehicle id",
                        "vehicle number", "unit number", "fleet number"),
                SheetColumn.of(Literals.CONSUMPTION_LOG__TYPE, "bus type", "type", "model"),
                SheetColumn.derived(DATE, "Date", SheetColumn.Content.DATE, Unit.NONE,
                        "Day of the log; its month counts where the temperature was not measured.", "day", "trip date",
                        "service date", "start date"),
                SheetColumn.of(Literals.CONSUMPTION_LOG__MONTH),
                SheetColumn.of(Literals.CONSUMPTION_LOG__ROUTE, "route id", "route number"),
                SheetColumn.of(Literals.CONSUMPTION_LOG__DISTANCE_KM, "miles", "miles driven", "distance driven", "trip miles").must(),
                SheetColumn.of(Literals.CONSUMPTION_LOG__HOURS, "hours", "drive time", "run time", "hours in service"),
                SheetColumn.of(Literals.CONSUMPTION_LOG__ENERGY_KWH, "kwh", "kwh used", "energy used", "energy consumed", "battery energy").must(),
                SheetColumn.of(Literals.CONSUMPTION_LOG__FUEL_L, "gallons", "fuel used", "heater fuel"),
                SheetColumn.of(Literals.CONSUMPTION_LOG__OUTSIDE_C, "temperature", "ambient temperature", "ambient", "outside temp", "mean temperature"));
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of("type", "Electric C 150", DATE, "2026-01-14", "distanceKm", "46.2", "hours", "2.6", "energyKwh", "71.5", "outsideC", "18")
                .getOrDefault(column.id(), "");
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        Reading reading = new Reading(outcome);
        sheet.rows().forEach(reading::row);
        reading.tellKnown();
    }

    /** One table being read. */
    private final class Reading {
        private final SheetOutcome outcome;
        private final ElementIndex<Bus> buses;
        private final FieldValue values;
        private final List<SheetColumn> filled;
        private final List<EStructuralFeature> fields;
        private final List<ConsumptionLog> known;
        private final Map<List<SheetCell>, Integer> rows = new HashMap<>();
        private int left;

        Reading(SheetOutcome outcome) {
            this.outcome = outcome;
            this.buses = new ElementIndex<>(outcome.study().getBuses());
            this.values = new FieldValue(outcome.study());
            this.filled = columns(outcome.study()).stream().filter(c -> c.field().isPresent()).toList();
            this.fields = filled.stream().map(c -> c.field().orElseThrow()).toList();
            this.known = new ArrayList<>(outcome.study().getConsumptionLogs());
        }

        void row(MappedRow row) {
            RowReading cells = outcome.reading(row);
            cells.of(() -> RepeatedRow.hold(row, DATE, rows), 0);
            Map<EStructuralFeature, Object> told = new HashMap<>();
            filled.forEach(c -> cells.of(() -> values.of(row, c), Optional.empty()).ifPresent(v -> told.put(c.field().orElseThrow(), v)));
            if (!row.has(Literals.CONSUMPTION_LOG__TYPE.getName())) {
                told.put(Literals.CONSUMPTION_LOG__TYPE, cells.of(() -> BusLog.bus(row, buses, "The row names neither a bus nor a "
                        + "vehicle type; enter one of them, or delete the row.").getType(), null));
            }
            cells.of(() -> row.date(DATE), Optional.<LocalDate>empty()).ifPresent(d -> told.put(Literals.CONSUMPTION_LOG__DATE, d.toString()));
            if (row.has(BUS) && row.has(Literals.CONSUMPTION_LOG__TYPE.getName())) {
                buses.find(row.cell(BUS).text()).ifPresent(b -> told.put(Literals.CONSUMPTION_LOG__BUS, b));
            } else if (row.has(BUS)) {
                cells.of(() -> Optional.of(BusLog.bus(row, buses, "")), Optional.<Bus>empty()).ifPresent(b -> told.put(Literals.CONSUMPTION_LOG__BUS, b));
            }
            cells.of(() -> row.text(DISTANCE).orElseThrow(() -> row.wrong(DISTANCE, "A distance is missing; enter one, or delete the row.")), "");
            cells.of(() -> month(row, told), Optional.empty()).ifPresent(m -> told.put(Literals.CONSUMPTION_LOG__MONTH, m));
            if (cells.isSound()) {
                add(row.number(), told);
            }
        }

        /** The month of the date; empty where there is none. */
        private Optional<LogMonth> month(MappedRow row, Map<EStructuralFeature, Object> told) throws CellFault {
            Optional<LogMonth> month = row.date(DATE).map(LocalDate::getMonthValue).map(LogMonth::get);
            Object other = told.getOrDefault(Literals.CONSUMPTION_LOG__MONTH, LogMonth.NOT_TOLD);
            if (month.isPresent() && other != LogMonth.NOT_TOLD && other != month.get()) {
                throw row.wrong(DATE, "The date is in " + month.get().getLiteral() + " but the row says " + other + "; mend one of the two.");
            }
            return month;
        }

        private void add(int row, Map<EStructuralFeature, Object> told) {
            Optional<ConsumptionLog> same = known.stream().filter(k -> says(k, told)).max(Comparator.comparingLong(k -> alike(k, told)));
            if (same.isPresent()) {
                known.remove(same.get());
                complete(row, same.get(), told);
                return;
            }
            ConsumptionLog log = FleetFactory.eINSTANCE.createConsumptionLog();
            outcome.study().getConsumptionLogs().add(log);
            outcome.added(row, log);
            fields.stream().filter(told::containsKey).forEach(f -> outcome.set(row, log, f, told.get(f)));
            DAY_AND_BUS.stream().filter(told::containsKey).forEach(f -> outcome.set(row, f.getName(), log, f, told.get(f)));
        }

        /** A log that was entered before days and buses were kept is told them now; of others there is nothing to say. */
        private void complete(int row, ConsumptionLog log, Map<EStructuralFeature, Object> told) {
            List<EStructuralFeature> missing = DAY_AND_BUS.stream().filter(f -> log.eGet(f) == null && told.containsKey(f)).toList();
            missing.forEach(f -> outcome.set(row, f.getName(), log, f, told.get(f)));
            if (missing.isEmpty()) {
                left++;
                outcome.leftOut(row, "in the study already");
            }
        }

        /** Of several logs that a row may be the one of the same day and bus is meant first. */
        private static long alike(ConsumptionLog log, Map<EStructuralFeature, Object> told) {
            return DAY_AND_BUS.stream().filter(f -> Objects.equals(log.eGet(f), told.get(f))).count();
        }

        /** Logs that were entered before days and buses were kept are known by the rest. */
        private boolean says(ConsumptionLog log, Map<EStructuralFeature, Object> told) {
            return DAY_AND_BUS.stream().allMatch(f -> log.eGet(f) == null || !told.containsKey(f) || log.eGet(f).equals(told.get(f)))
                    && fields.stream().allMatch(f -> SheetOutcome.same(log.eGet(f), told.getOrDefault(f, f.getDefaultValue())));
        }

        void tellKnown() {
            if (left > 0) {
                outcome.remark(left + (left == 1 ? " log is" : " logs are") + " in the study already and left out.");
            }
        }
    }
}
