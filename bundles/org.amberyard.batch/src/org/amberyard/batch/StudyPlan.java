package org.amberyard.batch;

import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;

/**
 * The study and the plan of it that a command is about.
 *
 * @param file the study's file
 * @param study the study as it was read
 * @param plan the plan
 */
record StudyPlan(Path file, Study study, Plan plan) {

    /** Those that the operands name. */
    static StudyPlan of(Arguments arguments, Console console) throws WrongUse {
        List<String> operands = arguments.operands(2, "a study and a plan");
        Path file = arguments.studyOf(operands.get(0), console.folder());
        Study study = StudyArgument.load(file);
        return new StudyPlan(file, study, NamedElement.of("PLAN", operands.get(1), study.getPlans()));
    }

    /** Place of the plan in the study. */
    int place() {
        return study.getPlans().indexOf(plan);
    }

    /** Saves the study, whose plan has changed, and says so. */
    void save(Console console, String done) throws WrongUse {
        StudyArgument.save(study, file);
        console.out().println(done + " the plan “" + ElementNames.of(plan) + "” of " + file);
    }
}
