package org.amberyard.exchange.gtfs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.model.common.Quality;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.routes.Layover;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.StudyFindings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GtfsTest {
    @TempDir
    Path folder;

    private final Study study = StudyDefaults.create();

    private GtfsImport read(GtfsText text, int kind, String... blocks) throws IOException, ImportException {
        GtfsFeed feed = GtfsFeed.open(text.folder(folder), ReadingProgress.NONE);
        return GtfsImport.read(feed, new GtfsChoice(feed.kinds().get(kind), Set.of(blocks)), ReadingProgress.NONE);
    }

    private StudyUpdate apply(GtfsText text, String... blocks) throws IOException, ImportException {
        StudyUpdate update = read(text, 0, blocks).update(study);
        update.apply();
        return update;
    }

    private List<String> problems(GtfsText text, String... blocks) {
        return assertThrows(ImportException.class, () -> read(text, 0, blocks)).problems().stream().map(ImportProblem::toString).toList();
    }

    /** Labor Day has no service, and 12 October no school. */
    @Test
    void daysAreOfAKindWhenTheSameServicesRun() throws Exception {
        GtfsFeed feed = GtfsFeed.open(new GtfsText().folder(folder), ReadingProgress.NONE);
        assertEquals(List.of("Vale Transit"), feed.agencies());
        assertEquals(List.of("Mon-Fri, 42 days from 1 Sep 2026 to 30 Oct 2026", "Sat, 8 days from 5 Sep 2026 to 24 Oct 2026",
                "Mon, 1 day from 12 Oct 2026 to 12 Oct 2026"), feed.kinds().stream().map(GtfsDays::words).toList());
        assertEquals(List.of("B1: routes 12, Hill, 3 trips", "B2: route 12, 2 trips", "route Hill: route Hill, 1 trip"),
                feed.blocks(feed.kinds().get(0)).stream().map(GtfsBlock::words).toList());
        assertEquals(List.of("B1: route 12, 1 trip"), feed.blocks(feed.kinds().get(1)).stream().map(GtfsBlock::words).toList());
        assertEquals(List.of("B1: route 12, 2 trips", "B2: route 12, 2 trips", "route Hill: route Hill, 1 trip"),
                feed.blocks(feed.kinds().get(2)).stream().map(GtfsBlock::words).toList());
    }

    @Test
    void aBlockBecomesARouteAndItsTripsRuns() throws Exception {
        apply(new GtfsText(), "B1");
        Route route = study.getRoutes().get(0);
        assertEquals("B1", route.getName());
        assertEquals(List.of("06:30 12", "06:45 way to Hill", "07:00 Hill", "07:11 way to 12", "17:00 12"),
                route.getRuns().stream().map(Run::getName).toList());
        Run first = route.getRuns().get(0);
        assertEquals(390, first.getDepartureMin());
        assertEquals(15, first.getDurationMin(), 1e-9);
        assertEquals(3, first.getStops(), "no rider gets on or off at the third");
        assertEquals(20, first.getDwellS(), 1e-9);
        assertEquals(5 * GtfsText.STEP_KM, first.getDistanceKm(), 0.001);
        assertEquals(0, first.getClimbM());
        assertEquals(RunKind.MORNING, first.getKind());
        assertEquals(Layover.SCHOOL, first.getLayover());
        assertEquals(Layover.YARD, route.getRuns().get(4).getLayover());
        assertEquals(RunKind.AFTERNOON, route.getRuns().get(4).getKind());
        Run straight = route.getRuns().get(2);
        assertEquals(3 * GtfsText.STEP_KM, straight.getDistanceKm(), 0.001);
        assertEquals(10, straight.getDurationMin(), 1e-9);
        assertEquals(Quality.PUBLISHED, first.getSources().get(0).getQuality());
        assertTrue(first.getSources().get(0).getCitation().endsWith(", trip t1"));
        assertEquals("2026-09-01", first.getSources().get(0).getDate());
        ServiceCalendar calendar = first.getCalendar();
        assertEquals("GTFS Mon-Fri", calendar.getName());
        assertEquals(List.of(0, 21, 21), List.of(calendar.getAugustDays(), calendar.getSeptemberDays(), calendar.getOctoberDays()));
        List<Finding> errors = StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR)
                .filter(f -> f.element() instanceof Run || f.element() instanceof Route || f.element() instanceof ServiceCalendar).toList();
        assertEquals(List.of(), errors);
    }

    /** A service that runs for ever has begun long before the others. */
    @Test
    void theYearIsThatOfMostTrips() throws Exception {
        GtfsFeed feed = GtfsFeed.open(new GtfsText().replace("calendar.txt", "SA,0,0,0,0,0,1,0,20260901,20261030",
                "SA,0,0,0,0,0,1,0,20190101,20991231\nOLD,1,1,1,1,1,1,1,20240101,20241231").replace("trips.txt", "r14,WK,u1", "r14,OLD,u1")
                .folder(folder), ReadingProgress.NONE);
        assertEquals(List.of("Sat, 52 days from 5 Sep 2026 to 28 Aug 2027", "Mon-Fri, 42 days from 1 Sep 2026 to 30 Oct 2026",
                "Mon, 1 day from 12 Oct 2026 to 12 Oct 2026"), feed.kinds().stream().map(GtfsDays::words).toList());
    }

    /** The example “Blocks and service day” of the GTFS Reference, revised Nov 16, 2023, under trips.txt. */
    @Test
    void blocksOfTheReferenceAreToldApartByTheirDays() throws Exception {
        StringBuilder calendar = new StringBuilder("service_id,monday,tuesday,wednesday,thursday,friday,saturday,sunday,start_date,end_date\n");
        for (String week : List.of("mon-tues-wed-thurs-fri-sat-sun,1,1,1,1,1,1,1", "fri-sat-sun,0,0,0,0,1,1,1", "fri-sat,0,0,0,0,1,1,0",
                "mon-tues-wed-thurs,1,1,1,1,0,0,0")) {
            calendar.append(week).append(",20260907,20261004\n");
        }
        StringBuilder times = new StringBuilder("trip_id,arrival_time,departure_time,stop_id,stop_sequence\n");
        for (String trip : List.of("trip_1,22:00:00,22:55:00", "trip_2,23:00:00,23:55:00", "trip_3,24:00:00,24:55:00",
                "trip_4,20:00:00,20:50:00", "trip_5,21:00:00,21:50:00")) {
            String[] cells = trip.split(",");
            times.append(String.join(",", cells[0], cells[1], cells[1], "a", "1")).append('\n')
                    .append(String.join(",", cells[0], cells[2], cells[2], "d", "2")).append('\n');
        }
        GtfsFeed feed = GtfsFeed.open(new GtfsText().without("calendar_dates.txt").table("calendar.txt", calendar.toString())
                .table("stop_times.txt", times.toString()).table("trips.txt", "route_id,trip_id,service_id,block_id\n"
                        + "r12,trip_1,mon-tues-wed-thurs-fri-sat-sun,red_loop\nr12,trip_2,fri-sat-sun,red_loop\n"
                        + "r12,trip_3,fri-sat,red_loop\nr12,trip_4,mon-tues-wed-thurs,red_loop\n"
                        + "r12,trip_5,mon-tues-wed-thurs,red_loop\n")
                .folder(folder), ReadingProgress.NONE);
        assertEquals(List.of("Mon+Tue+Wed+Thu", "Fri+Sat", "Sun"), feed.kinds().stream().map(GtfsDays::name).toList());
        assertEquals(List.of("20:00 12", "21:00 12", "22:00 12"), runs(feed, 0));
        assertEquals(List.of("22:00 12", "23:00 12"), runs(feed, 1), "the trip from 24:00 on is joined");
        assertEquals(List.of("22:00 12", "23:00 12"), runs(feed, 2));
    }

    private static List<String> runs(GtfsFeed feed, int kind) throws ImportException {
        Study night = StudyDefaults.create();
        GtfsImport.read(feed, new GtfsChoice(feed.kinds().get(kind), Set.of("red_loop")), ReadingProgress.NONE).update(night).apply();
        return night.getRoutes().get(0).getRuns().stream().map(Run::getName).filter(n -> !n.contains(" way to ")).toList();
    }

    /** To and fro on one route: two buses, for the second leaves while the first is on its way and ends elsewhere. */
    @Test
    void tripsWithoutBlocksAreJoinedWhereABusCanGoOn() throws Exception {
        GtfsImport read = read(new GtfsText().table("trips.txt", "route_id,service_id,trip_id\nr12,WK,o1\nr12,WK,b1\nr12,WK,o2\nr12,WK,b2\n"
                + "r12,WK,o3\nr12,WK,late\n").table("stop_times.txt", "trip_id,arrival_time,departure_time,stop_id,stop_sequence\n"
                        + times("o1", "06:00", "a", "06:20", "d") + times("b1", "06:25", "d", "06:45", "a")
                        + times("o2", "06:10", "a", "06:30", "d") + times("b2", "06:40", "d", "07:00", "a")
                        + times("o3", "07:10", "a", "07:30", "d") + times("late", "12:00", "d", "12:20", "a")),
                0, "route 12");
        read.update(study).apply();
        assertEquals(List.of("12-1", "12-2", "12-3"), study.getRoutes().stream().map(Route::getName).toList());
        assertEquals(List.of("06:00 12", "06:25 12"), study.getRoutes().get(0).getRuns().stream().map(Run::getName).toList());
        assertEquals(List.of("06:10 12", "06:40 12", "07:10 12"), study.getRoutes().get(1).getRuns().stream().map(Run::getName).toList());
        assertEquals(Set.of("12-1", "12-2", "12-3"), read.blocks());
        assertTrue(read.sentences(study).contains("Trips without a block_id make 3 blocks: a bus goes on with the next trip of its "
                + "route that starts within 300 m of where it ended, after 2 h at most. Hold that against the agency's own blocks."));
    }

    private static String times(String trip, String start, String from, String end, String to) {
        return String.format("%s,%s:00,%2$s:00,%s,1%n%1$s,%s:00,%4$s:00,%s,2%n", trip, start, from, end, to).replace("\r", "");
    }

    @Test
    void trainsAreLeftOut() throws Exception {
        GtfsText trains = new GtfsText().replace("routes.txt", ",Hill,3", ",Hill,2");
        GtfsFeed feed = GtfsFeed.open(trains.folder(folder), ReadingProgress.NONE);
        assertEquals("B1: route 12, 2 trips", feed.blocks(feed.kinds().get(0)).get(0).words());
        GtfsImport read = read(trains, 0, "B1");
        read.update(study).apply();
        assertEquals(List.of("06:30 12", "06:45 way to 12", "17:00 12"), study.getRoutes().get(0).getRuns().stream().map(Run::getName).toList());
        assertTrue(read.sentences(study).contains("Routes of trains, trams, ferries and the like, which are left out: 1."));
    }

    /** From the end of the first trip to the start of the second: three hundredths of a degree back, times 1.3, at 40 km/h. */
    @Test
    void waysBetweenTripsAreRunsAndMarkedAsAssumed() throws Exception {
        GtfsImport read = read(new GtfsText(), 0, "B1");
        read.update(study).apply();
        Run way = study.getRoutes().get(0).getRuns().get(1);
        assertEquals(3 * GtfsText.STEP_KM * 1.3, way.getDistanceKm(), 0.001);
        assertEquals(way.getDistanceKm() / 40 * 60, way.getDurationMin(), 0.01);
        assertEquals(405, way.getDepartureMin());
        assertEquals(Quality.ASSUMED, way.getSources().get(0).getQuality());
        assertTrue(way.getSources().get(0).getCitation().endsWith(", after trip t1: straight line times 1.3 at 40.0 km/h"));
        assertTrue(read.sentences(study).contains("Ways without riders between trips are runs of their own, marked as assumed: 2 of 5.39 mi in all, straight "
                + "lines times 1.3 at 24.9 mph."), read.sentences(study).toString());
        assertEquals(List.of(), read.update(study).changes(), "a second import changes nothing");
    }

    /** A minute for three kilometres. */
    @Test
    void waysThatTheTimeIsTooShortForAreTold() throws Exception {
        GtfsImport read = read(new GtfsText().replace("stop_times.txt", "t2,07:00:00,07:00:30", "t2,06:46:00,06:46:00"), 0, "B1");
        read.update(study).apply();
        assertEquals(List.of("06:30 12", "06:46 Hill", "07:11 way to 12", "17:00 12"), study.getRoutes().get(0).getRuns().stream().map(Run::getName).toList());
        assertTrue(read.sentences(study).stream().anyMatch(s -> s.endsWith("Left out, because the time between the trips is too short for them: 1; hold their "
                + "ends against the schedule.")), read.sentences(study).toString());
    }

    /** From 6:00 up to, but not at, 7:00 every 20 minutes; the trip takes a quarter of an hour and ends elsewhere, so each needs a bus. */
    @Test
    void tripsRepeatedByHeadwayDepartAsOftenAsTheyDo() throws Exception {
        GtfsImport read = read(new GtfsText().table("frequencies.txt",
                "trip_id,start_time,end_time,headway_secs,exact_times\nt1,06:00:00,07:00:00,1200,0\nt1,17:00:00,17:30:00,1800,1\n"), 0, "B1");
        read.update(study).apply();
        assertEquals(List.of("B1", "12-1", "12-2", "12-3", "12-4"), study.getRoutes().stream().map(Route::getName).toList());
        assertEquals(List.of(360, 380, 400, 1020), study.getRoutes().stream().skip(1).map(r -> r.getRuns().get(0).getDepartureMin()).toList());
        assertEquals(15, study.getRoutes().get(2).getRuns().get(0).getDurationMin(), 1e-9);
        assertEquals(5 * GtfsText.STEP_KM, study.getRoutes().get(2).getRuns().get(0).getDistanceKm(), 0.001);
        assertTrue(read.sentences(study).contains("1 trip repeated by headway (frequencies.txt) makes 4 departures; which bus drives which is a guess, as for "
                + "trips without a block_id, and 3 of them are not promised to the minute."), read.sentences(study).toString());
        assertEquals(List.of(), read.update(study).changes(), "a second import changes nothing");
    }

    /** The Saturday's block has the name of that of school days, and must not take its place. */
    @Test
    void blocksOfOtherDaysAreRoutesOfTheirOwn() throws Exception {
        apply(new GtfsText(), "B1");
        List<String> weekdays = study.getRoutes().get(0).getRuns().stream().map(Run::getName).toList();
        read(new GtfsText(), 1, "B1").update(study).apply();
        assertEquals(List.of("B1", "B1 (Sat)"), study.getRoutes().stream().map(Route::getName).toList());
        assertEquals(weekdays, study.getRoutes().get(0).getRuns().stream().map(Run::getName).toList());
        assertEquals("GTFS Sat", study.getRoutes().get(1).getRuns().get(0).getCalendar().getName());
        assertEquals(List.of(), read(new GtfsText(), 1, "B1").update(study).changes(), "a second import changes nothing");
        assertEquals(List.of(), read(new GtfsText(), 0, "B1").update(study).changes(), "nor does that of the other days");
    }

    /** 23:30 to 23:50 and 24:10 to 24:30 make one run of an hour. */
    @Test
    void whatBeginsAfterMidnightIsJoinedToTheRunBefore() throws Exception {
        GtfsImport read = read(new GtfsText(), 0, "B2");
        read.update(study).apply();
        Run night = study.getRoutes().get(0).getRuns().get(0);
        assertEquals(1, study.getRoutes().get(0).getRuns().size());
        assertEquals(60, night.getDurationMin(), 1e-9);
        assertEquals(6 * GtfsText.STEP_KM, night.getDistanceKm(), 0.001);
        assertEquals(4, night.getStops());
        assertTrue(read.sentences(study).contains("Trips that begin after midnight are joined to the run before them: 1."));
    }

    @Test
    void aBlockThatBeginsAfterMidnightIsPutOnTheNextMorning() throws Exception {
        GtfsText late = new GtfsText().replace("stop_times.txt", "n1,23:30:00,23:30:00,a,1,,\nn1,23:50:00,23:50:00,d,2",
                "n1,24:30:00,24:30:00,a,1,,\nn1,24:50:00,24:50:00,d,2").replace("stop_times.txt",
                        "n2,24:10:00,24:10:00,d,1,,\nn2,24:30:00,24:30:00,a,2", "n2,25:10:00,25:10:00,d,1,,\nn2,25:30:00,25:30:00,a,2");
        GtfsImport read = read(late, 0, "B2");
        read.update(study).apply();
        assertEquals(List.of(30, 70), study.getRoutes().get(0).getRuns().stream().map(Run::getDepartureMin).toList());
        assertTrue(read.sentences(study).contains("Blocks that begin after midnight are put on the morning of the next day: B2."));
    }

    /** 1.7 km per straight kilometre can be no miles, 0.75 miles no kilometres; 1.1 may be either and is not taken. */
    @ParameterizedTest
    @CsvSource({"1250, 1.25", "4101, 1.25", "1.7, 1.7", "0.75, 1.207008", "1.1, 1", "0.2, 1"})
    void distancesOfStopTimesAreTakenInTheUnitThatFits(double perStraightKm, double roadKm) throws Exception {
        apply(new GtfsText().without("shapes.txt").table("trips.txt", "route_id,service_id,trip_id,block_id\nr12,WK,t1,B1\n")
                .table("stop_times.txt", "trip_id,arrival_time,departure_time,stop_id,stop_sequence,shape_dist_traveled\n"
                        + "t1,06:30:00,06:30:00,a,1,0\nt1,06:45:00,06:45:00,d,2," + 3 * GtfsText.STEP_KM * perStraightKm + "\n"),
                "B1");
        assertEquals(roadKm * 3 * GtfsText.STEP_KM, study.getRoutes().get(0).getRuns().get(0).getDistanceKm(), 0.001);
    }

    /** The shape goes on to the third stop, the trip ends at the second; with and without distances along both. */
    @Test
    void aTripMayFollowAPartOfAShape() throws Exception {
        GtfsText part = new GtfsText().table("trips.txt", "route_id,service_id,trip_id,block_id,shape_id\nr12,WK,t1,B1,s1\n")
                .table("shapes.txt", "shape_id,shape_pt_lat,shape_pt_lon,shape_pt_sequence\ns1,0,0,1\ns1,0,0.01,2\ns1,0,0.02,3\n")
                .table("stop_times.txt", "trip_id,arrival_time,departure_time,stop_id,stop_sequence\nt1,06:30:00,06:30:00,a,1\n"
                        + "t1,06:45:00,06:45:00,b,2\n");
        apply(part, "B1");
        assertEquals(GtfsText.STEP_KM, study.getRoutes().get(0).getRuns().get(0).getDistanceKm(), 0.001);
        apply(part.table("shapes.txt", "shape_id,shape_pt_lat,shape_pt_lon,shape_pt_sequence,shape_dist_traveled\ns1,0,0,1,0\n"
                + "s1,0,0.02,3,10\n").table("stop_times.txt", "trip_id,arrival_time,departure_time,stop_id,stop_sequence,"
                        + "shape_dist_traveled\nt1,06:30:00,06:30:00,a,1,0\nt1,06:45:00,06:45:00,b,2,7\n"),
                "B1");
        assertEquals(1.4 * GtfsText.STEP_KM, study.getRoutes().get(0).getRuns().get(0).getDistanceKm(), 0.001);
    }

    @Test
    void aSecondImportUpdatesByNameAndKeepsWhatTheScheduleDoesNotTell() throws Exception {
        apply(new GtfsText(), "B1");
        Run first = study.getRoutes().get(0).getRuns().get(0);
        first.setMeanRiders(7);
        Path same = new GtfsText().folder(folder);
        GtfsFeed feed = GtfsFeed.open(same, ReadingProgress.NONE);
        assertEquals(List.of(), GtfsImport.read(feed, new GtfsChoice(feed.kinds().get(0), Set.of("B1")), ReadingProgress.NONE)
                .update(study).changes());
        StudyUpdate update = apply(new GtfsText().replace("stop_times.txt", "t1,06:45:00,06:45:00", "t1,06:50:00,06:50:00")
                .replace("stop_times.txt", "t3,17:00:00,17:00:00", "t3,16:55:00,16:55:00"), "B1");
        assertEquals(List.of("run 06:30 12 of route B1, duration: 15 min → 20 min", "run 06:50 way to Hill of route B1 is added", "run 16:55 12 of "
                + "route B1 is added", "run 06:45 way to Hill of route B1 is removed", "run 17:00 12 of route B1 is removed"), update.changes());
        assertEquals(first, study.getRoutes().get(0).getRuns().get(0));
        assertEquals(7, first.getMeanRiders());
        assertEquals(List.of("06:30 12", "06:50 way to Hill", "07:00 Hill", "07:11 way to 12", "16:55 12"),
                study.getRoutes().get(0).getRuns().stream().map(Run::getName).toList());
        assertEquals(1, study.getCalendars().size());
    }

    @Test
    void whatWasReadAndAssumedIsSaid() throws Exception {
        List<String> sentences = read(new GtfsText(), 0, "B1", "B2").sentences(study);
        assertEquals("2 blocks of Vale Transit with 6 runs and 18.5 mi a day, on Mon-Fri, 42 days from 1 Sep 2026 to 30 Oct 2026.",
                sentences.get(0));
        assertEquals("Other days of the schedule are left out: Sat, 8 days from 5 Sep 2026 to 24 Oct 2026; Mon, 1 day from 12 Oct 2026 to "
                + "12 Oct 2026.", sentences.get(1));
        assertTrue(sentences.get(2).startsWith("Lengths are along the shapes of the trips, and in straight lines from stop to stop, which "
                + "roads exceed; correct them. Not in them: the way from the yard and back; add it to the first and the last run."), sentences.get(2));
    }

    @Test
    void tripsThatOneBusCannotDriveAreRefused() {
        String name = problems(new GtfsText().replace("stop_times.txt", "t2,07:00:00,07:00:30", "t2,06:40:00,06:40:00"), "B1").get(0);
        assertTrue(name.endsWith(", row 3, column “block_id”: The trip “t2” of block B1 starts at 06:40, before the trip “t1” of the same "
                + "block has ended at 06:45; one bus cannot drive both."), name);
    }

    @Test
    void whatIsNotUnderstoodIsNamed() {
        assertEquals(List.of("trips.txt, row 1: The column service_id is missing."),
                problems(new GtfsText().table("trips.txt", "route_id,trip_id,block_id\n"), "B1").stream().limit(1).toList());
        assertEquals(List.of("agency.txt: The file is missing; every GTFS schedule has it.",
                "routes.txt, row 3, column “route_id”: The route “r12” stands there twice; keep one row.",
                "calendar.txt, row 2, column “monday”: “2” must be a whole number from 0 to 1.",
                "calendar.txt, row 3, column “start_date”: “2026-09-01” must be a date of the years 2000 to 2099 such as 20260901."),
                problems(new GtfsText().without("agency.txt").replace("routes.txt", "r14,A,,", "r12,A,,")
                        .replace("calendar.txt", "WK,1", "WK,2").replace("calendar.txt", "SCH,1,1,1,1,1,0,0,20260901", "SCH,1,1,1,1,1,0,0,2026-09-01")
                        .replace("trips.txt", "r14,", "r12,"), "B1"));
        assertEquals(List.of("stop_times.txt, row 3, column “arrival_time”: “6:94:00” must be a time such as 6:35:00, or 25:10:00 for 1:10 "
                + "of the next day, below 72 h.",
                "stop_times.txt, row 4, column “stop_sequence”: “x” must be a whole number from 0 to "
                        + "999,999,999."),
                problems(new GtfsText().replace("stop_times.txt", "t1,6:34:00", "t1,6:94:00")
                        .replace("stop_times.txt", "t1,,,c,7", "t1,,,c,x"), "B1").subList(0, 2));
        assertEquals(List.of("stop_times.txt, row 3, column “stop_id”: “q” is no stop of stops.txt."),
                problems(new GtfsText().replace("stop_times.txt", "06:35:00,b".substring(1), "6:35:00,q"), "B1"));
        assertEquals(List.of("trips.txt, row 4, column “trip_id”: The trip “t9” has 0 stops in stop_times.txt; it needs two or more."),
                problems(new GtfsText().replace("trips.txt", "t3,", "t9,"), "B1"));
        assertEquals(List.of("frequencies.txt, row 2, column “headway_secs”: “0” must be a whole number from 1 to 21,600.",
                "frequencies.txt, row 3, column “end_time”: The headway ends before it starts."),
                problems(new GtfsText().table("frequencies.txt",
                        "trip_id,start_time,end_time,headway_secs\nt1,06:00:00,07:00:00,0\nt1,08:00:00,07:00:00,600\n"), "B1"));
        assertTrue(problems(new GtfsText().table("frequencies.txt", "trip_id,start_time,end_time,headway_secs\nt1,00:00:00,23:00:00,1\n"), "B1").get(0)
                .contains("depart more than 20,000 times a day"));
        assertEquals(List.of("trips.txt: The file has no trips of buses."), problems(new GtfsText().table("trips.txt",
                "route_id,service_id,trip_id\n"), "B1"));
        assertEquals(List.of("trips.txt, row 2: A quote is not closed in the row."),
                problems(new GtfsText().table("trips.txt", "route_id,service_id,trip_id,block_id\nr12,\"WK,t1,B1\n"), "B1").subList(0, 1));
        assertTrue(problems(new GtfsText(), "B9").get(0).endsWith("On Mon-Fri there is no block B9."));
        assertTrue(problems(new GtfsText()).get(0).endsWith("0 blocks were chosen of 3; choose at least one and at most 1,000."));
    }
}
