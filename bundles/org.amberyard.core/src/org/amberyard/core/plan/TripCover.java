package org.amberyard.core.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Who can cover the trips with the fleet of a plan in a year. Each trip is judged by itself: two trips of the same hours may
 * count on the same bus. A trip departs from where the bus then stands and ends at the yard.
 *
 * <p>An engine bus covers what its body and its time allow. An electric bus must also stay above the reserve through the
 * coldest operated day of the month with the trip among its own runs, with its pack as worn as at the start of that year, and
 * the hours of the charge window between its return and the next morning must leave it fit for its own runs of that day.
 *
 * @param year year, counted from the base year
 * @param answers an answer for each trip, in their order
 */
public record TripCover(int year, List<Answer> answers) {

    /**
     * The answer for one place in the fleet.
     *
     * @param place place in the list of buses
     * @param verdict whether its bus can, and if not, why
     * @param electric true when the bus is electric
     * @param marginKwh energy left above the reserve at the tightest moment of the day, kWh; empty for an engine bus, and for
     *            one that is kept from the trip before it comes to that
     */
    public record Place(int place, TripVerdict verdict, boolean electric, OptionalDouble marginKwh) {

        /** True when the bus can cover the trip. */
        public boolean can() {
            return verdict == TripVerdict.CAN;
        }
    }

    /**
     * The answer for one trip.
     *
     * @param trip place in the list of trips
     * @param places every place in the fleet, in their order
     * @param able places whose bus can cover it: spare and activity buses before route buses, then the largest margin first,
     *            where an engine bus counts as without limit
     */
    public record Answer(int trip, List<Place> places, List<Place> able) {

        public Answer {
            places = List.copyOf(places);
            able = List.copyOf(able);
        }

        /** True when no bus can cover the trip. */
        public boolean uncovered() {
            return able.isEmpty();
        }

        /** True when buses can cover the trip but no electric one. */
        public boolean engineOnly() {
            return !able.isEmpty() && able.stream().noneMatch(Place::electric);
        }
    }

    public TripCover {
        answers = List.copyOf(answers);
    }

    /** Cover by a plan in any year. */
    public static TripCover of(StudyResult result, int plan, int year) {
        return of(result.input(), result.plans().get(plan), year, new TripDrives(result.duty()));
    }

    /** Cover by a plan in a year, with the days that have been driven for other plans and years. */
    static TripCover of(StudyInput study, PlanResult plan, int year, TripDrives drives) {
        return new TripCovering(study, plan, year, drives).cover();
    }

    /** Trips that no bus can cover. */
    public List<Answer> uncovered() {
        return answers.stream().filter(Answer::uncovered).toList();
    }

    /** Trips that only engine buses can cover. */
    public List<Answer> engineOnly() {
        return answers.stream().filter(Answer::engineOnly).toList();
    }
}
