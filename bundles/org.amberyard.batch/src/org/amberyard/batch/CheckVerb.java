package org.amberyard.batch;

import java.util.List;
import java.util.Set;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.study.StudyFindings;

/** Lists what is wrong or doubtful in a study. */
final class CheckVerb implements Verb {

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String usage() {
        return "check STUDY";
    }

    @Override
    public String summary() {
        return "lists what is wrong or doubtful in a study; returns 2 when it cannot be evaluated";
    }

    @Override
    public Set<String> options() {
        return Set.of();
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Study study = StudyArgument.load(arguments.study(console.folder()));
        List<Finding> findings = StudyFindings.of(study);
        if (findings.isEmpty()) {
            console.out().println("Nothing to put right.");
        }
        FindingsText.print(findings, console.out());
        return StudyFindings.canEvaluate(findings) ? ExitCode.DONE : ExitCode.WRONG_USE;
    }
}
