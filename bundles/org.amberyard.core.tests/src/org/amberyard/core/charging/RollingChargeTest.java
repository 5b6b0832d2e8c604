package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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

    private static MonthProblem month(double kwh, double demandPrice) {
        return new MonthProblem(List.of(day(kwh, 4)), new double[] {demandPrice}, new double[1], Double.POSITIVE_INFINITY);
    }

    /** 80 kWh need 20 kW, of which the ratchet bills 8 kW in all months: the small one has a use for them. */
    @Test
    void demandOfTheYearBeforeServesUnderARatchet() {
        List<MonthProblem> year = List.of(month(20, 5), month(80, 5));
        double[] ratcheted = RollingCharge.ofYear(year, new double[] {0.4}).get(0).kw().get(0)[0];
        assertArrayEquals(new double[] {8, 8, 2, 2}, ratcheted, 1e-6);
        assertArrayEquals(new double[] {5, 5, 5, 5}, RollingCharge.ofYear(year, new double[1]).get(0).kw().get(0)[0], 1e-6);
    }

    /** Within the month a kW saves 0.4 a day and costs 0.3, and the months after it, in which the ratchet bills it, are not seen. */
    @Test
    void whatAPeakCostsInLaterMonthsIsNotSeen() {
        MonthProblem dear = month(40, 0.3);
        List<MonthSchedule> year = RollingCharge.ofYear(List.of(dear, month(0, 3), month(0, 3)), new double[] {0.5});
        assertEquals(20, year.get(0).demandKw()[0], 1e-6);
        assertEquals(10, year.get(1).demandKw()[0], 1e-6);
    }
}
