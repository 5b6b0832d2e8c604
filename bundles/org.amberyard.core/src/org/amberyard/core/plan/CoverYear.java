package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * What the fleet of a plan cannot cover in a year.
 *
 * @param year year, counted from the base year
 * @param trips trips that no bus can cover, by {@link TripCover}, in their order
 * @param routes routes that no spare can stand in for, by {@link SpareCover}, longest first; none where the yard keeps no spares
 */
public record CoverYear(int year, List<Integer> trips, List<Integer> routes) {

    public CoverYear {
        trips = List.copyOf(trips);
        routes = List.copyOf(routes);
    }

    /** Every year of a plan. */
    static List<CoverYear> of(StudyResult result, PlanResult plan, TripDrives drives) {
        StudyInput study = result.input();
        boolean spares = study.buses().stream().anyMatch(b -> b.role() == Role.SPARE);
        List<CoverYear> years = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            years.add(new CoverYear(year, new TripCovering(study, plan, year, drives).uncovered(),
                    spares ? SpareCover.of(study, result.duty(), plan, year).uncovered() : List.of()));
        }
        return years;
    }

    /** True when nothing is left uncovered. */
    public boolean isCovered() {
        return trips.isEmpty() && routes.isEmpty();
    }
}
