package org.amberyard.workbench.session;

import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.study.InputDifferences.Difference;
import org.amberyard.workbench.language.Words;
import org.eclipse.osgi.util.NLS;

/** What of a study has changed since a what-if was run on it, in the words of the history. */
final class SinceRun {
    private static final int MOST_TOLD = 5;

    private SinceRun() {
    }

    /** The first few changes, and how many more there are. */
    static String words(List<Difference> changes) {
        if (changes.isEmpty()) {
            return Messages.WhatIf_sameInputs;
        }
        String told = changes.stream().limit(MOST_TOLD).map(SinceRun::words).collect(Collectors.joining("; "));
        int more = changes.size() - MOST_TOLD;
        return more > 0 ? NLS.bind(Messages.WhatIf_more, told, more) : told;
    }

    private static String words(Difference change) {
        String element = change.element().isEmpty() ? Words.kind(StudyPackage.Literals.STUDY) : Words.say(change.element());
        if (change.isWhole()) {
            return StepWords.brief(new Change(element, "", change.has(0) ? element : "", change.has(1) ? element : ""));
        }
        String before = Words.say(change.values().get(0));
        String after = Words.say(change.values().get(1));
        return change.field().isEmpty() ? NLS.bind(Messages.WhatIf_otherKind, new Object[] {element, before, after})
                : StepWords.brief(new Change(element, Words.say(change.field()), before, after));
    }
}
