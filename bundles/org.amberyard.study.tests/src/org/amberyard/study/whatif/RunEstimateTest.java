package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.Test;

/** What a run of the example takes before it begins. */
class RunEstimateTest {
    private static final int DRAWS = 40;

    private static WhatIfRun run(Study study) {
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study), Progress.NONE);
        return new WhatIfRun(study, base, 2, Optional.empty());
    }

    /** An efficiency reaches the yard, so that each draw is evaluated: all of them and what the other parts take. */
    @Test
    void drawsThatMustBeEvaluatedCount() throws Exception {
        Study study = ExampleWhatIf.without(DRAWS);
        study.getWhatIf().getInputs().clear();
        study.getWhatIf().getScenarios().clear();
        study.getWhatIf().getInputs().add(VariedField.of(study, study.getDepot().getPortTypes().get(0), DepotPackage.Literals.PORT_TYPE__EFFICIENCY));
        WhatIfRun run = run(study);
        assertTrue(run.wholeEvaluations() >= DRAWS, run.wholeEvaluations() + " evaluations");
        int tried = run.tryOut(2, Progress.NONE);
        assertTrue(tried >= 2 && tried <= 4, tried + " tried");
        assertEquals(0, run.saved().parts().size(), "what was tried is forgotten");
    }

    /** The price of a port alone is found from sums. */
    @Test
    void pricesAloneTakeNoEvaluation() throws Exception {
        Study study = ExampleWhatIf.without(DRAWS);
        study.getWhatIf().getInputs().clear();
        study.getWhatIf().getScenarios().clear();
        study.getWhatIf().getInputs().add(VariedField.of(study, study.getDepot().getPortTypes().get(0), DepotPackage.Literals.PORT_TYPE__HARDWARE_PRICE));
        assertEquals(0, run(study).wholeEvaluations());
    }
}
