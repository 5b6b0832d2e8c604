package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.CapacityFade;
import org.amberyard.core.duty.DutyTable;
import org.junit.jupiter.api.Test;

class RouteFittingTest {
    private final StudyInput study = TinyDistrict.study();

    private RouteFit fit(double nominalKwh, double calendarFade, int route) {
        StudyInput sized = TinyPacks.withPack(study,
                new BatterySpec(nominalKwh, 0.9, 0.004, 2000, 0.7, new CapacityFade(calendarFade, 0)));
        List<RouteFit> fits = RouteFitting.of(sized, DutyTable.of(sized.duty()));
        return fits.stream().filter(f -> f.route() == route).findFirst().orElseThrow();
    }

    @Test
    void bigPackPassesForLife() {
        RouteFit fit = fit(400, 0.01, 0);
        assertEquals(RouteFit.Verdict.FOR_LIFE, fit.verdict());
        assertEquals(-1, fit.firstFailingAge());
        assertTrue(fit.agedOvernight().marginKwh() < fit.newOvernight().marginKwh());
    }

    @Test
    void smallPackFails() {
        RouteFit fit = fit(30, 0.01, 1);
        assertEquals(RouteFit.Verdict.FAILS, fit.verdict());
        assertEquals(0, fit.firstFailingAge());
        assertTrue(fit.newOvernight().marginKm() < 0);
    }

    @Test
    void middayChargeCarriesAPackThatIsTooSmallForTheWholeDay() {
        double needKwh = fit(400, 0.01, 1).newOvernight().needKwh();
        RouteFit fit = fit(1.25 * needKwh, 0.01, 1);
        assertFalse(fit.newOvernight().passes());
        assertTrue(fit.agedMidday().passes());
        assertEquals(RouteFit.Verdict.MIDDAY_ALWAYS, fit.verdict());
        assertEquals("PM", fit.newOvernight().worstRun());
    }

    @Test
    void coldestDayIsTheWorstWhereHeatIsElectric() {
        RouteFit fit = fit(150, 0.01, 0);
        DutyTable duty = DutyTable.of(study.duty());
        var use = duty.use(0, TinyDistrict.ELECTRIC).orElseThrow();
        assertTrue(use.coldestDays().get(0).batteryKwh() > use.hottestDays().get(0).batteryKwh());
        assertEquals(use.coldestDays().get(fit.worstMonth()).batteryKwh(), fit.newOvernight().needKwh(), 1e-9);
    }
}
