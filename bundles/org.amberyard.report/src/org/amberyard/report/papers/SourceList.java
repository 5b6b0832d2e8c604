package org.amberyard.report.papers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sources with the numbers by which tables cite them; numbered from one on as they are cited first. */
final class SourceList {
    private static final String NONE = "–";

    private final Map<Source, Integer> numbers = new LinkedHashMap<>();

    /**
     * A source.
     *
     * @param citation document
     * @param quality how good it is
     * @param date date of the document
     */
    record Source(String citation, String quality, String date) {
        static Source of(ResultLine line, String citation) {
            return new Source(SourceWords.of(line.text(citation)), line.text("quality"), line.text("date"));
        }
    }

    /** The number of a source as a table cites it; a dash where nothing is cited. */
    String cite(Source source) {
        if (source.citation().isEmpty()) {
            return NONE;
        }
        return "S" + numbers.computeIfAbsent(source, s -> numbers.size() + 1);
    }

    /** All that were cited, by number. */
    List<Source> cited() {
        return List.copyOf(numbers.keySet());
    }

    /** True where a table cites a source. */
    boolean cites(Source source) {
        return numbers.containsKey(source);
    }
}
