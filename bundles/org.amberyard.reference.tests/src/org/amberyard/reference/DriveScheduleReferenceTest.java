package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import org.amberyard.core.trace.CleanedTrack;
import org.amberyard.core.trace.DriveStatistics;
import org.amberyard.core.trace.Track;
import org.amberyard.core.trace.TrackCleaning;
import org.amberyard.core.trace.TrackPoint;
import org.amberyard.core.trace.UnusableTrackException;
import org.amberyard.core.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published drive schedules (data/drive_schedules, origin in PROVENANCE.md) keep their published statistics when they are
 * cleaned: a schedule is no noisy log.
 */
class DriveScheduleReferenceTest {

    /**
     * Heavy-duty urban schedule, 40 CFR Part 86 Appendix I(d): 1060 s, 18.9 mph and 33 % idle in 40 CFR 86.1215-85 (read in
     * a public copy); 5.55 mi from memory. Urban schedule, Appendix I(a), New York City and US06: EPA's figures, from memory;
     * the file of US06 has 600 s where EPA counts 596 s without idling at the ends. Central Business District: 560 s and
     * 3.22 km on the page "Central Business District" of dieselnet.com (read in a stored copy); 20 mph from memory. The mean
     * speeds of the last two are length over duration.
     */
    @ParameterizedTest
    @CsvSource({"epa_hd_udds,1060,5.55,18.9,58.0", "epa_udds,1369,7.45,19.59,56.7", "epa_nycc,598,1.18,7.1,27.7",
        "epa_us06,600,8.01,48.05,80.3", "cbd14_constructed,560,2.001,12.87,20.0"})
    void publishedStatistics(String name, double seconds, double miles, double mph, double topMph)
            throws IOException, UnusableTrackException {
        CleanedTrack cleaned = TrackCleaning.clean(schedule(name));
        DriveStatistics told = DriveStatistics.of(cleaned.trace());
        assertEquals(seconds, told.durationS(), 1e-9);
        assertEquals(miles, told.lengthM() / 1000 / Unit.KM_PER_MILE, 0.005 * miles);
        assertEquals(mph, told.meanSpeedMps() * 3.6 / Unit.KM_PER_MILE, 0.006 * mph);
        assertEquals(topMph, told.maxSpeedMps() * 3.6 / Unit.KM_PER_MILE, 0.06);
        assertEquals(0, cleaned.report().outliers());
        assertEquals(0, cleaned.report().smoothedOverS());
    }

    /** Stops as counted in the files, each time that the speed comes to 0; 17 for the urban schedule also from memory. */
    @ParameterizedTest
    @CsvSource({"epa_hd_udds,14", "epa_udds,17", "epa_nycc,18", "cbd14_constructed,14"})
    void stops(String name, int stops) throws IOException, UnusableTrackException {
        assertEquals(stops, DriveStatistics.of(TrackCleaning.clean(schedule(name)).trace()).stops());
    }

    /**
     * A third of the time, 40 CFR 86.1215-85 (read in a public copy), which counts the seconds at 0; time between two of them
     * is a second less at each stop.
     */
    @Test
    void idleShare() throws IOException, UnusableTrackException {
        DriveStatistics told = DriveStatistics.of(TrackCleaning.clean(schedule("epa_hd_udds")).trace());
        assertEquals(0.33, told.idleShare() + told.stops() / told.durationS(), 0.01);
    }

    private static Track schedule(String name) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(DriveScheduleReferenceTest.class
                .getResourceAsStream("/drive_schedules/" + name + ".csv"), StandardCharsets.UTF_8))) {
            return new Track(reader.lines().skip(1).map(l -> l.split(","))
                    .map(c -> TrackPoint.ofSpeed(Double.parseDouble(c[0]), Double.parseDouble(c[1]))).toList());
        }
    }
}
