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

/** Writes documents for a grant agency, a board, a utility, the shop and a consultant. */
final class DocumentsVerb implements Verb {
    @Override
    public String name() {
        return "documents";
    }

    @Override
    public String usage() {
        return "documents STUDY --out DIR [--plan PLAN] [--kind WORDS] [--format WORDS] [--tables T1,T3,…] [--programme NAME] "
                + "[--dated DATE] [--paper WORD] [--whole-vins] [--what-if]";
    }

    @Override
    public String summary() {
        return "writes the grant tables, board memo, load letter, shop calendar, appendix and cash-flow workbook of a plan into "
                + "DIR";
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
        List<Path> files = folder.write(f -> DocumentFolder.write(in, wanted, f, new ProgressLines(console.err(), "Documents")));
        files.forEach(console.out()::println);
        return ExitCode.DONE;
    }
}
