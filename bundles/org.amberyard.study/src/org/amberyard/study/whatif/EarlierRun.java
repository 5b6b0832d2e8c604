package org.amberyard.study.whatif;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputDifferences;
import org.amberyard.study.InputDifferences.Difference;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;

/** A what-if of a study that has changed since: what it found of the study as it was, and what is not as it was. */
public final class EarlierRun {
    private EarlierRun() {
    }

    /**
     * The study as it was when a run was kept. Empty where the run did not keep it, and where the method has changed since, so that
     * results of the study would not be those that the run started from.
     */
    public static Optional<Study> study(SavedRun run) {
        return run.study().filter(run::isOf);
    }

    /** What a run has found of {@link #study}, which is evaluated for it. */
    public static WhatIfResults results(SavedRun run, Study then) {
        return new WhatIfRun(then, new StudyEvaluator().evaluate(StudyCompiler.compile(then)), 1, Optional.of(run)).results();
    }

    /**
     * The inputs that differ between a study then and now, in its units of now; none where only its name, the order of rows, its narratives or
     * how far money is secured does. The source of a value is part of the change of the value.
     */
    public static List<Difference> changes(Study then, Study now) {
        return InputDifferences.ofEdits(then, now, f -> !StudyFingerprint.BESIDE.contains(f) && !StudyFingerprint.NO_FIGURE.contains(f));
    }
}
