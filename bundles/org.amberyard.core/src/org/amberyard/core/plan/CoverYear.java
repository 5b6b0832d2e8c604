package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What the fleet of a plan cannot cover in a year.
 *
 * @param year year, counted from the base year
 * @param trips trips that no bus can cover, by {@link TripCover}, in their order
 * @param routes routes that no spare can stand in for, by {@link SpareCover}, longest first; none where the yard keeps no spares
 * @param undriven routes with runs that have no bus at all, in their order
 */
public record CoverYear(int year, List<Integer> trips, List<Integer> routes, List<Integer> undriven) {

    public CoverYear {
        trips = List.copyOf(trips);
        routes = List.copyOf(routes);
        undriven = List.copyOf(undriven);
    }

    /** Every year of a plan. */
    static List<CoverYear> of(StudyResult result, PlanResult plan, TripDrives drives) {
        StudyInput study = result.input();
        boolean spares = study.buses().stream().anyMatch(b -> b.role() == Role.SPARE);
        List<CoverYear> years = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            years.add(new CoverYear(year, new TripCovering(study, plan, year, drives).uncovered(),
                    spares ? SpareCover.of(study, result.duty(), plan, year).uncovered() : List.of(), undriven(study, plan, year)));
        }
        return years;
    }

    private static List<Integer> undriven(StudyInput study, PlanResult plan, int year) {
        Set<Integer> driven = plan.fleet().inYear(year).stream().flatMap(v -> study.buses().get(v.place()).route().stream().boxed())
                .collect(Collectors.toSet());
        return IntStream.range(0, study.duty().routes().size()).filter(route -> !driven.contains(route) && !study.duty().routes().get(route).runs().isEmpty())
                .boxed().toList();
    }

    /** True when nothing is left uncovered. */
    public boolean isCovered() {
        return trips.isEmpty() && routes.isEmpty() && undriven.isEmpty();
    }
}
