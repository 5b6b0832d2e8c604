package org.amberyard.workbench.compare;

import java.util.List;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.report.PlansBeside;
import org.amberyard.report.papers.Assumptions;

/**
 * A study with its figures, as it is compared.
 *
 * @param name name of its file
 * @param study the study
 * @param plans names of its plans
 * @param figures figures of the plans
 * @param assumptions what the plans stand on
 */
record Evaluated(String name, Study study, List<String> plans, List<PlansBeside.Row> figures, Assumptions assumptions) {

    Evaluated {
        plans = List.copyOf(plans);
        figures = List.copyOf(figures);
    }

    /**
     * Makes the figures of a result, which takes a moment.
     *
     * @param assumptions what the plans stand on, taken while nobody edits the study
     */
    static Evaluated of(String name, Study study, StudyResult result, UnitSystem units, Assumptions assumptions) {
        return new Evaluated(name, study, result.plans().stream().map(PlanResult::name).toList(), PlansBeside.of(result, units), assumptions);
    }
}
