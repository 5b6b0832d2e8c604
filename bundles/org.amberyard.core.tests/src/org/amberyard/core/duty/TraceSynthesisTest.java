package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TraceSynthesisTest {
    private final TraceSynthesis synthesis = new TraceSynthesis(new DriverStyle(0.7, 0.9, 1));

    private static RunInput run(double km, double minutes, int stops, double topKmh, double climbM) {
        return SampleBus.run("AM", 390, minutes, km, stops, 20, topKmh, climbM, Collections.nCopies(12, 15));
    }

    @Property(tries = 200)
    void drivesTheDistanceInTheScheduledTime(@ForAll @DoubleRange(min = 2, max = 80) double km,
            @ForAll @IntRange(min = 1, max = 60) int stops) {
        DrivePattern drive = synthesis.of(run(km, 600, stops, 60, 50));
        assertEquals(km * 1000, drive.distanceM(), 1e-6 * km * 1000);
        assertEquals(600 * 60, drive.totalS(), 1e-6);
    }

    @Test
    void aTightScheduleTakesLonger() {
        RunInput tight = run(30, 20, 20, 60, 0);
        double cruiseMin = 30 / 60.0 * 60;
        assertTrue(synthesis.of(tight).totalS() / 60 > cruiseMin + 20 * 20 / 60.0);
    }

    @Test
    void speedStaysBelowTheRoads() {
        for (DrivePattern.Piece piece : synthesis.of(run(30, 90, 10, 50, 0)).pieces()) {
            for (int i = 0; i < piece.trace().steps(); i++) {
                assertTrue(piece.trace().meanSpeedMps(i) <= 50 / 3.6 + 1e-9);
            }
        }
    }

    @Test
    void climbsAsMuchAsItDescends() {
        double up = 0;
        double net = 0;
        for (DrivePattern.Piece piece : synthesis.of(run(30, 90, 10, 60, 120)).pieces()) {
            double grade = piece.trace().grade(0);
            double rise = piece.times() * piece.trace().distanceM() * grade / Math.sqrt(1 + grade * grade);
            up += Math.max(0, rise);
            net += rise;
        }
        assertEquals(120, up, 1e-6);
        assertEquals(0, net, 1e-9);
    }
}
