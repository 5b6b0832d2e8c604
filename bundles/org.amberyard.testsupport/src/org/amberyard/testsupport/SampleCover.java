package org.amberyard.testsupport;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.Role;
import org.amberyard.core.plan.ServiceDay;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.TripInput;

/** The small invented district with trips, its third bus a spare. */
public final class SampleCover {
    private SampleCover() {
    }

    /** The district. */
    public static StudyInput study() {
        return withTrips(trips());
    }

    /** The district with other trips. */
    public static StudyInput withTrips(List<TripInput> trips) {
        StudyInput study = SampleDistrict.small();
        List<BusInput> buses = new ArrayList<>(study.buses());
        BusInput last = buses.get(2);
        buses.set(2, new BusInput(last.name(), Role.SPARE, last.type(), OptionalInt.empty(), last.inServiceYear(),
                last.odometerKm(), last.otherKmPerYear(), last.idleHoursPerYear(), OptionalDouble.empty(), OptionalInt.empty()));
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), buses, study.depot(), study.prices(), study.funding(), study.air(), study.rules(),
                study.plans(), study.baseline(), trips);
    }

    private static List<TripInput> trips() {
        return List.of(
                new TripInput("Museum", "field trip", LocalDate.of(2026, 1, 14), ServiceDay.SCHOOL, 570, 3, 30, "C", 40, 1,
                        OptionalInt.empty()),
                new TripInput("Final", "tournament", LocalDate.of(2026, 1, 17), ServiceDay.OTHER, 420, 14, 600, "C", 40, 1,
                        OptionalInt.of(0)));
    }
}
