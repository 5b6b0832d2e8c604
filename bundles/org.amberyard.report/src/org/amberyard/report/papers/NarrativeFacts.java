package org.amberyard.report.papers;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.study.NarrativeText;

/**
 * A text for an application, with its figures as it was last given out.
 *
 * @param heading heading
 * @param text the text as typed
 * @param givenOutFor whose figures it was given out with; without a plan where it never was
 * @param givenOutOn day on which it was; may be empty
 * @param givenOut what stood in the place of each name then
 */
public record NarrativeFacts(String heading, String text, FigureSource givenOutFor, String givenOutOn, Map<String, String> givenOut) {

    public NarrativeFacts {
        givenOut = Collections.unmodifiableMap(new LinkedHashMap<>(givenOut));
    }

    /** The narratives of a study; to be called where the study may be read. */
    public static List<NarrativeFacts> of(Study study) {
        return study.getNarratives().stream().map(NarrativeFacts::of).toList();
    }

    /** A narrative; to be called where the study may be read. */
    public static NarrativeFacts of(Narrative narrative) {
        Map<String, String> figures = new LinkedHashMap<>();
        for (GivenOutFigure figure : narrative.getGivenOut()) {
            figures.put(text(figure.getFigure()), text(figure.getPrinted()));
        }
        return new NarrativeFacts(text(narrative.getName()), text(narrative.getText()), source(narrative), text(narrative.getGivenOutOn()),
                figures);
    }

    private static FigureSource source(Narrative narrative) {
        String plan = narrative.getGivenOutFor() == null ? "" : text(narrative.getGivenOutFor().getName());
        return new FigureSource(plan, Optional.ofNullable(narrative.getGivenOutTo()).map(Programme::getName));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }

    /** The text taken apart. */
    public NarrativeText parts() {
        return NarrativeText.of(text);
    }
}
