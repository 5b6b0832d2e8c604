package org.amberyard.batch;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.Set;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.report.Cautions;
import org.amberyard.report.Headline;
import org.amberyard.report.InputRegister;
import org.amberyard.report.ResultFolder;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.study.ResultFindings;
import org.amberyard.study.StudyUnits;

/** Evaluates a study, prints the answer and writes all results into a folder. */
final class EvaluateVerb implements Verb {
    private static final String OUT = "--out";

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
        return Set.of(OUT);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        Path folder = arguments.path(OUT, console.folder());
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new WrongUse(OUT + " is " + folder + ", which is a file; give a folder, new or existing.");
        }
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(file, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        Study study = evaluated.get().study();
        StudyResult result = evaluated.get().result();
        print(result, StudyUnits.of(study), console.out());
        FindingsText.print(Stream.concat(evaluated.get().findings().stream(), ResultFindings.of(study, result).stream())
                .toList(), console.out());
        write(study, result, folder, new ProgressLines(console.err(), "Tables, ports by number among them"));
        console.out().println("Results are in " + folder);
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

    private static void write(Study study, StudyResult result, Path folder, Progress progress)
            throws WrongUse, IOException {
        try {
            ResultFolder.write(result, InputRegister.of(study), StudyUnits.of(study), folder, progress);
        } catch (FileSystemException e) {
            throw new WrongUse(OUT + " is " + folder + ", where " + e.getFile() + " cannot be written"
                    + (e.getReason() == null ? "" : " (" + e.getReason() + ")") + "; choose another folder.");
        }
    }
}
