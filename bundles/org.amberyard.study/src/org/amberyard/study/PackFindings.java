package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Findings on packs that a plan replaces. */
final class PackFindings {
    private final Study study;
    private final StudyResult result;
    private final PlanResult plan;

    PackFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.result = result;
        this.plan = result.plans().get(plan);
    }

    List<Finding> list() {
        List<Finding> findings = new ArrayList<>();
        for (FleetEvent event : plan.fleet().events()) {
            if (event instanceof FleetEvent.PackReplaced replaced) {
                findings.add(new Finding(Severity.INFO, study.getBuses().get(event.place()), null, text(replaced)));
            }
        }
        return findings;
    }

    private String text(FleetEvent.PackReplaced replaced) {
        String cause = switch (replaced.cause()) {
            case CYCLE_LIMIT -> "it has reached its cycle limit";
            case CAPACITY -> "it has fallen to its end-of-life capacity";
        };
        return "Plan “" + plan.name() + "”: the pack of " + replaced.vehicle().unit() + " is replaced in "
                + (result.input().baseYear() + replaced.year()) + " because " + cause + ".";
    }
}
