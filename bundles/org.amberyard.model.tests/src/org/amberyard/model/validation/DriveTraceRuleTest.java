package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.routes.DriveTrace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DriveTraceRuleTest {
    private static final String START = "ERROR: Drive trace Measured: ";
    private static final String END = "; import the trace again or correct it.";

    private final SmallStudy small = new SmallStudy();
    private final DriveTrace trace = small.addTrace();

    @Test
    void aTraceWithoutElevationsIsRight() {
        trace.setElevationsM(null);
        Said.of(small);
        trace.setElevationsM(" ");
        Said.of(small);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0 ten 20|number 2 is “ten”, which is no number",
        "0 1,5 20|number 2 is “1,5”, which is no number",
        "0 NaN 20|number 2 is “NaN”, which is no number",
        "0 10 10|number 3 is 10, not above the 10 before it",
        "0 10 86401|number 3 is 86401 but must be 0 to 86400",
        "0|there are 1 numbers but at least 2 are needed",
        "''|there are 0 numbers but at least 2 are needed"})
    void timesRise(String times, String trouble) {
        trace.setTimesS(times);
        Said.of(small, START + "times in s: " + trouble + END);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0 10 x|number 3 is “x”, which is no number",
        "0 -1 0|number 2 is -1 but must be 0 to 60",
        "0 61 0|number 2 is 61 but must be 0 to 60",
        "0 10|there are 2 numbers for 3 times",
        "1 10 0|number 1 is 1 but a trace starts and ends at rest, with 0",
        "0 10 0.5|number 3 is 0.5 but a trace starts and ends at rest, with 0",
        "0 0 0|all are 0 but a trace must move"})
    void speedsStartAndEndAtRest(String speeds, String trouble) {
        trace.setSpeedsMps(speeds);
        Said.of(small, START + "speeds in m/s: " + trouble + END);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "100 up 100|number 2 is “up”, which is no number",
        "100 9001 100|number 2 is 9001 but must be -500 to 9000",
        "100 101|there are 2 numbers for 3 times"})
    void elevationsBelongToTheTimes(String elevations, String trouble) {
        trace.setElevationsM(elevations);
        Said.of(small, START + "elevations in m: " + trouble + END);
    }
}
