package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.LogMonth;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.junit.jupiter.api.Test;

/** Tables of distance and energy into the invented example; figures are invented. */
class ConsumptionLogSheetTest extends ExampleSheets {
    private static final double KM = 1.609344;
    private static final double L = 3.785411784;
    private static final String HEADERS = "Date,Vehicle,Bus type,Route,Miles,Hours,kWh,Gallons,Ambient (F)\n";

    private SheetImport read(String rows) throws Exception {
        SheetImport sheet = SheetImport.recognised(SampleSheets.only(samples.text("days.csv", HEADERS + rows)), study).orElseThrow();
        assertEquals("consumption-logs", sheet.kind().id());
        return sheet;
    }

    private List<String> problems(String rows) throws Exception {
        return read(rows).preview(study).problems().stream().map(ImportProblem::toString).toList();
    }

    private VehicleType electric() {
        return study.getVehicleTypes().stream().filter(ElectricType.class::isInstance).findFirst().orElseThrow();
    }

    private ConsumptionLog last() {
        return study.getConsumptionLogs().get(study.getConsumptionLogs().size() - 1);
    }

    @Test
    void aRowIsALogInTheUnitsOfItsHeaders() throws Exception {
        int before = study.getConsumptionLogs().size();
        read("1/14/2026,,%s,R01,46.2,2.6,71.5,,5\n".formatted(electric().getName())).into(study);
        assertEquals(before + 1, study.getConsumptionLogs().size());
        ConsumptionLog log = last();
        assertSame(electric(), log.getType());
        assertEquals("R01", log.getRoute().getName());
        assertEquals(LogMonth.JANUARY, log.getMonth());
        assertEquals("2026-01-14", log.getDate());
        assertNull(log.getBus());
        assertEquals(46.2 * KM, log.getDistanceKm(), 1e-9);
        assertEquals(2.6, log.getHours(), 1e-12);
        assertEquals(71.5, log.getEnergyKwh(), 1e-12);
        assertEquals(-15, log.getOutsideC(), 1e-9);
    }

    /** A bus of today stands for its type; what its heater or engine burns is fuel, and no energy. */
    @Test
    void aBusTellsTheType() throws Exception {
        read("2026-03-02,B01,,,60,4,,9.5,\n").into(study);
        assertSame(study.getBuses().stream().filter(b -> b.getName().equals("B01")).findFirst().orElseThrow().getType(), last().getType());
        assertEquals("B01", last().getBus().getName());
        assertEquals(9.5 * L, last().getFuelL(), 1e-9);
        assertEquals(0, last().getEnergyKwh());
        assertNull(last().getOutsideC());
    }

    /** The next table of the same telematics holds the days before too; a day like another in figures alone is one of its own. */
    @Test
    void logsThatTheStudyHasAreLeftOut() throws Exception {
        String type = electric().getName();
        String first = "1/14/2026,,%1$s,,46.2,2.6,71.5,,5\n1/15/2026,,%1$s,,46.2,2.6,71.5,,5\n".formatted(type);
        int before = study.getConsumptionLogs().size();
        read(first).into(study);
        assertEquals(before + 2, study.getConsumptionLogs().size());
        SheetImport longer = read(first + "1/16/2026,,%s,,44,2.5,66,,9\n".formatted(type));
        assertEquals(List.of("2 logs are in the study already and left out."),
                longer.preview(study).remarks().stream().filter(r -> r.contains("already")).toList());
        longer.into(study);
        assertEquals(before + 3, study.getConsumptionLogs().size());
        assertEquals(66, last().getEnergyKwh(), 1e-12);
    }

    @Test
    void everyProblemOfARowIsTold() throws Exception {
        assertEquals(List.of("days.csv, row 2, column “Miles”: “0” must be a number above 0 mi and at most 124,274 mi.",
                "days.csv, row 2, column “Vehicle”: The row names neither a bus nor a vehicle type; enter one of them, or delete the row."),
                problems("1/14/2026,,,,0,2.6,71.5,,5\n"));
        assertEquals(List.of("days.csv, row 2, column “Miles”: A distance is missing; enter one, or delete the row."),
                problems("1/14/2026,B01,,,,2.6,,9,5\n"));
    }

    /** An electric bus that took no energy, and an engine that took some. */
    @Test
    void theKindOfEnergyIsThatOfTheType() throws Exception {
        List<String> told = problems("1/14/2026,,%s,,46.2,2.6,,,5\n1/14/2026,B01,,,46.2,2.6,70,9,5\n".formatted(electric().getName()));
        assertEquals(2, told.size(), told.toString());
        told.forEach(t -> assertEquals("column “kWh”", t.split(": ")[0].split(", ")[2]));
    }

    @Test
    void aMonthThatIsNotThatOfTheDateIsAProblem() throws Exception {
        SheetImport sheet = SheetImport.recognised(SampleSheets.only(samples.text("days.csv",
                "Date,Month,Bus,Miles,kWh\n2026-01-14,February,B01,46,70\n")), study).orElseThrow();
        assertEquals(List.of("days.csv, row 2, column “Date”: The date is in January but the row says February; mend one of the two."),
                sheet.preview(study).problems().stream().map(ImportProblem::toString).filter(p -> p.contains("“Date”")).toList());
    }

    @Test
    void aRowThatIsRepeatedIsAProblem() throws Exception {
        String row = "1/14/2026,,%s,,46.2,2.6,71.5,,5\n".formatted(electric().getName());
        assertEquals(1, problems(row + row).stream().filter(p -> p.contains("says the same as row 2")).count());
    }

    /** Logs entered before days were kept are known by the rest; of two days with the same figures each is one. */
    @Test
    void logsWithoutADayAreKnownByTheRest() throws Exception {
        String row = "1/14/2026,,%1$s,,46.2,2.6,71.5,,5\n".formatted(electric().getName());
        read(row).into(study);
        last().setDate(null);
        int before = study.getConsumptionLogs().size();
        read(row + "1/15/2026,,%1$s,,46.2,2.6,71.5,,5\n".formatted(electric().getName())).into(study);
        assertEquals(before + 1, study.getConsumptionLogs().size());
        assertEquals("2026-01-15", last().getDate());
    }

    /** What is recognised gets the day and the bus that were not kept before; a log that has them is left alone. */
    @Test
    void logsWithoutADayAndABusGetThem() throws Exception {
        String row = "3/2/2026,B01,,,60,4,,9.5,\n";
        read(row).into(study);
        ConsumptionLog log = last();
        log.setDate(null);
        log.setBus(null);
        int before = study.getConsumptionLogs().size();
        RowTally told = read(row).preview(study).rows();
        read(row).into(study);
        assertEquals(before, study.getConsumptionLogs().size());
        assertEquals("2026-03-02", log.getDate());
        assertEquals("B01", log.getBus().getName());
        assertEquals(List.of(1, 0), List.of(told.taken(), told.leftOut().size()));
        assertEquals(1, read(row).preview(study).rows().leftOut().size());
    }
}
