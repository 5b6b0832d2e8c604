package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripCover;
import org.amberyard.core.plan.TripInput;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Findings on trips that the fleet of a plan cannot cover in the last year, or not with the buses that drive them today. */
final class TripFindings {
    private final Study study;
    private final StudyInput input;
    private final String plan;
    private final TripCover cover;
    private final List<Finding> findings = new ArrayList<>();

    TripFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.input = result.input();
        this.plan = result.plans().get(plan).name();
        this.cover = result.tripCovers().get(plan);
    }

    List<Finding> list() {
        add(Severity.WARNING, "no bus can cover", cover.uncovered(), "");
        addAssigned(cover.answers().stream().filter(this::assignedCannot).toList());
        boolean anyElectric = cover.answers().stream().flatMap(a -> a.places().stream()).anyMatch(TripCover.Place::electric);
        if (anyElectric) {
            add(Severity.INFO, "only buses with an engine can cover", cover.engineOnly(), "");
        }
        return List.copyOf(findings);
    }

    /** True when an electric bus stands in the place that a trip is given to and cannot cover it. */
    private boolean assignedCannot(TripCover.Answer answer) {
        return assigned(answer).stream().anyMatch(p -> p.electric() && !p.can());
    }

    private List<TripCover.Place> assigned(TripCover.Answer answer) {
        return input.trips().get(answer.trip()).assigned().stream().mapToObj(answer.places()::get).toList();
    }

    private void addAssigned(List<TripCover.Answer> answers) {
        long others = answers.stream().filter(a -> !a.uncovered()).count();
        add(Severity.WARNING, "the electric bus that is assigned cannot cover", answers,
                "; other buses can cover " + others + " of them");
    }

    private void add(Severity severity, String fact, List<TripCover.Answer> answers, String rest) {
        if (!answers.isEmpty()) {
            findings.add(new Finding(severity, study.getTrips().get(answers.get(0).trip()), null, String.format(Locale.ROOT,
                    "Plan “%s”: in %d %s %d of %d trips: %s%s.", plan, input.baseYear() + cover.year(), fact, answers.size(),
                    input.trips().size(), FirstNames.of(answers.stream().map(this::name).toList()), rest)));
        }
    }

    private String name(TripCover.Answer answer) {
        TripInput trip = input.trips().get(answer.trip());
        return trip.name() + assigned(answer).stream().filter(p -> !p.can())
                .map(p -> " (" + input.buses().get(p.place()).name() + ": " + p.verdict().label() + ")").findFirst().orElse("");
    }
}
