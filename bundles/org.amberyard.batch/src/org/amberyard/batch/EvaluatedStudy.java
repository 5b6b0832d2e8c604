package org.amberyard.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyFindings;

/**
 * A study with its results.
 *
 * @param study the study
 * @param findings what was found in the study itself; no error
 * @param result the results
 */
record EvaluatedStudy(Study study, List<Finding> findings, StudyResult result) {

    /** Loads and evaluates a study; empty when it cannot be evaluated, which the console is told with the reasons. */
    static Optional<EvaluatedStudy> of(Path file, Console console) throws WrongUse {
        return of(StudyArgument.load(file), console);
    }

    /** Evaluates a study; empty when it cannot be evaluated, which the console is told with the reasons. */
    static Optional<EvaluatedStudy> of(Study study, Console console) {
        List<Finding> findings = StudyFindings.of(study);
        if (!StudyFindings.canEvaluate(findings)) {
            console.err().println("“" + study.getName() + "” cannot be evaluated.");
            FindingsText.print(findings, console.err());
            return Optional.empty();
        }
        return Optional.of(new EvaluatedStudy(study, findings, console.evaluator().evaluate(StudyCompiler.compile(study),
                ProgressLines.afterAWhile(console.err(), "Evaluation"))));
    }
}
