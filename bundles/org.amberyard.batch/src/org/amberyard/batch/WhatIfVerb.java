package org.amberyard.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.study.Study;
import org.amberyard.report.CsvTables;
import org.amberyard.report.ResultTable;
import org.amberyard.report.WhatIfTables;
import org.amberyard.report.WhatIfWords;
import org.amberyard.study.whatif.AllTogether;
import org.amberyard.study.whatif.OneAtATime;
import org.amberyard.study.whatif.StudyWhatIf;
import org.amberyard.study.whatif.VarianceShares;

/** Runs the what-if of a study and writes its tables. */
final class WhatIfVerb implements Verb {
    private static final String OUT = "--out";
    private static final String DRAWS = "--draws";
    private static final String SEED = "--seed";
    private static final String THREADS = "--threads";
    private static final int GRID_STEPS = 11;
    /** An evaluation of the variance shares takes as long as a draw; as many rows as give about as many evaluations as draws. */
    private static final int LEAST_ROWS = 32;

    @Override
    public String name() {
        return "what-if";
    }

    @Override
    public String usage() {
        return "what-if STUDY " + OUT + " DIR [" + DRAWS + " N] [" + SEED + " N] [" + THREADS + " N]";
    }

    @Override
    public String summary() {
        return "varies the uncertain inputs of STUDY one at a time, the two widest together and all together, runs its scenarios, and "
                + "writes the tables into DIR; the same study and seed give the same figures on any number of threads";
    }

    @Override
    public Set<String> options() {
        return Set.of(OUT, DRAWS, SEED, THREADS);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        Path folder = arguments.path(OUT, console.folder());
        int threads = arguments.whole(THREADS, 1, 1024).orElse(Runtime.getRuntime().availableProcessors());
        Study study = StudyArgument.load(file);
        if (study.getWhatIf() == null || study.getWhatIf().getInputs().isEmpty()) {
            throw new WrongUse("STUDY is " + file + ", which names no uncertain input; enter some under “What if”.");
        }
        arguments.whole(DRAWS, 10, 10_000_000).ifPresent(study.getWhatIf()::setDraws);
        arguments.whole(SEED, 0, Integer.MAX_VALUE).ifPresent(study.getWhatIf()::setSeed);
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(study, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        Files.createDirectories(folder);
        write(study, evaluated.get().result(), threads, folder, console);
        console.out().println("Results are in " + folder);
        return ExitCode.DONE;
    }

    private static void write(Study study, StudyResult base, int threads, Path folder, Console console) throws IOException {
        StudyWhatIf whatIf = new StudyWhatIf(study, base, threads);
        WhatIfTables tables = new WhatIfTables(base, whatIf);
        List<ResultTable> made = new ArrayList<>();
        made.add(tables.stages());
        OneAtATime single = told("One at a time", whatIf::oneAtATime, console);
        made.add(tables.tornado(single));
        int[] widest = whatIf.widest(single);
        if (widest.length > 1) {
            made.add(tables.grid(told("Two together", p -> whatIf.twoTogether(widest[0], widest[1], GRID_STEPS, p), console)));
        }
        if (!study.getWhatIf().getScenarios().isEmpty()) {
            made.add(tables.scenarios(told("Scenarios", whatIf::scenarios, console)));
        }
        AllTogether all = told("All together", whatIf::allTogether, console);
        made.add(tables.summary(all));
        made.add(tables.appropriations(all));
        int rows = Math.max(LEAST_ROWS, study.getWhatIf().getDraws() / (2 + whatIf.inputs().size()));
        VarianceShares shares = told("Variance", p -> whatIf.varianceShares(rows, p), console);
        made.add(tables.varianceShares(shares));
        for (ResultTable table : made) {
            Files.writeString(folder.resolve(table.name() + ".csv"), CsvTables.document(table), StandardCharsets.UTF_8);
        }
        new WhatIfWords(base).of(all, shares).forEach(sentence -> console.out().println(sentence + System.lineSeparator()));
    }

    private static <T> T told(String work, Function<Progress, T> run, Console console) {
        return run.apply(new ProgressLines(console.err(), work));
    }
}
