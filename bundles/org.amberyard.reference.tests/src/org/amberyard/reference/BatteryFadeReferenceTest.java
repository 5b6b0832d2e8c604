package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.battery.FadeRate;
import org.amberyard.core.battery.FadeState;
import org.amberyard.core.battery.LfpFade;
import org.amberyard.core.battery.NmcFade;
import org.amberyard.core.battery.PackStress;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.Test;

class BatteryFadeReferenceTest {
    private static final double HOURS_PER_YEAR = 8760;

    /**
     * Schmalstieg, Käbitz, Ecker, Sauer, "A holistic aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries", Journal of
     * Power Sources 257 (2014), calendar factor; values computed from the published equation, whose coefficients were seen in
     * published code.
     */
    @ParameterizedTest
    @CsvSource({"3.6, 25, 2.347659e-4", "3.7, 25, 2.867759e-4", "3.9, 25, 3.907961e-4", "3.7, 35, 6.127729e-4",
        "3.7, 50, 1.752541e-3"})
    void nmcCalendarFactor(double cellV, double packC, double factor) {
        assertEquals(factor, NmcFade.calendarFactor(cellV, packC), 1e-6 * factor);
    }

    /** The same paper, cycle factor. */
    @ParameterizedTest
    @CsvSource({"3.667, 0.5, 2.800500e-3", "3.7, 0.2, 1.584202e-3", "3.7, 0.5, 2.808502e-3", "3.7, 0.8, 4.032802e-3",
        "3.9, 0.5, 3.199416e-3"})
    void nmcCycleFactor(double cellV, double depth, double factor) {
        assertEquals(factor, NmcFade.cycleFactor(cellV, depth), 1e-6 * factor);
    }

    /** The same paper: 1,825 days at 3.7 V and 25 °C, 4,100 Ah through the cell at a depth of a half. */
    @Test
    void nmcFiveYears() {
        double years = 1825 / 365.0;
        double cyclesPerYear = 4100 / (2 * 2.05) / 0.5 / years;
        FadeState state = FadeState.NEW.after(new NmcFade().rate(still(25, 0.5, cyclesPerYear, 0.5, 0.5)), years);
        assertEquals(0.080074, state.calendarLoss(), 1e-6);
        assertEquals(0.740094, state.health(), 1e-6);
    }

    /** Below 3.1486 V the published fit is negative and counts as nothing. */
    @Test
    void nmcFitDoesNotHeal() {
        assertEquals(0, NmcFade.calendarFactor(3.14, 25), 0);
        assertTrue(NmcFade.calendarFactor(3.15, 25) > 0);
    }

    /**
     * Naumann, Spingler, Jossen, "Analysis and modeling of cycle aging of a commercial LiFePO4/graphite cell", Journal of Power
     * Sources 451 (2020); values computed from the equation and coefficients as seen in published code that cites the paper.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0.6, 1000, 0.044420", "1, 0.8, 1000, 0.056931", "1, 0.8, 4000, 0.113863", "0.5, 0.4, 2000, 0.060968"})
    void lfpCycles(double powerPerHour, double depth, double fullCycles, double loss) {
        FadeRate rate = new LfpFade().rate(still(25, 0.5, fullCycles / depth, depth, powerPerHour));
        assertEquals(loss, FadeState.NEW.after(rate, 1).cycleLoss(), 1e-6);
    }

    /**
     * Naumann, Schimpe, Keil, Hesse, Jossen, "Analysis and modeling of calendar aging of a commercial LiFePO4/graphite cell",
     * Journal of Energy Storage 17 (2018); values computed from the equation, coefficients and units as seen in published code
     * that cites the paper.
     */
    @ParameterizedTest
    @CsvSource({"25, 0.5, 1, 0.042516", "25, 0.5, 10, 0.134447", "25, 1, 10, 0.214185", "40, 0.5, 10, 0.187187"})
    void lfpCalendar(double packC, double chargeShare, double years, double loss) {
        FadeRate rate = new LfpFade().rate(still(packC, chargeShare, 0, 0.5, 0.5));
        assertEquals(loss, FadeState.NEW.after(rate, years).calendarLoss(), 1e-6);
    }

    /** Arrhenius by hand: 17,126 J/mol from 25 to 35 °C is exp(17126 / 8.314 * (1/298.15 - 1/308.15)) = 1.25133. */
    @Test
    void arrheniusRatio() {
        assertEquals(1.25133, lfpCalendarYear(35) / lfpCalendarYear(25), 1e-5);
    }

    private static double lfpCalendarYear(double packC) {
        return FadeState.NEW.after(new LfpFade().rate(still(packC, 0.5, 0, 0.5, 0.5)), 1).calendarLoss();
    }

    private static PackStress still(double packC, double chargeShare, double cyclesPerYear, double depth, double powerPerHour) {
        return new PackStress(List.of(new PackStress.Dwell(packC, chargeShare, HOURS_PER_YEAR)),
                List.of(new PackStress.Cycle(depth, 0.5, cyclesPerYear, powerPerHour)), cyclesPerYear * depth);
    }
}
