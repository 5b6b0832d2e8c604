package org.amberyard.report.papers;

import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;

/**
 * Which figures a text has.
 *
 * @param plan name of the plan that they are of; empty where there is none
 * @param programme name of the programme that is applied to; empty for the one that pays most
 */
public record FigureSource(String plan, Optional<String> programme) {

    /** What documents are made from. */
    public static FigureSource of(PaperInput in) {
        return new FigureSource(in.plan().name(), in.choices().programme());
    }

    /**
     * The figures of results; empty where these have no such plan.
     *
     * @param facts what documents say of the study of the results
     */
    Optional<NarrativeFigures> figures(StudyResult result, StudyFacts facts) {
        return IntStream.range(0, result.plans().size()).filter(p -> result.plans().get(p).name().equals(plan)).boxed().findFirst()
                .map(p -> new NarrativeFigures(new PaperInput(result, p, facts, PaperChoices.STANDARD.with(programme))));
    }
}
