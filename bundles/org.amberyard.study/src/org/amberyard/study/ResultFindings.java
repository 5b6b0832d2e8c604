package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;

/**
 * What the results say that a reader must not miss: routes that fail, measured fuel that the model misses, bills that
 * the tariff does not ask, schedules that
 * cannot be driven, cold cabins, trips and routes that no bus can cover, packs that wear out, too few ports, a service that
 * is too small, buses ordered before their quote, awards that are cut or paid back, years above the budget.
 */
public final class ResultFindings {
    private ResultFindings() {
    }

    /** Findings on the study as a whole, then by plan; the result must be the study's own. */
    public static List<Finding> of(Study study, StudyResult result) {
        List<Finding> findings = new ArrayList<>(new DutyFindings(study, result).list());
        findings.addAll(new CalibrationFindings(study, result).list());
        findings.addAll(new BillFindings(study, result.billAudits()).list());
        for (int plan = 0; plan < result.plans().size(); plan++) {
            findings.addAll(new RouteFindings(study, result, plan).list());
            findings.addAll(new TripFindings(study, result, plan).list());
            findings.addAll(new SpareFindings(study, result, plan).list());
            findings.addAll(new CoverYearFindings(study, result, plan).list());
            findings.addAll(new PackFindings(study, result, plan).list());
            findings.addAll(new PortFindings(study, result, plan).list());
            findings.addAll(new QuoteFindings(study, result, plan).list());
            findings.addAll(new OrderFindings(study, result, plan).list());
            findings.addAll(new FundingFindings(study, result, plan).list());
            findings.addAll(new BudgetFindings(study, result, plan).list());
        }
        return List.copyOf(findings);
    }
}
