package org.amberyard.study;

import java.util.List;
import java.util.Locale;
import org.amberyard.core.plan.Role;
import org.amberyard.core.plan.SpareCover;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** The finding on routes that no spare of a plan can stand in for in the last year; none where the yard keeps no spares. */
final class SpareFindings {
    private final Study study;
    private final StudyResult result;
    private final int plan;

    SpareFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.result = result;
        this.plan = plan;
    }

    List<Finding> list() {
        StudyInput input = result.input();
        SpareCover cover = result.spareCovers().get(plan);
        return input.buses().stream().filter(b -> b.role() == Role.SPARE && !cover.uncovered().isEmpty()).findFirst()
                .map(spare -> finding(input, input.buses().indexOf(spare), cover)).stream().toList();
    }

    private Finding finding(StudyInput input, int place, SpareCover cover) {
        List<String> names = cover.uncovered().stream().map(r -> input.duty().routes().get(r).name()).toList();
        return new Finding(Severity.WARNING, study.getBuses().get(place), null, String.format(Locale.ROOT,
                "Plan “%s”: in %d no spare can stand in on %d of %d routes: %s.", result.plans().get(plan).name(),
                input.baseYear() + cover.year(), names.size(), input.duty().routes().size(), FirstNames.of(names)));
    }
}
