package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

class RouteFittingTest {
    private final StudyInput study = TinyDistrict.study();

    private RouteFits fits(double nominalKwh, double calendarFade) {
        StudyInput sized = TinyPacks.withPack(study,
                SampleBus.battery(nominalKwh, 0.004, 2000, 0.7, new LinearFade(calendarFade, 0)));
        return RouteFitting.of(sized, DutyTable.of(sized.duty()));
    }

    private RouteFit fit(double nominalKwh, double calendarFade, int route) {
        return fits(nominalKwh, calendarFade).of(route, TinyDistrict.ELECTRIC).orElseThrow();
    }

    @Test
    void bigPackPassesForLife() {
        RouteFit fit = fit(400, 0.01, 0);
        assertEquals(RouteFit.Verdict.FOR_LIFE, fit.verdict());
        assertEquals(-1, fit.firstFailingAge());
        assertEquals(15, fit.agedYears(), "judged to the retirement of the bus");
        assertEquals(0.85, fit.agedHealth(), 1e-12);
        assertTrue(fit.agedOvernight().marginKwh() < fit.newOvernight().marginKwh());
    }

    @Test
    void packIsJudgedNoLongerThanItServes() {
        assertEquals(9, fit(400, 0.03, 0).agedYears(), "0.7 is reached at the end of the tenth year");
    }

    @Test
    void smallPackFails() {
        RouteFit fit = fit(30, 0.01, 1);
        assertEquals(RouteFit.Verdict.FAILS, fit.verdict());
        assertEquals(0, fit.firstFailingAge());
        assertTrue(fit.newOvernight().marginKm() < 0);
    }

    @Test
    void failsOnceThePackHasAged() {
        double needKwh = fit(400, 0.02, 1).newMidday().needKwh();
        double half = 0.9 * 0.85 * (1 - 0.004 * (15 + 22) / 2.0);
        RouteFit fit = fit(0.58 * needKwh / half, 0.02, 1);
        assertEquals(RouteFit.Verdict.ONLY_WHEN_NEW, fit.verdict());
        assertTrue(fit.firstFailingAge() > 0 && fit.firstFailingAge() <= fit.agedYears());
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
        var use = DutyTable.of(study.duty()).use(0, TinyDistrict.ELECTRIC).orElseThrow();
        double cold = use.days(fit.worstMonth(), true, false).findFirst().orElseThrow().batteryKwh();
        double hot = use.days(fit.worstMonth(), false, false).findFirst().orElseThrow().batteryKwh();
        assertTrue(cold > hot);
        assertEquals(cold, fit.newOvernight().needKwh(), 1e-9);
    }

    @Test
    void planIsJudgedByItsOwnPorts() {
        Port weak = new Port("Weak", false, 3, 0.88, 0, 3000, 3000, 10, 30, 0);
        StudyInput offered = TinyPorts.withPort(study, weak);
        StudyResult result = StudyEvaluation.of(offered, DutyTable.of(offered.duty()));
        double plan = result.plans().get(1).fits().of(1, TinyDistrict.ELECTRIC).orElseThrow().batteryKw();
        assertEquals(3 * 0.88, plan, 1e-12);
        assertEquals(19.2 * 0.88, result.fits().of(1, TinyDistrict.ELECTRIC).orElseThrow().batteryKw(), 1e-12);
        assertFalse(result.plans().get(1).fits().of(1, TinyDistrict.ELECTRIC).orElseThrow().newOvernight().refilled());
    }
}
