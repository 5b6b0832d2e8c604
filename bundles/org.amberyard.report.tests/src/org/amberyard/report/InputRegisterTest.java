package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class InputRegisterTest {
    private Study study;

    @BeforeEach
    void load() throws Exception {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        study = StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
    }

    private List<Object> row(String element, String field) {
        return InputRegister.of(study).rows().stream().filter(r -> r.get(0).equals(element) && r.get(1).equals(field))
                .findFirst().orElseThrow();
    }

    @Test
    void sourcedInputsCarryTheirSource() {
        assertEquals(Arrays.asList("fuel price diesel", "Price", 3.657, "USD/gal", "measured",
                "Mean of the district's FY2026 fuel invoices HF-4401 to HF-4412, delivery included (invented)", "2026-06-30"),
                row("fuel price diesel", "Price"));
    }

    @Test
    void defaultsSayWhereTheyComeFromAndOtherInputsThatNothingIsKnown() {
        study.getSettings().getSources().clear();
        assertEquals(Arrays.asList("emission factors", "Diesel CO2", 10.21, "kg/gal", "default",
                "10.21 kg/gal: US EPA GHG Emission Factors Hub, 15 January 2025, Table 2 (read in a transcription)", null),
                row("emission factors", "Diesel CO2"));
        assertEquals(Arrays.asList("settings", "Reserve", 15.0, "%", "default",
                "15 to 20 % is a common policy; common practice, no source", null), row("settings", "Reserve"));
        study.getRoutes().get(0).getSources().clear();
        assertEquals("no source given", row("route R01", "Serves").get(4));
        assertEquals("no source given", row("settings", "Base year").get(4), "a default that only stands in is no source");
    }

    @Test
    void anInputThatMayBeMissingIsBlank() {
        study.getConsumptionLogs().get(0).getSources().clear();
        study.getConsumptionLogs().get(0).setOutsideC(null);
        assertEquals(Arrays.asList("consumption log no. 1", "Outside temperature", "", "°F", "default",
                "empty: not measured", null), row("consumption log no. 1", "Outside temperature"));
    }

    @Test
    void aNoteOnTheWholeElementSpeaksForItsFields() {
        assertEquals(Arrays.asList("Route sheets of the district's routing program, FY2026 (invented)", "2025-09-15"),
                row("run AM of route R01", "Distance").subList(5, 7));
        assertEquals("Fuel log FY2026: annual miles over annual gallons (invented)",
                row("bus B01", "Measured fuel economy").get(5));
        assertEquals("Bus list of the transportation office, FY2026 (invented)", row("bus B01", "Odometer").get(5));
    }

    @Test
    void everyInputOfEveryElementIsThereOnceInTheUnitsOfTheStudy() {
        List<List<Object>> rows = InputRegister.of(study).rows();
        assertEquals(24, rows.stream().filter(r -> r.get(0).toString().startsWith("bus B") && r.get(1).equals("Odometer")).count());
        assertEquals("R01", row("bus B01", "Route").get(2));
        assertEquals("Diesel C 2005-2009", row("bus B01", "Vehicle type").get(2));
        assertTrue(rows.stream().noneMatch(r -> r.get(1).equals("Name") || r.get(1).equals("Format version")));
        study.getSettings().setUnits(UnitChoice.METRIC);
        assertEquals("USD/L", row("fuel price diesel", "Price").get(3));
        assertFalse(InputRegister.of(study).rows().stream().anyMatch(r -> r.get(3).toString().contains("mi")
                && !r.get(3).toString().contains("min")));
    }
}
