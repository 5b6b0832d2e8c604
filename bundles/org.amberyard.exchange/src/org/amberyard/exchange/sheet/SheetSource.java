package org.amberyard.exchange.sheet;

import org.amberyard.model.common.CommonFactory;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;

/** Notes on elements that say which table a value is from. */
final class SheetSource {
    /** Stands for all fields of an element. */
    static final String EVERY_FIELD = "*";

    private SheetSource() {
    }

    /** Notes the source of a field, in place of what was noted of it before. */
    static void note(Sourced element, String field, Quality quality, String citation) {
        SourceNote note = element.getSources().stream().filter(n -> field.equals(n.getField())).findFirst().orElseGet(() -> added(element, field));
        note.setQuality(quality);
        note.setCitation(citation);
        note.setDate(null);
    }

    private static SourceNote added(Sourced element, String field) {
        SourceNote note = CommonFactory.eINSTANCE.createSourceNote();
        note.setField(field);
        element.getSources().add(note);
        return note;
    }
}
