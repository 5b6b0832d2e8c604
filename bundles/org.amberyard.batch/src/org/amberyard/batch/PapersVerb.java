package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.report.papers.StudyFacts;

/** A verb that evaluates a study and writes documents of it into a folder. */
abstract class PapersVerb implements Verb {
    @Override
    public final Set<String> options() {
        return DocumentOptions.OPTIONS;
    }

    @Override
    public final Set<String> flags() {
        return DocumentOptions.FLAGS;
    }

    @Override
    public final int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        OutFolder folder = OutFolder.of(arguments, console);
        DocumentFolder.Wanted wanted = DocumentOptions.wanted(arguments);
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(file, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        Study study = evaluated.get().study();
        StudyResult result = evaluated.get().result();
        PaperInput in = new PaperInput(result, DocumentOptions.plan(arguments, result), StudyFacts.of(study),
                DocumentOptions.choices(arguments, result), DocumentWhatIf.of(arguments, evaluated.get(), file, console));
        folder.write(f -> write(in, study, wanted, f, console)).forEach(console.out()::println);
        return ExitCode.DONE;
    }

    /** Writes into a folder; gives what to say of it, files in their order. */
    abstract List<String> write(PaperInput in, Study study, DocumentFolder.Wanted wanted, Path folder, Console console) throws IOException;
}
