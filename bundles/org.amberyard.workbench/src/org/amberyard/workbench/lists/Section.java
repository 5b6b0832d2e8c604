package org.amberyard.workbench.lists;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Things of a kind that can be gone to.
 *
 * @param title what they are
 * @param lines the things
 */
public record Section(String title, List<Line> lines) {

    /**
     * A thing.
     *
     * @param name what it is called
     * @param text the same with what else tells it from others, as it is listed
     * @param also what else it is called
     * @param among where it is one of several alike, for which another line stands as well
     * @param open goes to it
     */
    public record Line(String name, String text, List<String> also, Optional<OneOf> among, Runnable open) {
        public Line {
            also = List.copyOf(also);
        }

        /** A thing that has one name. */
        public Line(String text, Runnable open) {
            this(text, text, List.of(), Optional.empty(), open);
        }
    }

    /**
     * One of several fields that are alike.
     *
     * @param general text of the line that stands for all of them
     * @param element name of the element that has it
     */
    public record OneOf(String general, String element) {
    }

    public Section {
        lines = List.copyOf(lines);
    }

    /** A section with the lines that were found in it, and how well the first of them fits. */
    private record Found(Section section, Search.Fit best) {
    }

    private record Fitting(Line line, Search.Fit fit) {
    }

    /** Those lines of sections that have every word, be it in the title; what fits best comes first, in each section and among them. */
    static List<Section> having(List<Section> sections, Search search) {
        List<Found> found = new ArrayList<>();
        sections.forEach(section -> section.having(search).ifPresent(found::add));
        return found.stream().sorted(Comparator.comparing(Found::best)).map(Found::section).toList();
    }

    private Optional<Found> having(Search search) {
        List<Fitting> fitting = new ArrayList<>();
        lines.forEach(line -> search.fit(this, line).ifPresent(fit -> fitting.add(new Fitting(line, fit))));
        fitting.sort(Comparator.comparing(Fitting::fit));
        return fitting.isEmpty() ? Optional.empty()
                : Optional.of(new Found(new Section(title, fitting.stream().map(Fitting::line).toList()), fitting.get(0).fit()));
    }
}
