package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.exchange.ImportProblem;
import org.junit.jupiter.api.Test;

/** What was said of the columns of a sheet, and of which other sheets it holds. */
class SheetMemoryTest extends ExampleSheets {
    @Test
    void columnsAreRememberedByTheirHeaders() throws Exception {
        SheetImport odd = SheetImport.of(SheetKind.byId("odometers").orElseThrow(),
                SampleSheets.only(samples.text("odd.csv", "Wagen,Tag,Stand\nB01,2025-09-04,89640\n")), study);
        assertEquals(List.of("odd.csv, row 1: A column “Odometer” is missing: Reading on the date. Name a column so, or choose the one that holds it."),
                odd.preview(study).problems().stream().map(ImportProblem::toString).filter(p -> p.contains("Odometer")).toList());
        SheetMapping told = odd.mapping().with(0, Optional.of(new SheetMapping.Use("bus", UnitSystem.US)))
                .with(1, Optional.of(new SheetMapping.Use("date", UnitSystem.US)))
                .with(2, Optional.of(new SheetMapping.Use("odometer", UnitSystem.METRIC)));
        SheetMemory memory = SheetMemory.parse(SheetMemory.of(odd.with(told)).text()).orElseThrow();
        Sheet next = SampleSheets.only(samples.text("next.csv", "Liste,,\nTag,Stand,Wagen\n2025-10-04,120000,B01\n"));
        memory.on(next).orElseThrow().into(study);
        assertEquals(120_000, study.getBuses().get(0).getOdometerKm(), 1e-9);
        assertTrue(memory.on(SampleSheets.only(samples.text("other.csv", "Tag,Stand\n2025-10-04,120000\n"))).isEmpty());
        assertTrue(SheetMemory.parse("nonsense").isEmpty());
        assertTrue(SheetMemory.parse("odometers\nWagen\tbus\n").isEmpty());
    }

    /** What was said of one sheet is not said of another that has its columns among others: there, others may be the right ones. */
    @Test
    void aSheetWithMoreOrFewerColumnsIsAnotherSheet() throws Exception {
        SheetImport made = SheetImport.recognised(SampleSheets.only(samples.text("a.csv", "Bus,Date,Odometer,Garage\nB01,2025-09-04,120000,North\n")), study)
                .orElseThrow();
        SheetMemory memory = SheetMemory.parse(SheetMemory.of(made).text()).orElseThrow();
        assertEquals(made.mapping(), memory.on(made.sheet()).orElseThrow().mapping(), "the column that is not used is remembered too");
        for (String other : List.of("Bus,Date,Odometer,Garage,Gallons", "Bus,Date,Odometer", "Bus,Date,Odometer,Depot", "Bus,Date,Odometer,Garage,Garage")) {
            assertTrue(memory.on(SampleSheets.only(samples.text("b.csv", other + "\nB01,2025-09-04,120000,North,5\n"))).isEmpty(), other);
        }
    }

    @Test
    void headersOfSeveralLinesAreRemembered() throws Exception {
        SheetImport broken = SheetImport.recognised(SampleSheets.only(samples.text("a.csv", "Bus,Date,\"Odometer\n reading (km)\"\nB01,2025-09-04,120000\n")),
                study).orElseThrow();
        SheetMemory memory = SheetMemory.parse(SheetMemory.of(broken).text()).orElseThrow();
        assertEquals(broken.mapping(), memory.on(broken.sheet()).orElseThrow().mapping());
    }
}
