package org.amberyard.report;

import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputDifferences.Difference;
import org.amberyard.study.whatif.EarlierRun;
import org.amberyard.study.whatif.StudyFingerprint;

/** What of a study has changed since a what-if was run on it: in a sentence and as a table. */
public final class ChangedSince {
    private static final int MOST_TOLD = 5;
    private static final String IS_THERE = "is there";

    private ChangedSince() {
    }

    /** The first few inputs with their values then and now, and how many more there are. */
    public static String words(List<Difference> changes) {
        if (changes.isEmpty()) {
            return "only the study’s name or the order of its rows";
        }
        String told = changes.stream().limit(MOST_TOLD).map(ChangedSince::words).collect(Collectors.joining("; "));
        int more = changes.size() - MOST_TOLD;
        return more > 0 ? told + "; and " + more + " more" : told;
    }

    private static String words(Difference change) {
        if (change.isWhole()) {
            return change.element() + (change.has(1) ? " was added" : " was deleted");
        }
        String element = change.element().isEmpty() ? "" : change.element() + ", ";
        return element + change.field() + ": " + change.values().get(0) + " → " + change.values().get(1);
    }

    private static String field(Difference change) {
        return change.field().isEmpty() ? IS_THERE : change.field();
    }

    /** The table of what has changed between a study that a what-if was run on and the study now; none where the what-if is of the study as it is. */
    public static List<ResultTable> tables(Study then, Study now) {
        return StudyFingerprint.of(then).equals(StudyFingerprint.of(now)) ? List.of() : List.of(table(EarlierRun.changes(then, now)));
    }

    /** All of them; without rows where only the study’s name or the order of its rows is another. */
    public static ResultTable table(List<Difference> changes) {
        List<List<Object>> rows = changes.stream().map(c -> List.<Object>of(c.element(), field(c), c.values().get(0), c.values().get(1)))
                .toList();
        return new ResultTable("what_if_changed_since", "What has changed since the what-if was run: it is of an earlier version of the study",
                List.of(WhatIfColumns.text("element", "Element", "What holds the input; blank for the study."),
                        WhatIfColumns.text("input", "Input", "The input; “is there” where a whole element came or went."),
                        WhatIfColumns.text("then", "Then", "Its value when the what-if was run, with its unit."),
                        WhatIfColumns.text("now", "Now", "Its value in the study as it is.")),
                rows);
    }
}
