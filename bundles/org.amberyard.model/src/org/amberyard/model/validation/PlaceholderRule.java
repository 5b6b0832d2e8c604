package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;

/** Says how many inputs are marked as placeholders, since what rests on them is not for submission. */
final class PlaceholderRule implements Rule {
    private static final int NAMED = 3;

    @Override
    public void check(Study study, Findings findings) {
        List<String> marked = Elements.of(study).stream()
                .filter(e -> e instanceof SourceNote note && note.getQuality() == Quality.PLACEHOLDER)
                .map(note -> ElementNames.withKind(note.eContainer())).distinct().toList();
        if (!marked.isEmpty()) {
            String rest = marked.size() > NAMED ? " and " + (marked.size() - NAMED) + " more" : "";
            findings.info(study, null, "placeholders stand in " + String.join(", ", marked.subList(0, Math.min(NAMED, marked.size())))
                    + rest + "; what rests on them is not for submission.");
        }
    }
}
