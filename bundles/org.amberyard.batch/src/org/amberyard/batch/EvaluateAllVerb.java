package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFile;

/**
 * Evaluates every study of a folder into one table, lists those that cannot be evaluated and goes on. What has been evaluated is kept
 * by study, so that a run that was stopped, or one after a few studies were put right, works out only the rest.
 */
final class EvaluateAllVerb implements Verb {

    @Override
    public String name() {
        return "evaluate-all";
    }

    @Override
    public String usage() {
        return "evaluate-all FOLDER --out DIR";
    }

    @Override
    public String summary() {
        return "evaluates every study in FOLDER and the folders in it, and writes the single figures of their plans into studies.csv of "
                + "DIR, and what cannot be evaluated into failures.csv; stopped or run again it works out only what is missing or has changed";
    }

    @Override
    public Set<String> options() {
        return Set.of(OutFolder.OPTION);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path folder = arguments.folder(console.folder());
        if (!Files.isDirectory(folder)) {
            throw new WrongUse("FOLDER is " + folder + ", where there is no folder; give one with study files (*." + StudyFile.EXTENSION + ").");
        }
        OutFolder out = OutFolder.of(arguments, console);
        List<Path> files = studies(folder);
        if (files.isEmpty()) {
            throw new WrongUse("FOLDER is " + folder + ", which holds no study file (*." + StudyFile.EXTENSION + ").");
        }
        return out.write(made -> evaluate(folder, files, new StudyRows(made), console));
    }

    /** In the order of their paths, so that the table is the same wherever it is made. */
    private static List<Path> studies(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(f -> Files.isRegularFile(f) && f.getFileName().toString().endsWith("." + StudyFile.EXTENSION)).sorted().toList();
        }
    }

    private static int evaluate(Path folder, List<Path> files, StudyRows rows, Console console) throws IOException {
        List<Path> done = new ArrayList<>();
        List<List<Object>> failures = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            String name = folder.relativize(files.get(i)).toString().replace('\\', '/');
            OneOfMany one = OneOfMany.of(files.get(i), name, rows);
            one.rows().ifPresent(done::add);
            if (one.rows().isEmpty()) {
                failures.add(List.of(name, one.words()));
            }
            console.err().println((i + 1) + " of " + files.size() + ": " + name + ", " + one.words());
        }
        rows.writeTable(done);
        rows.writeFailures(failures);
        console.out().println(done.size() + " of " + files.size() + " studies are in " + rows.table()
                + (failures.isEmpty() ? "" : "; why the others are not is in " + rows.failures()));
        return failures.isEmpty() ? ExitCode.DONE : ExitCode.WRONG_USE;
    }
}
