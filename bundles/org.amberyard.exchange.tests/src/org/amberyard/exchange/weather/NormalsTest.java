package org.amberyard.exchange.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NormalsTest {
    @TempDir
    Path folder;

    private final Study study = StudyDefaults.create();

    private WeatherSource read(String... lines) throws IOException, ImportException {
        return WeatherSource.read(Files.write(folder.resolve("normals.csv"), List.of(lines)), ReadingProgress.NONE);
    }

    private List<String> problems(String... lines) {
        return assertThrows(ImportException.class, () -> read(lines).load(0, study)).problems().stream().map(ImportProblem::toString)
                .toList();
    }

    @Test
    void degreesFahrenheitAndCelsiusAreKnownByTheirHeaders() throws Exception {
        WeatherImport read = read("Month,Mean daily low (°F),mean_high_C,Coldest day low (°F),coldest high F,Hottest day high (°C),Sun %,note",
                "Jan,14,2,-40,-4,9.5,45,x", "Annual,50,20,0,0,0,60,").load(0, study);
        read.update().apply();
        MonthClimate january = study.getSite().getClimate().get(0);
        assertEquals(-10, january.getMeanLowC(), 1e-9);
        assertEquals(2, january.getMeanHighC(), 1e-9);
        assertEquals(-40, january.getColdestLowC(), 1e-9);
        assertEquals(-20, january.getColdestHighC(), 1e-9);
        assertEquals(9.5, january.getHottestHighC(), 1e-9);
        assertEquals(0.45, january.getSunShare(), 1e-9);
        assertEquals("normals.csv", january.getSources().get(0).getCitation());
        assertEquals("*", january.getSources().get(0).getField());
        assertTrue(read.sentences().contains("Columns passed over: note."), read.sentences().toString());
        assertEquals(6, read.update().changes().size(), read.update().changes().toString());
    }

    @Test
    void whatTheFileDoesNotTellStays() throws Exception {
        WeatherImport read = read("month;tmin_c;tmax_c", "2;-8;1").load(0, study);
        read.update().apply();
        MonthClimate february = study.getSite().getClimate().get(1);
        assertEquals(-8, february.getMeanLowC());
        assertEquals(-10, february.getColdestLowC());
        assertEquals(List.of("meanLowC", "meanHighC"), february.getSources().stream().map(s -> s.getField()).toList());
        assertTrue(read.sentences().stream().anyMatch(s -> s.contains("does not tell the coldest days on which buses ran")));
    }

    @Test
    void oneOfSeveralStationsIsChosen() throws Exception {
        WeatherSource source = read("station,month,low_F,high_F,low_C", "North,1,14,32,-10", "South,1,50,68,10");
        assertEquals(List.of("North", "South"), source.stations());
        source.load(1, study).update().apply();
        assertEquals(10, study.getSite().getClimate().get(0).getMeanLowC(), 1e-9);
    }

    @Test
    void aMonthThatIsNewNeedsAllTemperatures() throws Exception {
        study.getSite().getClimate().remove(0);
        assertEquals(List.of("normals.csv: January is not in the study's climate yet, and the file does not tell its coldest day low; "
                + "add a column of it."), problems("month,low_C,high_C", "1,-8,1"));
        read("month,low_C,high_C,coldest_low_C,coldest_high_C,hottest_C", "1,-8,1,-30,-20,9").load(0, study).update().apply();
        assertEquals(12, study.getSite().getClimate().size());
    }

    @Test
    void whatIsNotUnderstoodIsNamed() throws Exception {
        assertEquals(List.of("normals.csv, row 1, column “low”: The header does not say °F or °C; let it end in _F or _C.",
                "normals.csv, row 1: No column tells the climate; name the columns as mean_low_F, mean_high_F, coldest_low_F, "
                        + "coldest_high_F, hottest_high_F (or with _C) and sun_share."),
                problems("month,low", "1,3"));
        assertEquals(List.of("normals.csv, row 1: A column month is missing."), problems("low_C,high_C", "1,3"));
        assertEquals(List.of("normals.csv, row 2, column “low_C”: “cold” must be a number, -60 to 60 °C.",
                "normals.csv, row 3, column “month”: “Janus” must be a month: January, Jan or 1.",
                "normals.csv, row 4: The low is above the high; are the columns swapped?",
                "normals.csv, row 5, column “month”: March stands there twice; keep one row."),
                problems("month,low_C,high_C", "1,cold,3", "Janus,1,2", "3,4,3", "Mar,1,2"));
        assertEquals(List.of("normals.csv, row 1, column “min C”: The column “low_C” tells the same; remove one."),
                problems("month,low_C,min C", "1,1,1"));
        Path latin = Files.write(folder.resolve("latin.csv"), "month,low °C\n1,2\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals("latin.csv: The file is not UTF-8 text; save it again as CSV UTF-8.",
                assertThrows(ImportException.class, () -> WeatherSource.read(latin, ReadingProgress.NONE)).getMessage());
        assertEquals(List.of("normals.csv: The file is empty."), problems());
    }
}
