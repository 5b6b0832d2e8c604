package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
