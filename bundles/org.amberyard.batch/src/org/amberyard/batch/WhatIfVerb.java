package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.study.Study;
import org.amberyard.report.ResultFolder;
import org.amberyard.report.WhatIfTables;
import org.amberyard.report.WhatIfWords;
import org.amberyard.study.whatif.WhatIfRun;

/** Runs the what-if of a study and writes its tables and charts. */
final class WhatIfVerb implements Verb {
    private static final String OUT = "--out";
    private static final String DRAWS = "--draws";
    private static final String SEED = "--seed";
    private static final String THREADS = "--threads";

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
                + "writes tables and charts into DIR; the same study and seed give the same figures on any number of threads";
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
        WhatIfRun run = new WhatIfRun(study, evaluated.get().result(), threads, Optional.empty());
        run.run(new ProgressLines(console.err(), "What if"), soFar -> {
        });
        WhatIfResults results = run.results();
        ResultFolder.write(results, List.of(WhatIfTables.stages(results.inputs().names(), run.whatIf().stages())), folder);
        WhatIfWords.of(results).forEach(sentence -> console.out().println(sentence + System.lineSeparator()));
        console.out().println("Results are in " + folder);
        return ExitCode.DONE;
    }
}
