package org.amberyard.model.meta;

import java.util.Optional;
import org.amberyard.model.common.CommonFactory;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;

/** Notes on elements that say where their values come from. */
public final class SourceNotes {
    /** Stands for every field of an element in a note. */
    public static final String EVERY_FIELD = "*";

    private SourceNotes() {
    }

    /**
     * A note that no element has yet.
     *
     * @param field name of a field, or {@link #EVERY_FIELD}
     * @param citation source in words; null where none is told
     * @param date date of the source; null where none is told
     */
    public static SourceNote of(String field, Quality quality, String citation, String date) {
        SourceNote note = CommonFactory.eINSTANCE.createSourceNote();
        note.setField(field);
        fill(note, quality, citation, date);
        return note;
    }

    private static void fill(SourceNote note, Quality quality, String citation, String date) {
        note.setQuality(quality);
        note.setCitation(citation);
        note.setDate(date);
    }

    /** The note that an element has of a field by its name; empty where it has none. */
    public static Optional<SourceNote> find(Sourced element, String field) {
        return element.getSources().stream().filter(n -> field.equals(n.getField())).findFirst();
    }

    /** Notes the source of a field, without a date, in place of what was noted of it before. */
    public static void put(Sourced element, String field, Quality quality, String citation) {
        find(element, field).ifPresentOrElse(note -> fill(note, quality, citation, null),
                () -> element.getSources().add(of(field, quality, citation, null)));
    }
}
