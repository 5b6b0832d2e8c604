package org.amberyard.report.papers;

import java.util.LinkedHashMap;
import java.util.Map;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputSource;

/**
 * Where the rules of programmes come from, with the date of the notice, as the study notes it.
 *
 * @param notes sources in words by the name of the programme and that of the field; of all fields without one of their own by
 *     {@link SourceNotes#EVERY_FIELD}
 */
record RuleSources(Map<String, Map<String, String>> notes) {
    /** What stands where the study notes no source. */
    static final String NONE = "no notice and no date are noted in the study; " + ApplicantFacts.BLANK;

    static RuleSources of(Study study) {
        Map<String, Map<String, String>> notes = new LinkedHashMap<>();
        for (Programme programme : study.getProgrammes()) {
            Map<String, String> fields = new LinkedHashMap<>();
            for (SourceNote note : programme.getSources()) {
                fields.put(note.getField(), words(note));
            }
            notes.put(programme.getName(), Map.copyOf(fields));
        }
        return new RuleSources(Map.copyOf(notes));
    }

    private static String words(SourceNote note) {
        boolean dated = note.getDate() != null && !note.getDate().isBlank();
        return new InputSource(note.getQuality().getLiteral(), SourceWords.of(note.getCitation()), note.getDate()).words() + (dated ? "" : ", undated");
    }

    /** The source of a field of a programme, or of all that it says. */
    String of(String programme, String field) {
        Map<String, String> fields = notes.getOrDefault(programme, Map.of());
        return fields.getOrDefault(field, fields.getOrDefault(SourceNotes.EVERY_FIELD, NONE));
    }

    /** The source of what a programme says in all. */
    String of(String programme) {
        return of(programme, SourceNotes.EVERY_FIELD);
    }
}
