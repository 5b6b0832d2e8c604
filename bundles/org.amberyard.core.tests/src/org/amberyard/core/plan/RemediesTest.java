package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.duty.WeatherDay;
import org.amberyard.core.duty.YardHabit;
import org.junit.jupiter.api.Test;

class RemediesTest {

    /** The tiny district charged overnight only, with a pack of a size. */
    private static StudyResult overnight(double packKwh) {
        StudyInput study = TinyPacks.withPack(TinyDistrict.study(),
                SampleBus.battery(packKwh, 0.004, 2000, 0.7, new LinearFade(0.01, 0)));
        StudyInput habit = TinyPacks.withHabit(study, new YardHabit(false, false, 17));
        return StudyEvaluation.of(habit, DutyTable.of(habit.duty()));
    }

    private static RouteFit fit(StudyResult result, int route) {
        return result.plans().get(1).fits().of(route, TinyDistrict.ELECTRIC).orElseThrow();
    }

    private static FailingDays failing(StudyResult result, RouteFit fit, double health) {
        return FailingDays.of(result.input(), result.duty(), fit, health);
    }

    @Test
    void nothingToRemedyWhereTheDutyIsDone() {
        StudyResult result = overnight(400);
        assertEquals(List.of(), Remedies.of(result, 1, fit(result, 0)));
        assertEquals(0, failing(result, fit(result, 0), 1).total());
    }

    @Test
    void everyOfferIsEvaluatedAloneAndTogetherAndThoseThatCureComeFirst() {
        StudyResult result = overnight(130);
        RouteFit fit = fit(result, 1);
        assertFalse(fit.agedOvernight().passes());
        List<Remedy> remedies = Remedies.of(result, 1, fit);
        Set<List<Remedy.Measure>> measures = remedies.stream().map(Remedy::measures).collect(Collectors.toSet());
        assertTrue(measures.containsAll(Set.of(List.of(Remedy.Measure.PRECONDITION), List.of(Remedy.Measure.MIDDAY_CHARGE),
                List.of(Remedy.Measure.FUEL_FIRED_HEAT), List.of(Remedy.Measure.KEEP_ENGINE))), measures.toString());
        assertTrue(remedies.get(remedies.size() - 1).costPerKm().isEmpty(), "range is not the matter of an engine");
        assertEquals(List.of(Remedy.Measure.KEEP_ENGINE), remedies.get(remedies.size() - 1).measures());
        assertEquals(-fit.agedOvernight().marginKm(), remedies.get(remedies.size() - 1).recoveredKm(), 1e-9);
        for (int place = 1; place < remedies.size() - 1; place++) {
            assertTrue(rank(remedies.get(place - 1)) <= rank(remedies.get(place)), remedies.toString());
        }
    }

    /** Cures before helps, savings before costs, then cost per distance. */
    private static double rank(Remedy remedy) {
        double money = remedy.costPerYear() > 0 ? remedy.costPerKm().orElseThrow() : -1e6 + remedy.costPerYear();
        return (remedy.cures() ? 0 : 1e9) + money;
    }

    @Test
    void whatFewerMeasuresDoIsNotOfferedAgainWithMore() {
        StudyResult result = overnight(130);
        List<Remedy> remedies = Remedies.of(result, 1, fit(result, 1));
        for (Remedy more : remedies) {
            for (Remedy fewer : remedies) {
                if (more != fewer && more.measures().containsAll(fewer.measures())) {
                    assertTrue(!fewer.cures() && (more.cures() || more.recoveredKm() > fewer.recoveredKm() + 0.5),
                            more + " does no more than " + fewer);
                }
            }
        }
    }

    @Test
    void middayChargeRecoversWhatTheMiddayCheckSays() {
        StudyResult result = overnight(130);
        RouteFit fit = fit(result, 1);
        Remedy midday = Remedies.of(result, 1, fit).stream()
                .filter(r -> r.measures().equals(List.of(Remedy.Measure.MIDDAY_CHARGE))).findFirst().orElseThrow();
        assertEquals(fit.agedMidday().marginKwh(), midday.after().marginKwh(), 1e-9);
        assertEquals(fit.agedMidday().marginKm() - fit.agedOvernight().marginKm(), midday.recoveredKm(), 1e-9);
        assertEquals(midday.costPerYear() / midday.recoveredKm(), midday.costPerKm().orElseThrow(), 1e-12);
    }

    @Test
    void failingDaysFallWithABiggerPackAndRiseWithAge() {
        StudyResult small = overnight(110);
        StudyResult large = overnight(130);
        int fewer = failing(large, fit(large, 1), 1).total();
        int more = failing(small, fit(small, 1), 1).total();
        assertTrue(more > fewer, more + " days fail with the small pack, " + fewer + " with the large one");
        assertTrue(failing(large, fit(large, 1), 0.8).total() > fewer);
        assertEquals(180, failing(overnight(30), fit(overnight(30), 1), 1).total(), "no day of the year is done");
    }

    /** The least charge between runs holds all year, a minute less does not, and no other fit asks for one. */
    @Test
    void theLeastMiddayChargeIsJustEnough() {
        StudyResult result = overnight(130);
        RouteFit fit = fit(result, 1);
        assertTrue(!fit.agedOvernight().passes() && fit.agedMidday().passes());
        int least = result.outlook(fit).leastMiddayMin().orElseThrow();
        assertTrue(least > 1 && least < 8 * 60, least + " min");
        assertTrue(holds(result, fit, least));
        assertFalse(holds(result, fit, least - 1));
        assertTrue(result.outlook(fit(overnight(400), 1)).leastMiddayMin().isEmpty(), "holds without");
        assertTrue(overnight(30).outlook(fit(overnight(30), 1)).leastMiddayMin().isEmpty(), "no charge is enough");
    }

    private static boolean holds(StudyResult result, RouteFit fit, int minutes) {
        BlockCheck check = RouteFitting.check(result.input(), fit.batteryKw(), true).withMiddayHours(minutes / 60.0);
        return RouteFitting.days(result.duty().use(fit.route(), fit.type()).orElseThrow(), check,
                result.input().types().get(fit.type()).electric().orElseThrow().battery(), fit.agedHealth()).stream()
                .allMatch(RouteFitting.Day::passes);
    }

    @Test
    void anOutlookTellsTheWorstDayAndHowManyFail() {
        StudyResult result = overnight(110);
        RouteFit fit = fit(result, 1);
        FitOutlook outlook = result.outlook(fit);
        assertEquals(failing(result, fit, 1), outlook.failingWhenNew());
        assertEquals(failing(result, fit, fit.agedHealth()), outlook.failingWhenAged());
        double coldest = result.input().duty().climate().months().stream().mapToDouble(m -> m.coldest().meanAirC()).min().orElseThrow();
        assertEquals(coldest, outlook.worstAirC(), 0);
    }

    @Test
    void theDayOfABusFollowsItsPackAndItsPorts() {
        StudyResult result = overnight(150);
        BusDay.Asked asked = new BusDay.Asked(0, 3, 0, false, DayKind.COLDEST);
        BusDay day = BusDay.of(result, 1, asked).orElseThrow();
        VehicleYear bus = result.plans().get(1).fleet().inYear(3).get(0);
        assertEquals(1 - 0.01 * bus.vehicle().packYears(), day.health(), 1e-12);
        assertEquals(5, day.moments().size());
        assertEquals(1, day.moments().get(0).chargeShare(), 0);
        double am = day.block().legs().get(0).use().batteryKwh() / day.usableKwh();
        assertEquals(1 - am, day.moments().get(1).chargeShare(), 1e-12);
        assertTrue(BusDay.of(result, 0, asked).isEmpty(), "a diesel bus has no charge");
        assertTrue(BusDay.of(result, 1, new BusDay.Asked(0, 3, 0, true, DayKind.COLDEST)).isEmpty(), "no summer runs");
    }

    @Test
    void consumptionIsLeastWhenMild() {
        StudyResult result = overnight(150);
        List<ConsumptionByTemperature.Point> points = ConsumptionByTemperature.of(result, 0, TinyDistrict.ELECTRIC).points();
        ConsumptionByTemperature.Point least = points.stream()
                .min((a, b) -> Double.compare(a.kwhPerKm(), b.kwhPerKm())).orElseThrow();
        assertTrue(least.airC() >= 14 && least.airC() <= 26, "least at " + least.airC() + " °C");
        assertTrue(points.get(0).kwhPerKm() > 1.5 * least.kwhPerKm());
    }

    @Test
    void hotDaysAreCountedPastTheNormalDay() {
        StudyInput study = TinyPacks.withHabit(TinyPacks.withPack(TinyDistrict.study(),
                SampleBus.battery(86, 0.004, 2000, 0.7, new LinearFade(0.01, 0))), new YardHabit(false, false, 17));
        WeatherDay[] days = {WeatherDay.steady(18), WeatherDay.steady(30), WeatherDay.steady(38)};
        StudyInput hot = TinyPacks.withClimate(study, SampleBus.climate(200, days[1]), days[0], days[2]);
        StudyResult result = StudyEvaluation.of(hot, DutyTable.of(hot.duty()));
        RouteFit fit = fit(result, 1);
        int counted = failing(result, fit, 1).byMonth().get(0);
        BlockCheck check = RouteFitting.check(hot, fit.batteryKw(), false);
        int driven = 0;
        for (int day = 0; day < 15; day++) {
            WeatherDay weather = hot.duty().climate().months().get(0).inOrder(day / 14.0);
            driven += check.of(result.duty().duty(1, TinyDistrict.ELECTRIC).block(0, false, weather, hot.duty().habit()),
                    hot.types().get(TinyDistrict.ELECTRIC).electric().orElseThrow().battery(), 1).passes() ? 0 : 1;
        }
        assertEquals(driven, counted);
        assertTrue(counted > 0 && counted < 15, "some days fail: " + counted);
    }
}
