package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A day in eight steps of three hours; a bus that stands from 18:20 to 1:40 of the next day. */
class ChargeSpanTest {
    private static final StepGrid GRID = new StepGrid(8, 180);

    private static List<ChargeSpan> spans(double... kw) {
        PlugIn stay = new PlugIn(0, "E01", 1100, 1540, 20, 1, null);
        ChargeSchedule schedule = new ChargeSchedule(GRID, new double[][] {kw}, new double[] {1}, List.of(), 0);
        return ChargeSpan.of(schedule, new Plugged(0, stay, 0, 0, 1100, 1540, false));
    }

    @Test
    void chargingThroughTheNightIsOneSpanAsLongAsTheStay() {
        assertEquals(List.of(new ChargeSpan(1100, 1540)), spans(5, 0, 0, 0, 0, 0, 3, 3));
    }

    @Test
    void aPauseMakesTwo() {
        assertEquals(List.of(new ChargeSpan(1100, 1260), new ChargeSpan(1440, 1540)), spans(5, 0, 0, 0, 0, 0, 3, 0));
    }

    @Test
    void whatIsNotDuringTheStayDoesNotCount() {
        assertEquals(List.of(), spans(0, 4, 4, 4, 4, 4, 0, 0.001));
    }
}
