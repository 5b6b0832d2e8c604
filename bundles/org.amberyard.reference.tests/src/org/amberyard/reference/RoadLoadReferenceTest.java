package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.RoadLoad;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.core.duty.TractiveWork;
import org.amberyard.core.units.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Road load of a bus of 11,000 kg, Crr 0.008, Cd 0.65, 7 m², rotating factor 1.05, air of 1.225 kg/m³: worked by hand from
 * the road-load equation (Gillespie, "Fundamentals of Vehicle Dynamics", SAE, 1992, chapter 4, from memory) and summed
 * independently over the published drive schedules in data/drive_schedules, whose origin PROVENANCE.md gives.
 */
class RoadLoadReferenceTest {
    private static final RoadLoad BUS = new RoadLoad(11_000, 0.008, 0.65 * 7.0, 1.05, 1.225);

    @ParameterizedTest
    @CsvSource({"20,862.985,222.777,0.4853791106", "35,862.985,682.254,0.6907839122", "55,862.985,1684.751,1.138939843"})
    void steadySpeed(double mph, double rollingN, double dragN, double kwhPerMile) {
        double speed = mph * 0.44704;
        assertEquals(rollingN, BUS.rollingN(1), 1e-3);
        assertEquals(dragN, BUS.dragN(speed), 1e-3);
        double metresPerMile = Unit.KM_PER_MILE * 1000;
        assertEquals(kwhPerMile, (BUS.rollingN(1) + BUS.dragN(speed)) * metresPerMile / 3.6e6, kwhPerMile * 1e-6);
    }

    @ParameterizedTest
    @CsvSource("0.05,5386.93")
    void grade(double grade, double climbingN) {
        assertEquals(climbingN, BUS.climbingN(Math.sin(Math.atan(grade))), 5e-3);
    }

    @ParameterizedTest
    @CsvSource({"epa_hd_udds,5.55202,7.58556,2.94513,2.14191,2.49852", "epa_udds,7.45039,9.98544,5.07693,2.87428,2.03423",
        "epa_nycc,1.17964,2.17918,1.63639,0.45509,0.08770", "cbd14_constructed,2.00278,2.66305,1.71910,0.77265,0.17130",
        "epa_us06,8.00797,16.25164,5.48156,3.08939,7.68070"})
    void driveSchedules(String name, double miles, double drivingKwh, double brakingKwh, double rollingKwh, double dragKwh)
            throws IOException {
        SpeedTrace trace = schedule(name);
        TractiveWork work = TractiveWork.of(trace, BUS, DrivelineLoss.mechanical(1), BrakeRecovery.NONE);
        assertEquals(miles, trace.distanceM() / 1000 / Unit.KM_PER_MILE, miles * 1e-5);
        assertEquals(drivingKwh, work.drawnKwh(), drivingKwh * 1e-4);
        assertEquals(brakingKwh, work.frictionBrakeKwh(), brakingKwh * 1e-4);
        assertEquals(rollingKwh, work.rollingKwh(), rollingKwh * 1e-4);
        assertEquals(dragKwh, work.dragKwh(), 5e-5 + dragKwh * 1e-4);
    }

    private static SpeedTrace schedule(String name) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                RoadLoadReferenceTest.class.getResourceAsStream("/drive_schedules/" + name + ".csv"), StandardCharsets.UTF_8))) {
            List<double[]> rows = reader.lines().skip(1).map(l -> l.split(","))
                    .map(c -> new double[] {Double.parseDouble(c[0]), Double.parseDouble(c[1])}).toList();
            return SpeedTrace.level(rows.stream().mapToDouble(r -> r[0]).toArray(),
                    rows.stream().mapToDouble(r -> r[1]).toArray());
        }
    }
}
