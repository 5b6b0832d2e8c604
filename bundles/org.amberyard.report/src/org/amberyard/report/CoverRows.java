package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.amberyard.core.plan.CoverYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.SpareCover;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripCover;
import org.amberyard.core.plan.TripInput;

/** What the rows of the tables of cover are made from. */
final class CoverRows {
    private CoverRows() {
    }

    /** A trip with the fleet of a plan in the last year. */
    record OfTrip(StudyResult result, PlanResult plan, TripCover.Answer answer) {
        TripInput trip() {
            return result.input().trips().get(answer.trip());
        }

        /** The place that drives it today. */
        Optional<TripCover.Place> assigned() {
            return trip().assigned().stream().mapToObj(answer.places()::get).findFirst();
        }

        static List<OfTrip> all(StudyResult result) {
            List<OfTrip> rows = new ArrayList<>();
            for (ResultRows.OfPlan plan : ResultRows.OfPlan.all(result)) {
                result.tripCovers().get(plan.index()).answers().forEach(a -> rows.add(new OfTrip(result, plan.plan(), a)));
            }
            return rows;
        }
    }

    /** What a plan cannot cover in a year, or in all years together. */
    record OfGap(StudyResult result, PlanResult plan, OptionalInt year, List<Integer> trips, List<Integer> routes,
            List<Integer> undriven) {
        List<String> tripNames() {
            return trips.stream().map(t -> result.input().trips().get(t).name()).toList();
        }

        List<String> routeNames() {
            return names(routes);
        }

        List<String> undrivenNames() {
            return names(undriven);
        }

        private List<String> names(List<Integer> of) {
            return of.stream().map(r -> result.input().duty().routes().get(r).name()).toList();
        }

        /** The count, or what is named when it is not zero. */
        String answer() {
            List<String> open = new ArrayList<>();
            if (!undriven.isEmpty()) {
                open.add(undriven.size() + (undriven.size() == 1 ? " route without a bus" : " routes without a bus"));
            }
            if (!trips.isEmpty()) {
                open.add(trips.size() + (trips.size() == 1 ? " trip" : " trips"));
            }
            if (!routes.isEmpty()) {
                open.add(routes.size() + (routes.size() == 1 ? " route without a spare" : " routes without a spare"));
            }
            return "uncovered: " + (open.isEmpty() ? "0" : String.join(", ", open));
        }

        static List<OfGap> all(StudyResult result) {
            List<OfGap> rows = new ArrayList<>();
            for (ResultRows.OfPlan plan : ResultRows.OfPlan.all(result)) {
                List<CoverYear> years = result.covers().get(plan.index());
                rows.add(new OfGap(result, plan.plan(), OptionalInt.empty(), together(years, CoverYear::trips),
                        together(years, CoverYear::routes), together(years, CoverYear::undriven)));
                years.forEach(y -> rows.add(new OfGap(result, plan.plan(), OptionalInt.of(result.input().baseYear() + y.year()), y.trips(),
                        y.routes(), y.undriven())));
            }
            return rows;
        }

        private static List<Integer> together(List<CoverYear> years, Function<CoverYear, List<Integer>> open) {
            return years.stream().flatMap(y -> open.apply(y).stream()).distinct().sorted().toList();
        }
    }

    /** A spare of a plan in the last year. */
    record OfSpare(StudyResult result, PlanResult plan, SpareCover cover, SpareCover.Spare spare) {
        static List<OfSpare> all(StudyResult result) {
            List<OfSpare> rows = new ArrayList<>();
            for (ResultRows.OfPlan plan : ResultRows.OfPlan.all(result)) {
                SpareCover cover = result.spareCovers().get(plan.index());
                cover.spares().forEach(s -> rows.add(new OfSpare(result, plan.plan(), cover, s)));
            }
            return rows;
        }
    }
}
