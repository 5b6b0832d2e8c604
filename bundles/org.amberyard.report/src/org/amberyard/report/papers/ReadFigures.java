package org.amberyard.report.papers;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;

/** Figures of narratives of some results, whose tables are made once for all who ask. To be used by one thread at a time. */
public final class ReadFigures {
    private final StudyResult result;
    private final StudyFacts facts;
    private final Map<FigureSource, Optional<NarrativeFigures>> bySource = new HashMap<>();

    /** @param facts what documents say of the study of the results */
    public ReadFigures(StudyResult result, StudyFacts facts) {
        this.result = result;
        this.facts = facts;
    }

    /** True when they are those of some results. */
    public boolean isOf(StudyResult other) {
        return result == other;
    }

    StudyFacts facts() {
        return facts;
    }

    /** Figures of a plan; empty where the results have no such plan. */
    public Optional<NarrativeFigures> of(FigureSource source) {
        return bySource.computeIfAbsent(source, s -> s.figures(result, facts));
    }
}
