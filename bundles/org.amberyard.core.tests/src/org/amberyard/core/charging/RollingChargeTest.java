package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Charging day by day without hindsight, by hand. */
class RollingChargeTest {
    private static StretchProblem day(double kwh, int toStep) {
        return new StretchProblem(10, 1, new double[4], new double[] {0.1, 0.1, 0.3, 0.3}, new int[] {1, 1, 1, 1},
                List.of(new Session(0, toStep, kwh, 100, Session.OWN_POWER)), new double[0]);
    }

    private static MonthSchedule charge(StretchProblem... days) {
        return RollingCharge.of(new MonthProblem(List.of(days), new double[] {3}, new double[1], Double.POSITIVE_INFINITY));
    }

    @Test
    void oneDayDoesNotPayForAPeakThatTenDaysWouldPayFor() {
        assertEquals(10, charge(day(40, 4)).demandKw()[0], 1e-8);
    }

    @Test
    void peakOfADayServesTheDaysAfterIt() {
        MonthSchedule month = charge(day(40, 2), day(40, 4));
        assertEquals(20, month.demandKw()[0], 1e-8);
        assertEquals(20, month.kw().get(1)[0][0], 1e-8);
        MonthSchedule otherOrder = charge(day(40, 4), day(40, 2));
        assertEquals(10, otherOrder.kw().get(0)[0][0], 1e-8);
    }
}
