package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Random;
import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.RoadLoad;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.core.duty.TractiveWork;
import org.amberyard.core.trace.DriveStatistics;
import org.amberyard.core.units.Unit;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.study.TraceCompiler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TraceImportTest {
    private static final Path SCHEDULES =
            Path.of(System.getProperty("basedir", ".")).resolve("../../examples/drive-schedules").normalize();
    private static final int LEG_S = 90;
    private static final int LEGS = 30;

    @TempDir
    Path folder;

    /** Published figures; where they come from and how far they are trusted stands in examples/drive-schedules/README.md. */
    @ParameterizedTest
    @CsvSource({"epa_hd_udds,1060,5.55,18.9", "epa_udds,1369,7.45,19.59", "epa_nycc,598,1.18,7.1", "epa_us06,600,8.01,48.05",
        "cbd14_constructed,560,2.001,12.87"})
    void publishedSchedulesKeepTheirFigures(String name, double seconds, double miles, double mph) throws ImportException {
        DriveTrace trace = TraceImport.read(SCHEDULES.resolve(name + ".csv")).trace();
        DriveStatistics told = DriveStatistics.of(TraceCompiler.compile(trace));
        assertEquals(name, trace.getName());
        assertEquals(name + ".csv", trace.getDescription());
        assertNull(trace.getElevationsM());
        assertEquals(seconds, told.durationS(), 1e-9);
        assertEquals(miles, told.lengthM() / 1000 / Unit.KM_PER_MILE, 0.005 * miles);
        assertEquals(mph, told.meanSpeedMps() * 3.6 / Unit.KM_PER_MILE, 0.006 * mph);
    }

    /** An invented drive of trapezes on a winding road over a hill of 80 m, logged with an error of 3 m along each axis. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aNoisyLogGivesDistanceClimbAndWork(long seed) throws Exception {
        Path log = Files.writeString(folder.resolve("R12 AM.gpx"), gpx(seed));
        TraceImport imported = TraceImport.read(log);
        SpeedTrace compiled = TraceCompiler.compile(imported.trace());
        SpeedTrace truth = truth();
        assertEquals("R12 AM", imported.trace().getName());
        assertEquals(truth.distanceM(), compiled.distanceM(), 0.02 * truth.distanceM());
        assertEquals(80, DriveStatistics.of(compiled).climbM(), 8);
        assertEquals(wheelKwh(truth), wheelKwh(compiled), 0.05 * wheelKwh(truth));
        assertEquals(imported.cleaned().trace().distanceM(), compiled.distanceM(), 0.1);
    }

    private static double speedMps(int second) {
        int s = second % LEG_S;
        return Math.max(0, Math.min(14, Math.min(0.8 * (s - 5), 0.9 * (70 - s))));
    }

    private static double elevationM(double distanceM) {
        return 300 + 40 * (1 - Math.cos(2 * Math.PI * distanceM / truthLengthM()));
    }

    private static double truthLengthM() {
        double sum = 0;
        for (int s = 0; s < LEGS * LEG_S; s++) {
            sum += 0.5 * (speedMps(s) + speedMps(s + 1));
        }
        return sum;
    }

    private static SpeedTrace truth() {
        int steps = LEGS * LEG_S;
        double[] time = new double[steps + 1];
        double[] speed = new double[steps + 1];
        double[] grade = new double[steps];
        double atM = 0;
        for (int s = 0; s <= steps; s++) {
            time[s] = s;
            speed[s] = speedMps(s);
            double nextM = atM + 0.5 * (speed[s] + speedMps(s + 1));
            if (s < steps && nextM > atM) {
                grade[s] = (elevationM(nextM) - elevationM(atM)) / (nextM - atM);
            }
            atM = nextM;
        }
        return new SpeedTrace(time, speed, grade);
    }

    private static String gpx(long seed) {
        Random noise = new Random(seed);
        StringBuilder text = new StringBuilder("<gpx version=\"1.1\" creator=\"invented\" xmlns=\"http://www.topografix.com/GPX/1/1\">"
                + "<trk><trkseg>\n");
        double north = 0;
        double east = 0;
        double atM = 0;
        for (int s = 0; s <= LEGS * LEG_S; s++) {
            text.append(point(s, north + 3 * noise.nextGaussian(), east + 3 * noise.nextGaussian(),
                    elevationM(atM) + 2 * noise.nextGaussian()));
            double stepM = 0.5 * (speedMps(s) + speedMps(s + 1));
            double heading = 0.8 * Math.sin(atM / 150);
            north += stepM * Math.cos(heading);
            east += stepM * Math.sin(heading);
            atM += stepM;
        }
        return text.append("</trkseg></trk></gpx>").toString();
    }

    private static String point(int second, double northM, double eastM, double elevationM) {
        double perDegree = Math.toRadians(6_371_008.8);
        return String.format(Locale.ROOT, "<trkpt lat=\"%.7f\" lon=\"%.7f\"><ele>%.1f</ele><time>%s</time></trkpt>%n",
                41 + northM / perDegree, -93 + eastM / perDegree / Math.cos(Math.toRadians(41)), elevationM,
                Instant.parse("2026-09-01T11:45:00Z").plusSeconds(second));
    }

    /** Work at the wheels of a bus of 11 t, kWh, from the road load alone. */
    private static double wheelKwh(SpeedTrace trace) {
        RoadLoad bus = new RoadLoad(11_000, 0.008, 4.55, 1.05, 1.225);
        return TractiveWork.of(trace, bus, DrivelineLoss.mechanical(1), BrakeRecovery.NONE).drawnKwh();
    }

    @Test
    void aTrackThatNoDriveCanBeMadeFromIsRefused() throws IOException {
        Path log = Files.writeString(folder.resolve("short.csv"), "time_s,speed_mps\n0,0\n1,1\n2,0\n");
        assertEquals("short.csv: The track is only 1 m long; a drive needs at least 100 m.",
                assertThrows(ImportException.class, () -> TraceImport.read(log)).getMessage());
    }

    @Test
    void theTraceOfTheExampleIsWhatItsFileGives() throws Exception {
        Path example = SCHEDULES.resolveSibling("ostrick-vale");
        DriveTrace fresh = TraceImport.read(example.resolve("traces/R12-morning.gpx")).trace();
        DriveTrace kept = StudyFolderImport.read(example.resolve("csv")).getTraces().get(0);
        assertEquals(fresh.getName(), kept.getName());
        assertEquals(fresh.getTimesS(), kept.getTimesS());
        assertEquals(fresh.getSpeedsMps(), kept.getSpeedsMps(), "import the file again and put its figures into traces.csv");
        assertEquals(fresh.getElevationsM(), kept.getElevationsM());
    }
}
