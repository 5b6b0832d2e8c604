package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.core.trace.Track;
import org.amberyard.core.trace.TrackPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TraceCsvTest {
    private static final double NONE = Double.NaN;

    @TempDir
    Path folder;

    private Track read(String text) throws IOException, ImportException {
        return TraceCsv.read(Files.writeString(folder.resolve("log.csv"), text));
    }

    private List<String> problems(String text) {
        return assertThrows(ImportException.class, () -> read(text)).problems().stream().map(ImportProblem::toString).toList();
    }

    @ParameterizedTest
    @CsvSource({"speed_mps,10", "Speed (m/s),10", "speed_kmh,36", "Speed (km/h),36", "speed [kph],36", "SPEED_MPH,22.369362920544025",
        "v mps,10"})
    void speedsAreReadInTheUnitOfTheHeader(String header, String cell) throws Exception {
        Track track = read("time_s," + header + "\n0,0\n1," + cell + "\n");
        assertEquals(10, track.points().get(1).speedMps(), 1e-12);
        assertEquals(1, track.points().get(1).timeS());
    }

    @Test
    void elevationsAndPositionsAreRead() throws Exception {
        Track track = read("time_s,lat,lon,elevation_ft\n0,41.5,-93.5,1000\n1.5,41.6,-93.4,\n");
        assertEquals(List.of(new TrackPoint(0, 41.5, -93.5, NONE, 304.8), new TrackPoint(1.5, 41.6, -93.4, NONE, NONE)),
                track.points());
    }

    @Test
    void semicolonsAllowADecimalComma() throws Exception {
        Track track = read("\ufeffTime (s);Speed (km/h);Altitude (m)\n0;0;12,5\n0,5;3,6;-1.5\n");
        assertEquals(List.of(new TrackPoint(0, NONE, NONE, 0, 12.5), new TrackPoint(0.5, NONE, NONE, 1, -1.5)), track.points());
    }

    @Test
    void columnsThatAreNotUnderstoodAreNamed() {
        assertEquals(List.of(
                "log.csv, row 1, column “speed”: This is no column of a logged drive; remove it, or name it as one of time_s, "
                        + "speed_mps, speed_kmh or speed_mph, elevation_m or elevation_ft, latitude, longitude.",
                "log.csv, row 1, column “t (s)”: Another column holds the same; remove one.",
                "log.csv, row 1: A column of speeds (speed_mps, speed_kmh or speed_mph) is missing, or the columns latitude "
                        + "and longitude."),
                problems("time_s,speed,t (s)\n0,0,0\n"));
        assertEquals(List.of("log.csv, row 1: A column time_s is missing."), problems("speed_mps\n1\n"));
    }

    @Test
    void wrongCellsAreNamedByRowAndColumn() {
        assertEquals(List.of(
                "log.csv, row 3, column “speed_mps”: “fast” must be a number, 0 to 100 m/s.",
                "log.csv, row 4, column “time_s”: “1,5” must be a number, seconds.",
                "log.csv, row 4, column “elevation_m”: “9001” must be a number, -500 to 9,000 m.",
                "log.csv, row 5, column “speed_mps”: “-1” must be a number, 0 to 100 m/s."),
                problems("time_s,speed_mps,elevation_m\n0,0,1\n1,fast,1\n\"1,5\",1,9001\n3,-1,1\n"));
    }

    @Test
    void missingCellsAndFallingTimesAreNamed() {
        assertEquals(List.of("log.csv, row 3, column “speed_mps”: The speed is missing."), problems("time_s,speed_mps\n0,0\n1,\n"));
        assertEquals(List.of("log.csv, row 3, column “time_s”: The time is missing."), problems("time_s,speed_mps\n0,0\n,1\n"));
        assertEquals(List.of("log.csv, row 3, column “time_s”: The time is earlier than that of the row before."),
                problems("time_s,speed_mps\n5,0\n4,1\n"));
        assertEquals(List.of("log.csv, row 2, column “lat”: Latitude and longitude are needed together."),
                problems("time_s,speed_mps,lat,lon\n5,0,41,\n"));
        assertEquals(List.of("log.csv: A track needs at least two points but has 1."), problems("time_s,speed_mps\n5,0\n"));
        assertEquals(List.of("log.csv: Point 2 has no position, and not every point has a speed; one of both is needed throughout."),
                problems("time_s,speed_mps,lat,lon\n0,,41,-93\n1,5,,\n"));
    }

    @Test
    void thousandsOfProblemsAreCountedNotListed() {
        List<String> problems = problems("time_s,speed_mps\n" + "x,1\n".repeat(200));
        assertEquals(51, problems.size());
        assertEquals("log.csv: There are 150 more problems of this kind or another.", problems.get(50));
    }

    @Test
    void filesThatAreNoTextAreRefused() throws IOException {
        Files.write(folder.resolve("log.csv"), new byte[] {'t', (byte) 0xe9, '\n'});
        String message = assertThrows(ImportException.class, () -> TraceCsv.read(folder.resolve("log.csv"))).getMessage();
        assertTrue(message.startsWith("log.csv: The file is not UTF-8 text"), message);
    }
}
