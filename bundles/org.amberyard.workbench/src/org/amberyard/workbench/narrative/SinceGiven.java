package org.amberyard.workbench.narrative;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.report.papers.NarrativeFacts;
import org.amberyard.report.papers.NarrativeFigures;
import org.amberyard.report.papers.NarrativeFilling;
import org.amberyard.study.NarrativeText;
import org.amberyard.workbench.language.Words;
import org.eclipse.osgi.util.NLS;

/**
 * What has become of the figures of a text since it was copied or written, in the plan that it was for.
 *
 * @param facts the text as it was given out
 * @param changes figures that are others now
 * @param added names of figures that the text has had put in since
 */
record SinceGiven(NarrativeFacts facts, List<NarrativeFilling.Change> changes, List<String> added) {

    SinceGiven {
        changes = List.copyOf(changes);
        added = List.copyOf(added);
    }

    /**
     * Empty for a text that was never given out, and while the figures of its plan are not known.
     *
     * @param typed the text as it is now
     * @param bySource figures by what they are of
     */
    static Optional<SinceGiven> of(NarrativeFacts facts, String typed, Map<FigureSource, NarrativeFigures> bySource) {
        return Optional.ofNullable(bySource.get(facts.givenOutFor())).map(figures -> {
            NarrativeFilling filling = new NarrativeFilling(NarrativeText.of(typed), figures);
            return new SinceGiven(facts, filling.changes(facts.givenOut()), filling.added(facts.givenOut()));
        });
    }

    boolean hasChanged() {
        return !changes.isEmpty();
    }

    /** In a sentence or two. */
    String words() {
        String first = hasChanged() ? NLS.bind(Messages.Narrative_changed, occasion(), changes.stream().map(c -> Words.say(c.figure()) + ": " + c.was()
                + " → " + Words.say(c.now())).collect(Collectors.joining("; ")))
                : NLS.bind(added.isEmpty() ? Messages.Narrative_same : Messages.Narrative_othersSame, occasion());
        return added.isEmpty() ? first : first + " " + NLS.bind(Messages.Narrative_added, added.stream().map(Words::say).collect(Collectors.joining("; ")));
    }

    private String occasion() {
        String plan = facts.givenOutFor().plan();
        return facts.givenOutOn().isEmpty() ? NLS.bind(Messages.Narrative_occasionNoDay, plan)
                : NLS.bind(Messages.Narrative_occasion, facts.givenOutOn(), plan);
    }
}
