package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A narrative taken apart: words, and names of figures in braces. Two opening braces stand for one that is printed.
 *
 * @param parts its parts in order; their raw texts together are the text
 */
public record NarrativeText(List<Part> parts) {
    /** What follows a name whose figure is printed without its unit. */
    public static final String NUMBER_ONLY = ", number only";

    /** A part of a text, with its place in it. */
    public sealed interface Part permits Words, Named, Open {
        /** As it was typed. */
        String raw();
    }

    /** Words that are printed as they are. */
    public record Words(String raw) implements Part {
        String printed() {
            return raw.replace("{{", "{");
        }
    }

    /**
     * A name in braces.
     *
     * @param name what stands in the braces, without what is said of its form
     * @param numberOnly true without unit
     */
    public record Named(String raw, String name, boolean numberOnly) implements Part {
        /** The figure that is named; empty for an unknown name. */
        public Optional<FigureName> figure() {
            return FigureName.of(name);
        }
    }

    /** The rest of a text behind a brace that nothing closes. */
    public record Open(String raw) implements Part {
    }

    public NarrativeText {
        parts = List.copyOf(parts);
    }

    /** Takes a text apart. */
    public static NarrativeText of(String text) {
        List<Part> parts = new ArrayList<>();
        int from = 0;
        while (from < text.length()) {
            int brace = nextBrace(text, from);
            if (brace > from) {
                parts.add(new Words(text.substring(from, brace)));
            }
            from = brace == text.length() ? brace : addNamed(parts, text, brace);
        }
        return new NarrativeText(parts);
    }

    /** The next single opening brace; the end of the text where there is none. */
    private static int nextBrace(String text, int from) {
        int at = text.indexOf('{', from);
        while (at >= 0 && at + 1 < text.length() && text.charAt(at + 1) == '{') {
            at = text.indexOf('{', at + 2);
        }
        return at < 0 ? text.length() : at;
    }

    /** A name goes up to the closing brace of its line. */
    private static int addNamed(List<Part> parts, String text, int brace) {
        int close = text.indexOf('}', brace);
        int line = text.indexOf('\n', brace);
        int again = text.indexOf('{', brace + 1);
        if (close < 0 || line >= 0 && line < close || again >= 0 && again < close) {
            int end = again >= 0 && (line < 0 || again < line) ? again : line < 0 ? text.length() : line;
            parts.add(new Open(text.substring(brace, end)));
            return end;
        }
        String inside = text.substring(brace + 1, close).strip();
        boolean bare = inside.endsWith(NUMBER_ONLY);
        parts.add(new Named(text.substring(brace, close + 1), (bare ? inside.substring(0, inside.length() - NUMBER_ONLY.length())
                : inside).strip(), bare));
        return close + 1;
    }

    /** Names in braces, in order. */
    public List<Named> named() {
        return parts.stream().filter(Named.class::isInstance).map(Named.class::cast).toList();
    }

    /** The figures that it names, each once, in order. */
    public List<FigureName> figures() {
        return named().stream().flatMap(n -> n.figure().stream()).distinct().toList();
    }

    /**
     * The text as it is printed; what is wrong in it stays as it was typed.
     *
     * @param printed says what stands in the place of a name
     */
    public String filled(Function<Named, String> printed) {
        return parts.stream().map(p -> p instanceof Words words ? words.printed() : p instanceof Named named ? printed.apply(named)
                : p.raw()).collect(Collectors.joining());
    }

    /** What is wrong with the text, in sentences; empty when every name is known. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>();
        for (Part part : parts) {
            if (part instanceof Open open) {
                faults.add("“" + brief(open.raw()) + "” has a brace that is not closed in its line; close it, or write {{ where a brace is to be printed.");
            } else if (part instanceof Named named && named.figure().isEmpty()) {
                faults.add("“{" + named.name() + "}” names no figure." + hint(named.name()));
            }
        }
        return faults.stream().distinct().toList();
    }

    private static String hint(String name) {
        List<String> near = FigureName.near(name);
        return near.isEmpty() ? " The list of figures on the page Narrative has all names."
                : (near.size() == 1 ? " Did you mean " : " Did you mean one of ") + near.stream().map(n -> "“" + n + "”").collect(Collectors.joining(", "))
                        + "?";
    }

    private static String brief(String raw) {
        int most = 40;
        return raw.length() <= most ? raw.strip() : raw.substring(0, most).strip() + "…";
    }
}
