package org.amberyard.exchange.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.duty.ClearSky;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.common.Quality;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EpwTest {
    private static final LocalDate SATURDAY = LocalDate.of(2025, 1, 18);
    private static final LocalDate MONDAY = LocalDate.of(2025, 1, 20);

    @TempDir
    Path folder;

    private final Study study = StudyDefaults.create();

    private WeatherImport load(EpwText epw) throws IOException, ImportException {
        return load(epw.text());
    }

    private WeatherImport load(String text) throws IOException, ImportException {
        Path file = Files.writeString(folder.resolve("vale.epw"), text);
        return WeatherSource.read(file, ReadingProgress.NONE).load(0, study);
    }

    private List<String> problems(String text) {
        return assertThrows(ImportException.class, () -> load(text)).problems().stream().map(ImportProblem::toString).toList();
    }

    /** The file's weather, but on some days from -30 to -20 degrees. */
    private static double coldOn(LocalDate day, int hour, LocalDate cold, double low) {
        return day.equals(cold) ? low + EpwText.air(day, hour) - day.getMonthValue() + 6 : EpwText.air(day, hour);
    }

    private MonthClimate month(int number) {
        return study.getSite().getClimate().get(number - 1);
    }

    @Test
    void siteAndMonthsAreTold() throws Exception {
        WeatherImport read = load(new EpwText());
        read.update().apply();
        assertEquals("Ostrick Vale", study.getSite().getName());
        assertEquals(41.5, study.getSite().getLatitudeDeg());
        assertEquals(290, study.getSite().getElevationM());
        assertEquals(12, study.getSite().getClimate().size());
        for (int m = 1; m <= 12; m++) {
            assertEquals(m - 6.0, month(m).getMeanLowC(), 1e-9);
            assertEquals(m + 4.0, month(m).getMeanHighC(), 1e-9);
            assertEquals(m - 6.0, month(m).getColdestLowC(), 1e-9);
            assertEquals(m + 4.0, month(m).getHottestHighC(), 1e-9);
            double clear = Arrays.stream(ClearSky.hourlyWPerM2(41.5, m - 1, 1)).sum();
            assertEquals(Math.min(1, 12 * 300 / clear), month(m).getSunShare(), 0.005);
        }
        assertEquals(Quality.PUBLISHED, month(1).getSources().get(0).getQuality());
        assertEquals("vale.epw, Ostrick Vale, OS (999999)", month(1).getSources().get(0).getCitation());
        assertEquals("2025-12-31", month(1).getSources().get(0).getDate());
        assertEquals("365 days of hourly weather at Ostrick Vale, OS (999999), at latitude 41.50° and 290 m above sea level.",
                read.sentences().get(0));
    }

    @Test
    void whatChangesIsSaidAndASecondImportChangesNothing() throws Exception {
        WeatherImport first = load(new EpwText());
        assertTrue(first.update().changes().contains("site Site, latitude: 45 ° → 41.5 °"), first.update().changes().toString());
        assertTrue(first.update().changes().contains("month climate January, mean daily low: 32 °F → 23 °F"), first.update().changes().toString());
        first.update().apply();
        assertEquals(List.of(), load(new EpwText()).update().changes());
        study.getSite().setName("Yard");
        load(new EpwText()).update().apply();
        assertEquals("Yard", study.getSite().getName());
        assertEquals(1, month(1).getSources().size());
    }

    @Test
    void inARealYearTheColdestDayIsAWeekdayWithoutHoliday() throws Exception {
        EpwText cold = new EpwText().air((d, h) -> d.equals(SATURDAY) ? coldOn(d, h, SATURDAY, -40)
                : d.equals(LocalDate.of(2025, 1, 1)) ? coldOn(d, h, d, -35) : coldOn(d, h, MONDAY, -30));
        WeatherImport read = load(cold);
        read.update().apply();
        assertEquals(-30, month(1).getColdestLowC());
        assertEquals(-20, month(1).getColdestHighC());
        assertTrue(read.sentences().get(1).startsWith("The coldest and hottest days are those of Mondays to Fridays without holidays of the "
                + "file (1)"), read.sentences().get(1));
        assertTrue(read.sentences().get(2).startsWith("Coldest: Mon 20 Jan 2025 −22 °F; "), read.sentences().get(2));
    }

    /** January of 1997 before February of 1985, as typical years are put together. */
    @Test
    void inATypicalYearEveryDayCounts() throws Exception {
        EpwText typical = new EpwText().startDay("Sunday").dated(d -> d.withYear(d.getMonthValue() == 1 ? 1997 : 1985))
                .air((d, h) -> coldOn(d, h, SATURDAY, -40));
        WeatherImport read = load(typical);
        read.update().apply();
        assertEquals(-40, month(1).getColdestLowC());
        assertTrue(read.sentences().get(1).contains("the coldest and hottest days are those of all days."), read.sentences().get(1));
    }

    @Test
    void missingValuesAreLeftOut() throws Exception {
        WeatherImport read = load(new EpwText().air((d, h) -> d.equals(MONDAY) ? h == 6 ? -40 : 99.9
                : d.equals(MONDAY.plusDays(1)) && h == 6 ? 99.9 : EpwText.air(d, h)).sun((d, h) -> 9999));
        read.update().apply();
        assertEquals(-5, month(1).getColdestLowC());
        assertEquals(0.6, month(1).getSunShare());
        assertTrue(read.sentences().contains("Days without enough temperatures, which do not count: 1."), read.sentences().toString());
        assertTrue(read.sentences().stream().anyMatch(s -> s.startsWith("The file does not tell the sun of January, February")));
    }

    @Test
    void leapYearsAndPartsOfAYearAreRead() throws Exception {
        LocalDate leap = LocalDate.of(2024, 1, 1);
        WeatherImport read = load(new EpwText().from(leap).to(leap.plusDays(365)).startDay("Monday"));
        assertTrue(read.sentences().get(0).startsWith("366 days"));
        WeatherImport part = load(new EpwText().to(LocalDate.of(2025, 3, 10)));
        assertTrue(part.sentences().stream().anyMatch(s -> s.startsWith("The file does not tell March, April, ")));
        assertTrue(part.update().changes().stream().noneMatch(c -> c.contains("March")));
    }

    @Test
    void wrongCellsAreNamed() {
        String good = new EpwText().to(LocalDate.of(2025, 1, 31)).text();
        String[] lines = good.split("\\R");
        lines[8] = lines[8].replace("2025,1,1,1,", "2025,13,1,25,");
        lines[9] = lines[9].replace("?9?9?9,0.0", "?9?9?9,cold");
        lines[10] = "2025,1,1";
        assertEquals(List.of("vale.epw, row 9, column “month”: “13” must be a whole number from 1 to 12.",
                "vale.epw, row 9, column “hour”: “25” must be a whole number from 1 to 24.",
                "vale.epw, row 10, column “dry bulb temperature”: “cold” must be a number from -70 to 70 °C, or at least 99.9 where it is "
                        + "missing.",
                "vale.epw, row 11: The row has 3 cells; a row of EPW data has 32 to 35."), problems(String.join("\n", lines)));
        assertEquals(List.of("vale.epw, row 1, column “latitude”: “95” must be a number from -66 to 66 degrees."),
                problems(good.replace("41.50", "95")));
        assertTrue(problems(good + good.substring(good.indexOf("2025,1,1,1,"))).get(0)
                .contains("2025-01-01 has 48 rows but a day has 24; remove the doubled rows."));
        assertTrue(problems("Month,low\n1,2\n").get(0).contains("its first row must begin with LOCATION but begins with “Month”."));
        assertTrue(problems("LOCATION,a\nDESIGN CONDITIONS\n").get(0).contains("The file ends before its data"));
        assertTrue(problems(good.substring(0, good.indexOf("2025,1,1,1,"))).get(0).contains("The file has no rows of data."));
        assertTrue(problems(new EpwText().to(LocalDate.of(2025, 1, 5)).text()).get(0).contains("No month has 20 days"));
        assertTrue(problems("LOCATION," + "x".repeat(40_000)).get(0).contains("The row is longer than 32,768 characters"));
    }

    @Test
    void namesMayBeLatinOrUtf8() throws Exception {
        String text = new EpwText().text().replace("Ostrick Vale", "Mal\u00e5");
        for (var charset : List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1, StandardCharsets.UTF_16)) {
            Path file = Files.write(folder.resolve("name.epw"), text.getBytes(charset));
            assertEquals(List.of("Mal\u00e5, OS (999999)"), WeatherSource.read(file, ReadingProgress.NONE).stations(), charset.name());
        }
    }
}
