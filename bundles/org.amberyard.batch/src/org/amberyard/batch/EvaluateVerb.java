package org.amberyard.batch;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.report.Cautions;
import org.amberyard.report.Headline;
import org.amberyard.report.InputRegister;
import org.amberyard.report.ResultFolder;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.report.papers.StaleNarrative;
import org.amberyard.study.ResultFindings;
import org.amberyard.study.StudyUnits;

/** Evaluates a study, prints the answer and writes all results into a folder. */
final class EvaluateVerb implements Verb {
    @Override
    public String name() {
        return "evaluate";
    }

    @Override
    public String usage() {
        return "evaluate STUDY --out DIR";
    }

    @Override
    public String summary() {
        return "prints the answer and writes tables, charts and results.json into DIR";
    }

    @Override
    public Set<String> options() {
        return Set.of(OutFolder.OPTION);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        OutFolder folder = OutFolder.of(arguments, console);
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(file, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        Study study = evaluated.get().study();
        StudyResult result = evaluated.get().result();
        print(result, StudyUnits.of(study), console.out());
        List<Finding> stale = StaleTexts.found(() -> StaleNarrative.findings(study, result), console);
        FindingsText.print(Stream.of(evaluated.get().findings(), ResultFindings.of(study, result), stale).flatMap(List::stream).toList(),
                console.out());
        Progress progress = new ProgressLines(console.err(), "Tables, ports by number among them");
        folder.write(f -> ResultFolder.write(result, InputRegister.of(study), StudyUnits.of(study), f, progress));
        console.out().println("Results are in " + folder.path());
        return ExitCode.DONE;
    }

    private static void print(StudyResult result, UnitSystem system, PrintStream out) {
        out.println(result.input().name());
        out.println();
        ResultTable headline = ResultTables.headline(result, system);
        out.print(HeadlineText.of(headline));
        out.println(headline.watermark());
        Headline.of(result, system).forEach(h -> out.println(h.text() + System.lineSeparator()));
        out.println(Cautions.text());
        out.println();
    }
}
