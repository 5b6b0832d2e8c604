package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/**
 * A narrative that somebody has with figures that are others by now.
 *
 * @param place place of the narrative in the study
 * @param facts the narrative and what was given out
 * @param changes figures that have changed since
 */
public record StaleNarrative(int place, NarrativeFacts facts, List<NarrativeFilling.Change> changes) {

    public StaleNarrative {
        changes = List.copyOf(changes);
    }

    /** True when a figure of a study was ever given out, so that it is worth looking. */
    public static boolean isPossible(Study study) {
        return study.getNarratives().stream().anyMatch(n -> n.getGivenOutFor() != null && !n.getGivenOut().isEmpty());
    }

    /**
     * The narratives of a study that were given out with figures of a plan that are others by now; only figures that were given out
     * are read off their tables.
     *
     * @param read figures of the results of the study
     * @param progress hears before each figure; may end it
     */
    public static List<StaleNarrative> all(ReadFigures read, Progress progress) {
        return all(read, plan -> true, progress);
    }

    /** The same of those only that were given out for some plans. */
    public static List<StaleNarrative> all(ReadFigures read, Predicate<String> plans, Progress progress) {
        return all(read, read.facts().narratives(), plans, progress);
    }

    /** The same of texts that may have been given out anew since the figures were read. */
    public static List<StaleNarrative> all(ReadFigures read, List<NarrativeFacts> narratives, Progress progress) {
        return all(read, narratives, plan -> true, progress);
    }

    private static List<StaleNarrative> all(ReadFigures read, List<NarrativeFacts> narratives, Predicate<String> plans, Progress progress) {
        List<StaleNarrative> stale = new ArrayList<>();
        for (int i = 0; i < narratives.size(); i++) {
            NarrativeFacts narrative = narratives.get(i);
            Progress part = progress.part(i, narratives.size());
            int place = i;
            if (plans.test(narrative.givenOutFor().plan())) {
                read.of(narrative.givenOutFor()).ifPresent(figures -> stale.add(
                        new StaleNarrative(place, narrative, new NarrativeFilling(narrative.parts(), figures).changes(narrative.givenOut(), part))));
            }
        }
        stale.removeIf(s -> s.changes().isEmpty());
        return stale;
    }

    /** All of them as findings; the study must be the one of the results. */
    public static List<Finding> findings(Study study, StudyResult result) {
        return isPossible(study) ? all(new ReadFigures(result, StudyFacts.of(study)), Progress.NONE).stream().map(s -> s.finding(study)).toList() : List.of();
    }

    /** True while the narrative at its place in a study is as it was looked at. */
    public boolean isOf(Study study) {
        return place < study.getNarratives().size() && NarrativeFacts.of(study.getNarratives().get(place)).equals(facts);
    }

    /** The day on which it was given out, behind that it was; empty where it is not known. */
    public String when() {
        return facts.givenOutOn().isEmpty() ? "" : " on " + facts.givenOutOn();
    }

    /** What is found, of the narrative at its place in the study. */
    public Finding finding(Study study) {
        Narrative narrative = study.getNarratives().get(place);
        String changed = changes.stream().map(NarrativeFilling.Change::sentence).collect(Collectors.joining(" "));
        return new Finding(Severity.WARNING, narrative, StudyPackage.Literals.NARRATIVE__TEXT, Phrase.start(ElementNames.withKind(narrative))
                + ": figures in it are others than when it was given out" + when() + " for “" + facts.givenOutFor().plan() + "”. "
                + changed + " Whoever has the old text needs the new one.");
    }
}
