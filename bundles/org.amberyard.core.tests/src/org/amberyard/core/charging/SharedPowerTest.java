package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A cabinet of 60 kW at the meter, 90 %, with two plugs. */
class SharedPowerTest {
    private static final List<PortUnit> CABINET = PortUnit.of(SampleYard.FAST, 2, 1);

    private static double[][] kw(YardCharging charging) {
        return charging.schedule().meterKw();
    }

    private static BusAcceptance takes(double dcKw) {
        return new BusAcceptance(0, dcKw, SampleYard.EVEN);
    }

    /** Both get 30 kW; bus 1 has its 27 kWh after an hour, then bus 2 has the whole cabinet: 27 of 54 kWh in half an hour. */
    @Test
    void equalPartsUntilOneIsFull() {
        double[][] kw = kw(SampleYard.atOnce(
                SampleYard.stretch(SampleYard.bus(1, 0, 600, 27), SampleYard.bus(2, 0, 600, 54)), CABINET));
        assertEquals(30, kw[0][3], 1e-9);
        assertEquals(0, kw[0][4], 0);
        assertEquals(30, kw[1][3], 1e-9);
        assertEquals(60, kw[1][4], 1e-9);
        assertEquals(60, kw[1][5], 1e-9);
        assertEquals(0, kw[1][6], 0);
    }

    /** Bus 1 takes 9 kW into the battery, 10 at the meter; the other 50 kW go to bus 2. */
    @Test
    void whatOneCannotTakeGoesToTheOther() {
        double[][] kw = kw(SampleYard.atOnce(SampleYard.stretch(SampleYard.bus(1, 0, 600, 27, takes(9)),
                SampleYard.bus(2, 0, 600, 54, takes(80))), CABINET));
        assertEquals(10, kw[0][0], 1e-9);
        assertEquals(50, kw[1][0], 1e-9);
    }

    /** Bus 2 comes ten minutes into a step: 60 kW for bus 1 until then, 30 each after it. */
    @Test
    void whoComesWithinAStepSharesFromThen() {
        double[][] kw = kw(SampleYard.atOnce(
                SampleYard.stretch(SampleYard.bus(1, 0, 600, 60), SampleYard.bus(2, 10, 600, 60)), CABINET));
        assertEquals((60 * 10 + 30 * 5) / 15.0, kw[0][0], 1e-9);
        assertEquals(30 * 5 / 15.0, kw[1][0], 1e-9);
    }

    /** 90 kWh in two hours and 18 in four ask for 50 and 5 kW at the meter, which the cabinet can give: as if alone. */
    @Test
    void spreadWithinThePowerIsAsIfAlone() {
        double[][] kw = kw(SampleYard.spread(
                SampleYard.stretch(SampleYard.bus(1, 0, 120, 90), SampleYard.bus(2, 0, 240, 18)), CABINET));
        assertEquals(50, kw[0][0], 1e-9);
        assertEquals(50, kw[0][7], 1e-9);
        assertEquals(5, kw[1][0], 1e-9);
        assertEquals(5, kw[1][15], 1e-9);
    }

    /** Two buses that stand all day and meet over midnight: the one that comes at 12:00 shares with the one from 00:00. */
    @Test
    void busesThatMeetOverTheEndOfTheDayShare() {
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(SampleYard.bus(1, 0, 1430, 100, takes(100)),
                SampleYard.bus(2, 1410, 1440 + 1400, 100, takes(100))), CABINET);
        double[] total = charging.schedule().totalKw();
        for (double kw : total) {
            assertTrue(kw <= 60 + 1e-9);
        }
        assertEquals(30, kw(charging)[0][2], 1e-9);
        assertEquals(60, kw(charging)[1][94], 1e-9, "bus 1 is full by then");
        assertEquals(30, kw(charging)[1][2], 1e-9);
        assertTrue(charging.served());
    }

    /**
     * Bus 1 stands from midnight to midnight and needs 756 kWh, bus 2 from 12:00 to 11:00 and needs 216. Bus 1 has 648 at 12:00;
     * then both get 27 kW for four hours, which fills bus 1, and bus 2 the rest in two.
     */
    @Test
    void whereSomeBusAlwaysStandsTheTurnsMeet() {
        double[][] kw = kw(SampleYard.atOnce(
                SampleYard.stretch(SampleYard.bus(1, 0, 1440, 756), SampleYard.bus(2, 720, 2100, 216)), CABINET));
        assertEquals(60, kw[0][47], 1e-9);
        assertEquals(30, kw[0][48], 1e-9);
        assertEquals(30, kw[1][63], 1e-9);
        assertEquals(0, kw[0][64], 1e-9);
        assertEquals(60, kw[1][71], 1e-9);
        assertEquals(0, kw[1][72], 1e-9);
    }
}
