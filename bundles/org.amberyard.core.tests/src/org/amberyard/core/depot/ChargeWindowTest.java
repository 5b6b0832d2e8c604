package org.amberyard.core.depot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ChargeWindowTest {

    @Test
    void windowRunsOverMidnight() {
        assertEquals(7.25, new ChargeWindow(22 * 60, 5 * 60 + 15).hours(), 1e-12);
        assertEquals(4, new ChargeWindow(600, 840).hours(), 1e-12);
        assertEquals(24, new ChargeWindow(600, 600).hours(), 1e-12);
    }

    @Test
    void hoursWithinAreThoseOfEveryNightThatIsTouched() {
        ChargeWindow night = new ChargeWindow(22 * 60, 5 * 60 + 15);
        assertEquals(7.25, night.hoursWithin(16 * 60, 30 * 60), 1e-12);
        assertEquals(5.25, night.hoursWithin(24 * 60, 30 * 60), 1e-12);
        assertEquals(2, night.hoursWithin(23 * 60, 25 * 60), 1e-12);
        assertEquals(0.25, night.hoursWithin(5 * 60, 7 * 60), 1e-12);
        assertEquals(0, night.hoursWithin(10 * 60, 20 * 60), 1e-12);
        assertEquals(14.5, night.hoursWithin(16 * 60, 54 * 60), 1e-12);
        assertEquals(2, new ChargeWindow(600, 600).hoursWithin(550, 670), 1e-12);
    }

    @Test
    void portGivesWhatTheBusTakes() {
        Port direct = new Port("DC", true, 60, 0.9, 100, 0, 0, 10, 30, 0);
        assertEquals(40, direct.batteryKw(40), 1e-12);
        assertEquals(54, direct.batteryKw(90), 1e-12);
        Port alternating = new Port("AC", false, 19.2, 0.9, 0, 0, 0, 10, 30, 0);
        assertEquals(9, alternating.batteryKw(10), 1e-12);
        assertEquals(19.2 * 0.9, alternating.batteryKw(22), 1e-12);
    }

    @Test
    void chargeTimeNamesWhatIsWrong() {
        var refused = assertThrows(IllegalArgumentException.class, () -> ChargeTime.hours(10, 0, 0.9));
        assertEquals("Power (kW) is 0.0 but must be above 0", refused.getMessage());
    }
}
