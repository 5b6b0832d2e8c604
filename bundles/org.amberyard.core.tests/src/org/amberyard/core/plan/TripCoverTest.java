package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;
import org.junit.jupiter.api.Test;

/** Buses 1 and 2 drive from 6:30 to 7:40 and from 14:20 to 15:30; bus 3 is a spare. The electric plan leaves an engine to bus 3. */
class TripCoverTest {
    private static final int ELECTRIC_PLAN = 1;
    private static final int LAST = TinyDistrict.YEARS - 1;

    private static TripCover cover(StudyInput study, int plan) {
        return TinyTrips.evaluated(study).tripCovers().get(plan);
    }

    @Test
    void enginesCoverWhatTheirTimeAllows() {
        TripCover free = cover(TinyTrips.study(150, TinyTrips.trip(ServiceDay.OTHER, 600, 9, 500)), 0);
        assertEquals(List.of(2, 0, 1), TinyTrips.able(free), "the spare first");
        TripCover busy = cover(TinyTrips.study(150, TinyTrips.trip(ServiceDay.SCHOOL, 420, 2, 50)), 0);
        assertEquals(List.of(TripVerdict.ON_OWN_RUN, TripVerdict.ON_OWN_RUN, TripVerdict.CAN), TinyTrips.verdicts(busy));
        TripCover late = cover(TinyTrips.study(150, TinyTrips.trip(ServiceDay.SCHOOL, 600, 5, 50)), 0);
        assertEquals(List.of(TripVerdict.BACK_TOO_LATE, TripVerdict.BACK_TOO_LATE, TripVerdict.CAN), TinyTrips.verdicts(late));
    }

    @Test
    void aPlaceWithoutABusAndAnotherBodyAreSaid() {
        TripInput trip = TinyTrips.trip(ServiceDay.OTHER, 600, 5, 50);
        PlanInput retired = TinyTrips.electricPlanAnd(
                new PlanInput.Replacement(LAST, 2, OptionalInt.empty(), OptionalInt.empty(), List.of()));
        StudyInput study = TinyDistrict.withPlans(TinyTrips.study(150, trip), TinyDistrict.dieselPlan(), retired);
        assertEquals(TripVerdict.NO_BUS, TinyTrips.verdicts(cover(study, ELECTRIC_PLAN)).get(2));
        TripInput small = new TripInput("S", "", LocalDate.of(2026, 1, 17), ServiceDay.OTHER, 600, 5, 50, "A", 12, 1,
                OptionalInt.empty());
        TripCover none = cover(TinyTrips.study(150, small), 0);
        assertEquals(List.of(TripVerdict.BODY, TripVerdict.BODY, TripVerdict.BODY), TinyTrips.verdicts(none));
        assertEquals(1, none.uncovered().size());
    }

    @Test
    void theEarlierYearsOfAPlanHaveTheOldFleet() {
        StudyResult result = TinyTrips.evaluated(TinyTrips.study(150, TinyTrips.trip(ServiceDay.OTHER, 600, 9, 500)));
        assertEquals(List.of(2, 0, 1), TinyTrips.able(TripCover.of(result, ELECTRIC_PLAN, 0)));
        TripCover last = TripCover.of(result, ELECTRIC_PLAN, LAST);
        assertEquals(result.tripCovers().get(ELECTRIC_PLAN), last);
        assertEquals(List.of(TripVerdict.CHARGE, TripVerdict.CHARGE, TripVerdict.CAN), TinyTrips.verdicts(last));
        assertEquals(1, last.engineOnly().size());
        assertEquals(0, last.uncovered().size());
    }

    /** Bus 1 is electric since year 1, bus 2 since year 2: the younger pack has the larger margin. */
    @Test
    void routeBusesFollowWithTheLargestMarginFirst() {
        StudyResult result = TinyTrips.evaluated(TinyTrips.study(300, TinyTrips.trip(ServiceDay.OTHER, 600, 5, 50)));
        assertEquals(List.of(2, 1, 0), TinyTrips.able(result.tripCovers().get(ELECTRIC_PLAN)));
        assertEquals(List.of(2, 1, 0), TinyTrips.able(TripCover.of(result, ELECTRIC_PLAN, 1)), "the engine before the battery");
    }

    /**
     * On a day without routes the pack gives the two ways and keeps the reserve of 15 % and what the cold locks up. Bus 2 is
     * bought in year 2, so at the start of year 3 its pack has lost one per cent.
     */
    @Test
    void marginIsWhatTheTwoWaysLeaveAboveTheReserve() {
        TripInput trip = TinyTrips.trip(ServiceDay.OTHER, 600, 5, 120);
        StudyInput study = TinyTrips.study(200, trip);
        DutyTable duty = DutyTable.of(study.duty());
        DayBlock day = new TripDrives(duty).day(OptionalInt.of(1), TinyDistrict.ELECTRIC, trip);
        assertEquals(List.of("T out", "T back"), day.legs().stream().map(DayBlock.Leg::name).toList());
        assertEquals(900, day.legs().get(1).arrivalMin(), 2);
        double usableKwh = 200 * 0.9 * 0.99;
        double lockedShare = 0.004 * (15 - day.legs().get(1).packC());
        TripCover.Place bus2 = cover(study, ELECTRIC_PLAN).answers().get(0).places().get(1);
        assertEquals(usableKwh * (1 - 0.15 - lockedShare) - day.batteryKwh(), bus2.marginKwh().orElseThrow(), 1e-9);
        assertEquals(OptionalDouble.empty(), cover(study, ELECTRIC_PLAN).answers().get(0).places().get(2).marginKwh());
    }

    @Test
    void onASchoolDayTheOwnRunsCountToo() {
        TripInput trip = TinyTrips.trip(ServiceDay.SCHOOL, 960, 5, 80);
        StudyInput study = TinyTrips.study(200, trip);
        DayBlock day = new TripDrives(DutyTable.of(study.duty())).day(OptionalInt.of(1), TinyDistrict.ELECTRIC, trip);
        assertEquals(List.of("AM", "PM", "T out", "T back"), day.legs().stream().map(DayBlock.Leg::name).toList());
        TripInput between = TinyTrips.trip(ServiceDay.SCHOOL, 500, 4, 80);
        DayBlock inserted = new TripDrives(DutyTable.of(study.duty())).day(OptionalInt.of(1), TinyDistrict.ELECTRIC, between);
        assertEquals(List.of("AM", "T out", "T back", "PM"), inserted.legs().stream().map(DayBlock.Leg::name).toList());
    }

    @Test
    void daysThatAreKeptGiveTheSameAnswersAndAreForgottenWithTheirTrip() {
        TripInput trip = TinyTrips.trip(ServiceDay.SCHOOL, 500, 4, 80);
        StudyInput study = TinyTrips.study(200, trip);
        TripDrives drives = new TripDrives(DutyTable.of(study.duty()));
        DayBlock first = drives.day(OptionalInt.of(1), TinyDistrict.ELECTRIC, trip);
        assertEquals(TinyTrips.evaluated(study).tripCovers(), StudyEvaluation.of(study, drives, new YardMemory(), Progress.NONE).tripCovers());
        assertSame(first, drives.day(OptionalInt.of(1), TinyDistrict.ELECTRIC, trip));
        StudyEvaluation.of(TinyTrips.withTrips(study), drives, new YardMemory(), Progress.NONE);
        assertNotSame(first, drives.day(OptionalInt.of(1), TinyDistrict.ELECTRIC, trip));
        assertEquals(first, drives.day(OptionalInt.of(1), TinyDistrict.ELECTRIC, trip));
    }

    /** The window runs from 22:00 to 5:15: who is back by 20:00 charges for 7.25 hours, who is back at 4:00 for 1.25. */
    @Test
    void aLateReturnLeavesTooLittleNight() {
        TripInput early = TinyTrips.trip(ServiceDay.OTHER, 720, 8, 220);
        TripInput late = TinyTrips.trip(ServiceDay.OTHER, 1200, 8, 220);
        assertEquals(TripVerdict.CAN, TinyTrips.verdicts(cover(TinyTrips.study(300, early), ELECTRIC_PLAN)).get(1));
        assertEquals(TripVerdict.NOT_READY, TinyTrips.verdicts(cover(TinyTrips.study(300, late), ELECTRIC_PLAN)).get(1));
    }

    /** 100 kWh of usable energy, of which the trip takes 60 and 1.25 hours of a 16 kW port bring back 20. */
    @Test
    void theMorningsChargeIsWhatTheTripLeavesAndTheNightBrings() {
        StudyInput study = TinyTrips.study(100 / 0.9);
        TripCharge charge = new TripCharge(study, study.types().get(TinyDistrict.ELECTRIC).electric().orElseThrow().battery(), 1, 16);
        DayBlock block = TinyDays.of(TinyDays.leg("T back", 1440 + 180, 60, 15));
        TripCharge.Day day = charge.day(block, 1440 + 390);
        assertEquals(1 - 0.6 - 0.15, day.lowestShare(), 1e-12);
        assertEquals(0.4 + 0.16 * 1.25, day.morningShare(), 1e-12);
    }

    /** A day that takes 50 of 100 kWh and keeps 15 must start with 65; one that takes more than there is needs no more than full. */
    @Test
    void aDayMustStartWithWhatItTakesAndTheReserve() {
        StudyInput study = TinyTrips.study(100 / 0.9);
        TripCharge charge = new TripCharge(study, study.types().get(TinyDistrict.ELECTRIC).electric().orElseThrow().battery(), 1, 16);
        assertEquals(0.65, charge.startShare(TinyDays.of(TinyDays.leg("AM", 390, 50, 15))), 1e-12);
        assertEquals(1, charge.startShare(TinyDays.of(TinyDays.leg("AM", 390, 120, 15))));
        assertTrue(charge.startShare(TinyDays.of(TinyDays.leg("AM", 390, 50, 5))) > 0.65, "cold locks energy up");
    }
}
