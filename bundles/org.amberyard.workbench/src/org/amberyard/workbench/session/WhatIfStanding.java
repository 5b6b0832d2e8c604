package org.amberyard.workbench.session;

import org.amberyard.charts.Figures;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.RunEnd;
import org.eclipse.osgi.util.NLS;

/** What is to be said of the results of a what-if that are on show. */
public final class WhatIfStanding {
    private WhatIfStanding() {
    }

    /** That they are of an earlier version of the study, or where the run was stopped; blank where neither is so. */
    public static String of(StudySession session) {
        WhatIfWork work = session.whatIf();
        if (work.isOutdated()) {
            return outdated(work);
        }
        if (work.phase() != WhatIfWork.Phase.STOPPED) {
            return "";
        }
        return work.results().flatMap(WhatIfResults::all).map(AllTogether::end).filter(end -> end.reason() == RunEnd.Reason.CANCELLED)
                .map(end -> NLS.bind(Messages.WhatIf_stoppedAt, Figures.whole(end.draws()),
                        Figures.whole(session.study().getWhatIf().getDraws())))
                .orElse(Messages.WhatIf_stopped);
    }

    /** The same after the number of draws and their seed. */
    public static String withDraws(StudySession session) {
        String standing = of(session);
        String draws = session.whatIf().results().flatMap(found -> found.all().map(all -> NLS.bind(Messages.WhatIf_draws,
                Figures.whole(all.end().draws()), String.valueOf(found.inputs().seed())))).orElse("");
        return standing.isEmpty() || draws.isEmpty() ? draws + standing : draws + " " + standing;
    }

    /** That what is on show is of an earlier version of the study, and what has changed since where that is known. */
    private static String outdated(WhatIfWork work) {
        return work.changedSince().map(changes -> NLS.bind(Messages.WhatIf_earlier, SinceRun.words(changes)))
                .orElse(Messages.WhatIf_outdated);
    }
}
