package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.trace.DriveStatistics;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.TraceImport;
import org.amberyard.model.routes.Run;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.report.CleaningSentences;
import org.amberyard.report.DriveSentence;
import org.amberyard.study.StudyFindings;
import org.amberyard.study.StudyUnits;

/** Adds a drive trace to a study, from a logged drive or a drive schedule, and says what cleaning did to it. */
final class ImportTraceVerb implements Verb {
    private static final String RUN = "--run";

    @Override
    public String name() {
        return "import-trace";
    }

    @Override
    public String usage() {
        return "import-trace STUDY FILE [--run ROUTE/RUN]";
    }

    @Override
    public String summary() {
        return "adds the drive in FILE (CSV or GPX) to STUDY as a drive trace, and lets a run follow it";
    }

    @Override
    public Set<String> options() {
        return Set.of(RUN);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Arguments.StudyAndFile paths = arguments.studyAndFile(console.folder());
        Study study = StudyArgument.load(paths.study());
        Optional<String> named = arguments.value(RUN);
        Optional<Run> run = named.isPresent() ? Optional.of(run(study, named.get())) : Optional.empty();
        TraceImport imported = read(paths.file());
        imported.trace().setName(TraceImport.freeName(study, imported.trace().getName()));
        study.getTraces().add(imported.trace());
        run.ifPresent(r -> r.setTrace(imported.trace()));
        StudyArgument.save(study, paths.study());
        print(imported, study, console);
        List<Finding> findings = StudyFindings.of(study).stream()
                .filter(f -> f.element() == imported.trace() || f.element() == run.orElse(null)).toList();
        FindingsText.print(findings, console.out());
        return ExitCode.DONE;
    }

    private static Run run(Study study, String name) throws WrongUse {
        return study.getRoutes().stream().flatMap(route -> route.getRuns().stream()
                .filter(r -> (route.getName() + "/" + r.getName()).equals(name))).findFirst()
                .orElseThrow(() -> new WrongUse(RUN + " is " + name + ", which is no run of the study; give ROUTE/RUN, such as "
                        + example(study) + "."));
    }

    private static String example(Study study) {
        return study.getRoutes().stream().filter(r -> !r.getRuns().isEmpty()).findFirst()
                .map(r -> r.getName() + "/" + r.getRuns().get(0).getName()).orElse("R01/AM");
    }

    private static TraceImport read(Path file) throws WrongUse {
        if (!Files.isRegularFile(file)) {
            throw new WrongUse("FILE is " + file + ", where there is no file; give a CSV or GPX file.");
        }
        try {
            return TraceImport.read(file);
        } catch (ImportException e) {
            throw new WrongUse("No drive trace was imported from " + file + ":" + System.lineSeparator() + e.getMessage());
        }
    }

    private static void print(TraceImport imported, Study study, Console console) {
        UnitSystem system = StudyUnits.of(study);
        CleaningSentences.of(imported.cleaned().report(), system).forEach(console.out()::println);
        console.out().println(DriveSentence.of(DriveStatistics.of(imported.cleaned().trace()), system));
        console.out().println("Drive trace “" + imported.trace().getName() + "” is in the study.");
    }
}
