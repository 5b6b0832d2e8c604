package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.report.papers.Submission;

/** Freezes what is submitted: study, inputs, documents, and the sums of all files. */
final class FreezeVerb implements Verb {
    @Override
    public String name() {
        return "freeze";
    }

    @Override
    public String usage() {
        return "freeze STUDY --out DIR [options of documents]";
    }

    @Override
    public String summary() {
        return "freezes a submission into the new folder DIR: study, inputs, documents, and the SHA-256 of every file";
    }

    @Override
    public Set<String> options() {
        return DocumentOptions.OPTIONS;
    }

    @Override
    public Set<String> flags() {
        return DocumentOptions.FLAGS;
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        OutFolder folder = OutFolder.of(arguments, console);
        DocumentFolder.Wanted wanted = DocumentOptions.wanted(arguments);
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(file, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        StudyResult result = evaluated.get().result();
        PaperInput in = new PaperInput(result, DocumentOptions.plan(arguments, result), StudyFacts.of(evaluated.get().study()),
                DocumentOptions.choices(arguments, result), DocumentWhatIf.of(arguments, evaluated.get(), file, console));
        List<Path> files = folder.write(f -> Submission.freeze(in, evaluated.get().study(), wanted, f,
                new ProgressLines(console.err(), "Freeze")));
        files.forEach(console.out()::println);
        return ExitCode.DONE;
    }
}
