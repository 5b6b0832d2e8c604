package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.battery.PackReplacement;
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
            } else if (event instanceof FleetEvent.RetiredForPack retired) {
                findings.add(new Finding(Severity.INFO, study.getBuses().get(event.place()), null, text(retired)));
            }
        }
        return findings;
    }

    private String text(FleetEvent.PackReplaced replaced) {
        return opening(replaced) + " is replaced in " + calendar(replaced) + " because " + cause(replaced.cause()) + "."
                + (replaced.makerShare() > 0 ? " The maker's warranty pays "
                        + Math.round(100 * replaced.makerShare()) + " % of it." : "");
    }

    private String text(FleetEvent.RetiredForPack retired) {
        return opening(retired) + " is due in " + calendar(retired) + " because " + cause(retired.cause())
                + String.format(Locale.ROOT, ", but with another pack the bus would cost %,.0f %s a year over the years that it has "
                        + "left in the study, and the next bus %,.0f %s a year, both without grants and charging demand; the bus "
                        + "retires.", retired.keptPerYear(), currency(), retired.nextPerYear(), currency());
    }

    private String currency() {
        return result.input().currency();
    }

    private String opening(FleetEvent event) {
        return "Plan “" + plan.name() + "”: the pack of " + event.vehicle().unit();
    }

    private int calendar(FleetEvent event) {
        return result.input().baseYear() + event.year();
    }

    private static String cause(PackReplacement.Cause cause) {
        return switch (cause) {
            case CYCLE_LIMIT -> "it has reached its cycle limit";
            case CAPACITY -> "it has fallen to its end-of-life capacity";
            case DUTY -> "its route has become too long for it";
            case AGE -> "it has reached its age limit";
        };
    }
}
