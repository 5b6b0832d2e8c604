package org.amberyard.study.whatif;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.Scenarios;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.VarianceShares;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.RunEnd;

/** Parts of a what-if by themselves. */
record WhatIfParts(StudyWhatIf whatIf) {

    OneAtATime oneAtATime(Progress progress) {
        return whatIf.single(all(whatIf.single(), progress));
    }

    AllTogether allTogether(Progress progress) {
        KeptDraws kept = new KeptDraws();
        return whatIf.together(kept, whatIf.work(whatIf.together(), whatIf.outcomes().blockDraws(), kept, block -> false, progress), Optional.empty());
    }

    TwoTogether twoTogether(int first, int second, Progress progress) {
        GridPart grid = whatIf.grid(new int[] {first, second});
        return grid.found(all(grid.evaluations(), progress));
    }

    Scenarios scenarios(Progress progress) {
        KeptDraws kept = new KeptDraws();
        whatIf.workScenarios(kept, progress);
        return whatIf.named(kept);
    }

    VarianceShares varianceShares(Progress progress) {
        return whatIf.shares(all(whatIf.shares(false), progress), Optional.empty());
    }

    private KeptDraws all(Evaluations evaluations, Progress progress) {
        KeptDraws kept = new KeptDraws();
        if (whatIf.work(evaluations, whatIf.outcomes().blockDraws(), kept, block -> false, progress).reason() == RunEnd.Reason.CANCELLED) {
            throw new CancellationException();
        }
        return kept;
    }
}
