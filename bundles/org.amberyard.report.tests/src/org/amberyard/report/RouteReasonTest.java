package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.RouteFits;
import org.amberyard.core.plan.RouteOutlook;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** The sentence of each route and type against the figures that it is made of. */
class RouteReasonTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
    private final boolean midday = result.input().middayCharging();

    private ResultTable table(String name) {
        return ResultTables.of(result, UnitSystem.METRIC).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    private static String figure(double kwh) {
        return String.format(Locale.ROOT, Math.abs(kwh) < 10 ? "%.1f kWh" : "%.0f kWh", kwh);
    }

    @Test
    void theVerdictStandsBesideTheHeadsAndTheReasonBesideIt() {
        for (String name : List.of("route_fit", "route_outlook")) {
            ResultTable table = table(name);
            List<String> after = table.columns().subList(table.heads(), table.heads() + 4).stream().map(ResultColumn::name).toList();
            assertEquals(List.of("verdict", "why", "failing_days_new", "failing_days_aged"), after);
            assertEquals(List.of("route", "type"), table.columns().subList(table.heads() - 2, table.heads()).stream()
                    .map(ResultColumn::name).toList());
        }
    }

    @Test
    void everySentenceSaysWhatTheFitSays() {
        ResultTable table = table("route_fit");
        List<RouteFit> fits = result.fits().list();
        for (int row = 0; row < fits.size(); row++) {
            RouteFit fit = fits.get(row);
            BlockCheck.Outcome aged = fit.whenAged(midday);
            String why = (String) table.cell(row, "why");
            assertEquals(aged.passes(), why.startsWith("holds at "), why);
            assertTrue(why.contains(figure(Math.abs(aged.marginKwh()))), why + " of " + aged);
            assertEquals(aged.passes() ? 0 : result.outlook(fit).failingWhenAged().total(),
                    ((Double) table.cell(row, "failing_days_aged")).intValue());
            assertEquals(!aged.passes() && fit.firstFailingAge() > 0,
                    why.contains("from year " + (fit.firstFailingAge() + 1) + " of the pack"), why);
        }
        assertTrue(IntStream.range(0, fits.size()).anyMatch(r -> !fits.get(r).whenAged(midday).passes()), "one fails");
        assertTrue(IntStream.range(0, fits.size()).anyMatch(r -> fits.get(r).whenAged(midday).passes()), "one holds");
    }

    /** A bus fails so many years after it came; the fit of the first route is made that of the hopeless third one. */
    @Test
    void aPlanSaysTheYear() {
        for (int age : List.of(0, 3, 40)) {
            StudyResult changed = withFirstRoute(age);
            RouteOutlook outlook = changed.outlooks().get(1).get(0);
            assertTrue(outlook.answer().electric());
            int bought = changed.plans().get(1).fleet().fleetAtEnd().get(0).orElseThrow().inServiceYear();
            String why = RouteReason.of(changed, outlook.answer().fit().orElseThrow(), UnitSystem.METRIC)
                    .inPlan(changed.plans().get(1), outlook);
            String from = "from " + (result.input().baseYear() + bought + age);
            assertTrue(why.contains(age == 0 ? " even when new, " + from + ": " : age == 3 ? " °C " + from + ": "
                    : " °C " + from + " (after the study): "), why);
        }
    }

    private StudyResult withFirstRoute(int firstFailingAge) {
        RouteFit bad = result.fits().of(2, 2).orElseThrow();
        List<RouteFit> fits = new ArrayList<>();
        for (int type = 1; type <= 2; type++) {
            fits.add(new RouteFit(0, type, bad.batteryKw(), bad.worstMonth(), bad.newOvernight(), bad.newMidday(), bad.agedOvernight(),
                    bad.agedMidday(), bad.agedYears(), bad.agedHealth(), firstFailingAge, bad.verdict(), bad.months()));
        }
        RouteFits changed = new RouteFits(fits);
        List<PlanResult> plans = result.plans().stream().map(p -> new PlanResult(p.plan(), p.fleet(), p.upkeep(), p.costs(),
                p.air(), p.yards(), p.yardComparison(), p.service(), changed, p.finance(), p.measures())).toList();
        return new StudyResult(result.input(), result.duty(), changed, plans, result.tripCovers(), result.spareCovers());
    }

    @Test
    void degreesAreThoseOfTheUser() {
        RouteFit fit = result.fits().list().get(0);
        double air = result.outlook(fit).worstAirC();
        assertTrue(RouteReason.of(result, fit, UnitSystem.METRIC).ofType().contains(degrees(air) + " °C"));
        assertTrue(RouteReason.of(result, fit, UnitSystem.US).ofType().contains(degrees(air * 1.8 + 32) + " °F"));
    }

    private static String degrees(double degrees) {
        return String.format(Locale.ROOT, "%.0f", degrees).replace('-', '−');
    }
}
