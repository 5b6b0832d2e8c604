package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.trace.CleaningReport;
import org.amberyard.core.trace.DriveStatistics;
import org.amberyard.core.trace.GapTotal;
import org.amberyard.core.units.UnitSystem;
import org.junit.jupiter.api.Test;

class CleaningSentencesTest {
    private static final GapTotal NONE = new GapTotal(0, 0);

    @Test
    void everythingThatWasDoneIsSaid() {
        CleaningReport report = new CleaningReport(3600, 1, 12, 3, 10,
                new CleaningReport.GapReport(new GapTotal(2, 15), new GapTotal(1, 601), new GapTotal(3, 95), 820), 20_500,
                18_000, OptionalDouble.of(2345), 118, 7, 4, 9);
        assertEquals(List.of("3,600 points were read.",
                "1 point bears the time of the one before and was left out.",
                "12 points that no bus can have reached were left out.",
                "2 gaps of up to 10 s, 15 s in all, were interpolated.",
                "1 gap in which the bus hardly moved, 601 s in all, was taken as standing time.",
                "3 gaps in which the bus moved, 95 s in all, were bridged over 0.82 km at the mean speed.",
                "Positions scatter by about 3.0 m; speeds are the slopes of curves fitted over 10 s to either side.",
                "The distance is 18.00 km; from point to point it was 20.50 km.",
                "The track does not start at rest; a start of 7 s was added.",
                "The track does not end at rest; a stop of 4 s was added.",
                "The climb is 118 m; with all noise it was 2,345 m.",
                "For 9 s the grade was beyond 25 % and was cut to that."), CleaningSentences.of(report, UnitSystem.METRIC));
    }

    @Test
    void aCleanTrackIsSoonTold() {
        CleaningReport report = new CleaningReport(1061, 0, 0, 0, 0, new CleaningReport.GapReport(NONE, NONE, NONE, 0),
                8935.1, 8935.1, OptionalDouble.empty(), 0, 0, 0, 0);
        assertEquals(List.of("1,061 points were read.", "The distance is 5.55 mi; from point to point it was 5.55 mi.",
                "The track has no elevations, so the drive is level."), CleaningSentences.of(report, UnitSystem.US));
    }

    @Test
    void smoothedSpeedsAreSaid() {
        CleaningReport report = new CleaningReport(100, 0, 0, 0, 4, new CleaningReport.GapReport(NONE, NONE, NONE, 0), 1000,
                1000, OptionalDouble.empty(), 0, 0, 0, 0);
        assertEquals("Speeds scatter and were smoothed by curves fitted over 4 s to either side.",
                CleaningSentences.of(report, UnitSystem.METRIC).get(1));
    }

    @Test
    void theDriveIsTold() {
        DriveStatistics drive = new DriveStatistics(8935.1, 1060, 8.43, 25.93, 0.333, 14, 0, 0.49);
        assertEquals("The drive is 5.55 mi long and takes 17.7 min: mean 18.9 mph, highest 58.0 mph, 33.3 % of the time idle, "
                + "14 stops, climb 0 ft, mean acceleration 1.61 ft/s².", DriveSentence.of(drive, UnitSystem.US));
    }
}
