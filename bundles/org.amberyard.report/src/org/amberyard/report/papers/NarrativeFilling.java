package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.progress.Progress;
import org.amberyard.study.FigureName;
import org.amberyard.study.NarrativeText;

/**
 * A narrative with figures in the places of their names.
 *
 * @param text the narrative taken apart
 * @param figures figures of a plan
 */
public record NarrativeFilling(NarrativeText text, NarrativeFigures figures) {
    private static final String NO_FIGURE = "no figure for ";

    /** A figure that is another one than when its text was given out. */
    public record Change(String figure, String was, String now) {
        /** In words. */
        public String words() {
            return figure + ": " + was + " → " + now;
        }

        /** The same in sentences. */
        String sentence() {
            return "“" + figure + "” was " + was + ". It " + (now.startsWith(NO_FIGURE) ? "has no figure" : "is " + now) + " now.";
        }
    }

    /** The text as it is printed. */
    public String printed() {
        return text.filled(this::printed);
    }

    /** What stands in the place of a name: its figure, or what is wrong with it. */
    public String printed(NarrativeText.Named named) {
        return named.figure().map(f -> figures.of(f).map(p -> named.numberOnly() ? p.number() : p.words())
                .orElse("[" + nothing(f) + "]")).orElse(named.raw());
    }

    private static String nothing(FigureName name) {
        return NO_FIGURE + name.words();
    }

    /** What is wrong with the text, as it also prints: unknown names, and figures that this plan has not; empty when it is whole. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>(text.faults());
        text.figures().stream().filter(f -> figures.of(f).isEmpty()).forEach(f -> faults.add("There is " + nothing(f)
                + " in this plan."));
        return faults;
    }

    /** The figures of the text with their units, by name, as they are kept when it is given out. */
    public Map<String, String> givenOut() {
        Map<String, String> printed = new LinkedHashMap<>();
        text.figures().forEach(f -> figures.of(f).ifPresent(p -> printed.put(f.words(), p.words())));
        return printed;
    }

    /** Figures that have changed since they were given out; those that the text has lost since do not count. */
    public List<Change> changes(Map<String, String> givenOut) {
        return changes(givenOut, Progress.NONE);
    }

    /**
     * The same of figures that may not have been read yet.
     *
     * @param progress hears before each is read; may end it
     */
    List<Change> changes(Map<String, String> givenOut, Progress progress) {
        figures.read(givenOut.keySet().stream().flatMap(name -> FigureName.of(name).stream()).filter(text.figures()::contains).toList(), progress);
        List<Change> changes = new ArrayList<>();
        givenOut.forEach((name, was) -> {
            Optional<FigureName> figure = FigureName.of(name).filter(text.figures()::contains);
            String now = figure.map(f -> figures.of(f).map(PrintedFigure::words).orElse(nothing(f))).orElse(was);
            if (!now.equals(was)) {
                changes.add(new Change(name, was, now));
            }
        });
        return changes;
    }

    /** Names of figures that the text has and was not given out with. */
    public List<String> added(Map<String, String> givenOut) {
        return givenOut().keySet().stream().filter(name -> !givenOut.containsKey(name)).toList();
    }
}
