package org.amberyard.core.consumption;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Hand calculations; invented figures. */
class ConsumptionCurveTest {
    private static final ConsumptionCurve CURVE = new ConsumptionCurve(0.8, 18, 0.005, 0.4, 10, 22, 0.5, 4);

    @Test
    void mildDayTakesTheBaseAlone() {
        assertEquals(80, CURVE.totalKwh(100, 4, 20), 1e-12);
    }

    @Test
    void coldDrivingRisesPerDistanceAndHeatPerHour() {
        assertEquals(100 * 0.8 * (1 + 0.005 * 20), CURVE.drivingKwh(100, -2), 1e-12);
        assertEquals(3 * 0.4 * 20, CURVE.heatKwh(3, -2), 1e-12);
    }

    @Test
    void heaterAndCoolerHaveLimits() {
        assertEquals(3 * 10, CURVE.heatKwh(3, -30), 1e-12);
        assertEquals(2 * 0.5 * 6, CURVE.coolingKwh(2, 28), 1e-12);
        assertEquals(2 * 4, CURVE.coolingKwh(2, 40), 1e-12);
    }

    @Test
    void slowRouteTakesMorePerDistanceInTheColdButNotWhenMild() {
        assertEquals(0.88 + 8.0 / 40, CURVE.kwhPerKm(40, -2), 1e-12);
        assertTrue(CURVE.kwhPerKm(20, -2) > CURVE.kwhPerKm(40, -2));
        assertEquals(CURVE.kwhPerKm(20, 20), CURVE.kwhPerKm(40, 20), 1e-12);
    }

    @Test
    void badFiguresAreNamed() {
        String base = assertThrows(IllegalArgumentException.class,
                () -> new ConsumptionCurve(0, 18, 0, 0, 0, 22, 0, 0)).getMessage();
        assertTrue(base.contains("Base use") && base.contains("above 0"), base);
        String cooling = assertThrows(IllegalArgumentException.class,
                () -> new ConsumptionCurve(0.8, 18, 0, 0, 0, 17, 0, 0)).getMessage();
        assertTrue(cooling.contains("17.0") && cooling.contains("18.0"), cooling);
    }
}
