package org.amberyard.study;

import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;

/** The example that comes with the program. */
final class ExampleStudy {
    static final StudyEvaluator EVALUATOR = new StudyEvaluator();
    private static StudyResult result;

    private ExampleStudy() {
    }

    static Study load() throws StudyFileException {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        return StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
    }

    /** Results of the example, evaluated once for all tests of a run. */
    static synchronized StudyResult result() throws StudyFileException {
        if (result == null) {
            result = evaluated(load());
        }
        return result;
    }

    /** Results of the example with an edit; what the edit leaves as it was is not worked out again. */
    static StudyResult evaluated(Study edited) {
        return EVALUATOR.evaluate(StudyCompiler.compile(edited));
    }
}
