package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Route North (0) takes 48 km a day, route South (1) 80; bus 3 is the spare. */
class SpareCoverTest {
    private static final PlanInput.Replacement ELECTRIC_SPARE =
            new PlanInput.Replacement(3, 2, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(), List.of());
    private static final PlanInput.Replacement NO_SPARE =
            new PlanInput.Replacement(3, 2, OptionalInt.empty(), OptionalInt.empty(), List.of());

    private static StudyResult result(double packKwh, PlanInput.Replacement step) {
        return TinyTrips.evaluated(TinyDistrict.withPlans(TinyTrips.study(packKwh), TinyDistrict.dieselPlan(),
                TinyTrips.electricPlanAnd(step)));
    }

    private static SpareCover electric(double packKwh) {
        return result(packKwh, ELECTRIC_SPARE).spareCovers().get(1);
    }

    @Test
    void anEngineStandsInOnEveryRouteOfItsBodyLongestFirst() {
        SpareCover cover = result(150, ELECTRIC_SPARE).spareCovers().get(0);
        assertEquals(List.of(1, 0), cover.spares().get(0).covered());
        assertEquals(List.of(), cover.spares().get(0).notCovered());
        assertEquals(List.of(), cover.uncovered());
    }

    @Test
    void anElectricSpareStandsInWhereItHoldsThroughTheWorstWeek() {
        assertEquals(List.of(1, 0), electric(400).spares().get(0).covered());
        assertEquals(List.of(1, 0), electric(30).uncovered());
        SpareCover between = electric(66);
        assertEquals(List.of(0), between.spares().get(0).covered());
        assertEquals(List.of(1), between.spares().get(0).notCovered());
        assertEquals(List.of(1), between.uncovered());
    }

    /** A spare bought this year has a new pack, so it can do what the route's fit says of a new one. */
    @Test
    void aNewSpareAgreesWithTheFitOfTheRoutes() {
        for (double packKwh : new double[] {30, 66, 130, 400}) {
            StudyResult result = result(packKwh, ELECTRIC_SPARE);
            for (int route = 0; route < 2; route++) {
                assertEquals(result.plans().get(1).fits().of(route, TinyDistrict.ELECTRIC).orElseThrow().newMidday().passes(),
                        result.spareCovers().get(1).spares().get(0).covered().contains(route), packKwh + " kWh");
            }
        }
    }

    @Test
    void withoutASpareNoRouteIsCovered() {
        SpareCover cover = result(150, NO_SPARE).spareCovers().get(1);
        assertEquals(List.of(), cover.spares());
        assertEquals(List.of(1, 0), cover.uncovered());
    }

    @Test
    void aRoutesDayIsItsLongest() {
        assertEquals(80, SpareCover.blockKm(TinyDistrict.route("South", 40)), 1e-12);
    }
}
