package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.Month;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.site.SiteFactory;
import org.junit.jupiter.api.Test;

class SiteAndRouteRulesTest {
    private final SmallStudy small = new SmallStudy();
    private final MonthClimate january = small.study.getSite().getClimate().get(0);

    @Test
    void eachMonthAppearsOnce() {
        january.setMonth(Month.MAY);
        Said.of(small, "ERROR: Site Site: the climate lacks January; add a row for each.",
                "ERROR: Month climate May: the month appears more than once; keep one.");
    }

    @Test
    void missingMonthsAreNamed() {
        small.study.getSite().getClimate().subList(0, 2).clear();
        Said.of(small, "ERROR: Site Site: the climate lacks January, February; add a row for each.");
    }

    @Test
    void lowsStayBelowHighs() {
        january.setMeanLowC(12);
        january.setColdestHighC(-11);
        Said.of(small, "ERROR: Month climate January: mean daily low is 12 degC, above the mean daily high of 10 degC; "
                + "were they swapped?",
                "ERROR: Month climate January: coldest day low is -10 degC, above the coldest day high of -11 degC; "
                        + "were they swapped?");
    }

    @Test
    void extremesLieBeyondMeans() {
        january.setMeanLowC(-12);
        january.setHottestHighC(9);
        Said.of(small, "WARNING: Month climate January: coldest day low is -10 degC, above the mean daily low of -12 degC; "
                + "check both.",
                "WARNING: Month climate January: hottest day high is 9 degC, below the mean daily high of 10 degC; "
                        + "check both.");
    }

    @Test
    void serviceDaysFitTheMonth() {
        small.school.setFebruaryDays(29);
        small.school.setJuneDays(31);
        Said.of(small, "ERROR: Service calendar School year: June has 31 days of service; the month has only 30.");
    }

    @Test
    void aRouteHasRuns() {
        small.route.getRuns().clear();
        Said.of(small, "ERROR: Route R01: it has no run; add one or delete the route.");
    }

    @Test
    void aRunWaitsForTheOneBefore() {
        small.addRun("Late", RunKind.LATE, 900);
        Said.of(small, "ERROR: Run Late of route R01: departs 15:00 before run PM has ended at 15:30; "
                + "let it depart later or give it to another route.");
    }

    @Test
    void aRunMayDepartAsTheOneBeforeEnds() {
        small.addRun("Late", RunKind.LATE, 930);
        Said.of(small);
    }

    @Test
    void runsStandInTheOrderOfTheDay() {
        small.route.getRuns().move(1, 0);
        Said.of(small, "ERROR: Run AM of route R01: departs 6:30 but stands after run PM, which departs 14:30; "
                + "put the runs in the order of the day.");
    }

    @Test
    void runsOfDifferentMonthsMayOverlap() {
        summerRun(0, 20);
        Said.of(small);
    }

    @Test
    void runsThatMayFallOnTheSameDayAreDoubtful() {
        summerRun(10, 20);
        Said.of(small, "WARNING: Run Summer of route R01: departs 8:20 but stands after run PM, which departs 14:30; "
                + "put the runs in the order of the day. Their calendars share a month, so they may be driven on the same "
                + "day.");
    }

    @Test
    void runsThatMustShareADayAreWrong() {
        summerRun(21, 20);
        Said.of(small, "ERROR: Run Summer of route R01: departs 8:20 but stands after run PM, which departs 14:30; "
                + "put the runs in the order of the day.");
    }

    private void summerRun(int juneDays, int julyDays) {
        ServiceCalendar summer = SiteFactory.eINSTANCE.createServiceCalendar();
        summer.setName("Summer");
        summer.setJuneDays(juneDays);
        summer.setJulyDays(julyDays);
        small.study.getCalendars().add(summer);
        Run run = small.addRun("Summer", RunKind.SUMMER, 500);
        run.setCalendar(summer);
    }

    @Test
    void anAfternoonTimeInTheMorningIsPointedOut() {
        small.route.getRuns().remove(small.pm);
        small.am.setDepartureMin(18 * 60 + 35);
        Said.of(small, "WARNING: Run AM of route R01: departs 18:35 but its kind is morning; was 6:35 meant?");
    }

    @Test
    void aMorningTimeInTheAfternoonIsPointedOut() {
        small.route.getRuns().remove(small.am);
        small.pm.setDepartureMin(2 * 60 + 35);
        Said.of(small, "WARNING: Run PM of route R01: departs 2:35 but its kind is afternoon; was 14:35 meant?");
    }

    @Test
    void middayIsNeitherEarlyNorLate() {
        small.pm.setKind(RunKind.MIDDAY);
        small.pm.setDepartureMin(17 * 60);
        Said.of(small, "WARNING: Run PM of route R01: departs 17:00 but its kind is midday; correct the time or the kind.");
    }

    @Test
    void aRunIsNoFasterThanItsTopSpeed() {
        small.am.setDistanceKm(90);
        Said.of(small, "WARNING: Run AM of route R01: 90 km in 60 min takes a mean speed of 1.25 times the top speed of "
                + "72 km/h; correct distance, duration or top speed.");
    }

    @Test
    void aClimbNeedsRoadToClimbOn() {
        small.am.setClimbM(1501);
        Said.of(small, "WARNING: Run AM of route R01: climb is 1501 m on 30 km, steeper than 10 % over the uphill half; "
                + "was it entered in another unit?");
    }
}
