package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.WhatIf;

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

    /** @throws WrongUse when a run is described though another option wants none */
    static void refuseSettings(Arguments arguments, String runsNothing) throws WrongUse {
        for (String option : List.of(DRAWS, SEED)) {
            if (arguments.value(option).isPresent()) {
                throw new WrongUse(option + " cannot be given with " + runsNothing + ", which runs nothing.");
            }
        }
    }

    /** What a verb asks of a what-if besides. */
    @FunctionalInterface
    interface Asked {
        void take(Arguments arguments, WhatIf whatIf) throws WrongUse;
    }

    /** Reads and evaluates it; empty when it cannot be evaluated, which has been said. */
    static Optional<WhatIfStudy> of(Arguments arguments, Console console, Asked more) throws WrongUse, IOException {
        Path file = arguments.study(console.folder());
        Study study = StudyArgument.load(file);
        if (study.getWhatIf() == null || study.getWhatIf().getInputs().isEmpty()) {
            throw new WrongUse("STUDY is " + file + ", which names no uncertain input; enter some under “What if”.");
        }
        arguments.whole(DRAWS, 10, 10_000_000).ifPresent(study.getWhatIf()::setDraws);
        arguments.whole(SEED, 0, Integer.MAX_VALUE).ifPresent(study.getWhatIf()::setSeed);
        more.take(arguments, study.getWhatIf());
        return EvaluatedStudy.of(study, console).map(e -> new WhatIfStudy(study, e.result()));
    }
}
