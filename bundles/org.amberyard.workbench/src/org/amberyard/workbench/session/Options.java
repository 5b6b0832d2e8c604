package org.amberyard.workbench.session;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.amberyard.workbench.session.Choices.Chosen;

/**
 * What can be chosen of a kind.
 *
 * @param list names and places, in the order offered
 * @param preferred place that the program takes as long as the user has chosen none of the list
 */
public record Options(List<Chosen> list, int preferred) {

    public Options {
        list = List.copyOf(list);
    }

    /** Options of all places up to a number. */
    public static Options upTo(int count, IntFunction<String> name, int preferred) {
        return of(IntStream.range(0, count), name, preferred);
    }

    /** Options of some places. */
    public static Options of(IntStream places, IntFunction<String> name, int preferred) {
        return new Options(places.mapToObj(p -> new Chosen(name.apply(p), p)).toList(), preferred);
    }

    /**
     * What is picked: what the user chose by its name, else what is to be shown until that is known, else by its place, else what
     * the program prefers; empty for no options.
     */
    public Optional<Chosen> pick(Optional<Chosen> wanted) {
        return wanted.flatMap(w -> called(w.name()).or(() -> called(w.meanwhile()))
                .or(() -> list.stream().filter(o -> o.place() == w.place()).findFirst()))
                .or(() -> list.stream().filter(o -> o.place() == preferred).findFirst())
                .or(() -> list.stream().findFirst());
    }

    private Optional<Chosen> called(String name) {
        return list.stream().filter(o -> o.name().equals(name)).findFirst();
    }

    /** Names, in the order offered. */
    public List<String> names() {
        return list.stream().map(Chosen::name).toList();
    }
}
