package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;

/**
 * A study whose what-if is to be run as a command asks.
 *
 * @param study the study
 * @param base its results
 */
record WhatIfStudy(Study study, StudyResult base) {
    /** Words about the options for a verb's usage. */
    static final String USAGE = "[--draws N] [--seed N] [--threads N]";

    private static final String DRAWS = "--draws";
    private static final String SEED = "--seed";
    private static final String THREADS = "--threads";

    static Set<String> options() {
        return Set.of(DRAWS, SEED, THREADS);
    }

    /** Threads that may work at the same time. */
    static int threads(Arguments arguments) throws WrongUse {
        return arguments.whole(THREADS, 1, 1024).orElse(Runtime.getRuntime().availableProcessors());
    }

    /** Reads and evaluates it; empty when it cannot be evaluated, which has been said. */
    static Optional<WhatIfStudy> of(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        Study study = StudyArgument.load(file);
        if (study.getWhatIf() == null || study.getWhatIf().getInputs().isEmpty()) {
            throw new WrongUse("STUDY is " + file + ", which names no uncertain input; enter some under “What if”.");
        }
        arguments.whole(DRAWS, 10, 10_000_000).ifPresent(study.getWhatIf()::setDraws);
        arguments.whole(SEED, 0, Integer.MAX_VALUE).ifPresent(study.getWhatIf()::setSeed);
        return EvaluatedStudy.of(study, console).map(e -> new WhatIfStudy(study, e.result()));
    }
}
