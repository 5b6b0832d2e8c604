package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.DayKind;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class FirstElectricRouteTest {

    @Test
    void thePlansFirstElectricBusOnItsWorstMonth() {
        StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
        FirstElectricRoute first = FirstElectricRoute.of(result).orElseThrow();
        assertEquals(new FirstElectricRoute(1, 0, 1, first.day()), first);
        BusDay.Asked day = first.day().orElseThrow();
        assertEquals(new BusDay.Asked(0, 9, day.month(), false, DayKind.COLDEST), day);
        RouteFit fit = result.plans().get(1).fits().of(0, 1).orElseThrow();
        double worst = fit.months().stream().filter(m -> m.month() == day.month()).findFirst().orElseThrow().whenAged()
                .marginKwh();
        assertTrue(fit.months().stream().allMatch(m -> m.whenAged().marginKwh() >= worst), "no month is worse");
        assertTrue(BusDay.of(result, 1, day).isPresent());
    }

    @Test
    void aPlanOfEnginesHasARouteThatATypeFitsButNoDay() {
        StudyResult result = SampleDistrict.evaluated(SampleDistrict.baselineOnly());
        FirstElectricRoute first = FirstElectricRoute.of(result).orElseThrow();
        assertEquals(0, first.route());
        assertEquals(Optional.empty(), first.day());
    }

    @Test
    void withoutRoutesThereIsNone() {
        assertEquals(Optional.empty(), FirstElectricRoute.of(SampleDistrict.evaluated(SampleDistrict.withoutRoutes())));
    }
}
