package org.amberyard.core.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.junit.jupiter.api.Test;

/**
 * Shares by hand: a normal day of 60 kWh, twenty of them in the month, a coldest one of 1.33 and a hottest one of 0.9 times that; for heat
 * 3 kWh, 9 kWh and none.
 */
class MonthShareTest {
    private static final int JANUARY = 0;
    private static final double EXACT = 1e-12;

    private final RouteUse route = SampleBuses.route(20, 20, 10, 30);

    private MonthShare share(double routeShare, int days, ToDoubleFunction<EnergyUse> energy) {
        return MonthShare.of(SampleBuses.bus(0, route, routeShare, EnergyUse.ZERO), ServiceMonth.of(JANUARY, false, days, 4, false),
                route.normalDay(JANUARY, false).orElseThrow(), true, energy);
    }

    /** 1,200 kWh less 133.8 kWh of the two are for the eighteen others. */
    @Test
    void theOtherDaysShareWhatTheExtremeOnesLeave() {
        MonthShare share = share(1, 20, EnergyUse::batteryKwh);
        assertEquals(1, share.extremeDays(), 0);
        assertEquals((1200 - 79.8 - 54) / (18 * 60), share.otherDays(), EXACT);
        assertEquals(1, share.of(StretchKind.COLDEST_DAY), 0);
        assertEquals(1, share.of(StretchKind.HOTTEST_DAY), 0);
        assertEquals(share.otherDays(), share.of(StretchKind.SERVICE_DAY), 0);
        assertEquals(share.otherDays(), share.of(StretchKind.BEFORE_WEEKEND), 0);
        MonthShare heat = share(1, 20, EnergyUse::gridKwh);
        assertEquals((60.0 - 9) / (18 * 3), heat.otherDays(), EXACT);
    }

    /** A bus that drives its route on a tenth of the days takes 120 kWh, less than the two alone: they are counted in part. */
    @Test
    void theExtremeDaysTakeNoMoreThanTheMonth() {
        MonthShare share = share(0.1, 20, EnergyUse::batteryKwh);
        assertEquals(120 / 133.8, share.extremeDays(), EXACT);
        assertEquals(0, share.otherDays(), EXACT);
    }

    /** Two days of service hold a coldest one alone, three both. */
    @Test
    void fewDays() {
        assertEquals((1200 - 79.8) / 60, share(1, 2, EnergyUse::batteryKwh).otherDays(), EXACT);
        assertEquals((1200 - 133.8) / 60, share(1, 3, EnergyUse::batteryKwh).otherDays(), EXACT);
        assertEquals(1200.0 / 60, share(1, 1, EnergyUse::batteryKwh).otherDays(), EXACT);
    }

    @Test
    void whatIsNotUsedHasNoShare() {
        MonthShare none = share(1, 20, use -> 0);
        assertEquals(1, none.extremeDays(), 0);
        assertEquals(0, none.otherDays(), 0);
        assertTrue(share(1, 20, EnergyUse::batteryKwh).otherDays() > 0);
    }
}
