package org.amberyard.workbench.language;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.amberyard.model.meta.ModelPackages;
import org.amberyard.model.meta.ModelWords;
import org.amberyard.model.meta.Phrase;
import org.eclipse.emf.ecore.EClass;

/**
 * What the layers below say in English, in the language of the window: findings, answers, charts and tables. They stay English, so that
 * nothing that leaves the program depends on who runs it. The file {@code catalogue_LANGUAGE.txt} has pairs of lines, an English text
 * and what it is called, with {@link Phrasing} for texts that hold names or figures; labels of the model are those of
 * {@link ModelWords}. What is not there stays English.
 */
public final class Catalogue {
    /** Texts of large tables would else pile up. */
    private static final int MOST_KEPT = 20_000;

    private static final String STOP = ".";
    private static final String NAME = " {0}";
    /** What no name of an element has. */
    private static final Pattern SENTENCE = Pattern.compile("[.,;:!?] ");
    private static final Pattern BETWEEN_SENTENCES = Pattern.compile("(?<=[.!?])\\s+");

    private final Map<String, String> whole = new HashMap<>();
    private final List<Phrasing> phrasings = new ArrayList<>();
    private final List<Phrasing> names = new ArrayList<>();
    private final Map<String, Optional<String>> kept = new ConcurrentHashMap<>();
    private final LocalFigures figures;

    /**
     * The catalogue of a language; an empty one for English and for languages that the program does not speak.
     *
     * @param numbers locale of figures
     */
    public Catalogue(Locale language, Locale numbers) {
        figures = new LocalFigures(numbers);
        List<String> lines = lines(language);
        if (lines.isEmpty()) {
            return;
        }
        addModel(ModelWords.of(language));
        for (int i = 0; i + 1 < lines.size(); i += 2) {
            put(lines.get(i), lines.get(i + 1));
        }
        Comparator<Phrasing> surest = Comparator.comparingInt(Phrasing::fixed).reversed();
        phrasings.sort(surest);
        names.sort(surest);
    }

    /** Labels of the model, and its kinds before a name: {@code bus B03}. */
    private void addModel(ModelWords words) {
        ModelWords.english().forEach((key, english) -> words.text(key).ifPresent(said -> put(english, said)));
        ModelPackages.all().stream().flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance).map(EClass.class::cast)
                .forEach(kind -> {
                    String english = ModelWords.ENGLISH.kind(kind);
                    names.add(new Phrasing(english + NAME, words.kind(kind) + NAME));
                    names.add(new Phrasing(Phrase.inside(english) + NAME, Phrase.inside(words.kind(kind)) + NAME));
                    // A new element has the name of its kind in the language of the window.
                    names.add(new Phrasing(english + " " + words.kind(kind) + NAME, words.kind(kind) + NAME));
                    names.add(new Phrasing(Phrase.inside(english) + " " + words.kind(kind) + NAME, words.kind(kind) + NAME));
                });
    }

    private static List<String> lines(Locale language) {
        try (InputStream file = Catalogue.class.getResourceAsStream("catalogue_" + language.getLanguage() + ".txt")) {
            return file == null ? List.of() : new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8)).lines()
                    .filter(l -> !l.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The texts of the language " + language + " cannot be read", e);
        }
    }

    private void put(String english, String said) {
        if (english.contains("{0")) {
            phrasings.add(new Phrasing(english, said));
        } else {
            whole.put(english, said);
            whole.putIfAbsent(Phrase.inside(english), Phrase.inside(said));
            whole.putIfAbsent(Phrase.inName(english), Phrase.inName(said));
        }
    }

    /** What a text says in the language; the text itself, with figures as the locale writes them, where it is not in the catalogue. */
    public String say(String text) {
        return text == null ? null : found(text).orElseGet(() -> figures.inSentence(text));
    }

    /** What a text says in the language; empty where it is not in the catalogue. */
    public Optional<String> found(String text) {
        if (whole.isEmpty()) {
            return Optional.empty();
        }
        if (kept.size() > MOST_KEPT) {
            kept.clear();
        }
        Optional<String> known = kept.get(text);
        if (known == null) {
            known = sought(text);
            kept.put(text, known);
        }
        return known;
    }

    private Optional<String> sought(String text) {
        if (text.contains("\n")) {
            return Optional.of(text.lines().map(this::say).collect(Collectors.joining("\n")));
        }
        return Optional.ofNullable(whole.get(text)).or(() -> eachSentence(text))
                .or(() -> first(phrasings, text)).or(() -> withoutStop(text)).or(() -> SENTENCE.matcher(text).find() ? anySentence(text) : first(names, text));
    }

    private Optional<String> first(List<Phrasing> of, String text) {
        return of.stream().flatMap(p -> p.of(text, this::found, figures::of).stream()).findFirst();
    }

    /** A sentence that also stands without its stop: under a chart as a line, in its summary among others. */
    private Optional<String> withoutStop(String text) {
        return text.length() > 1 && text.endsWith(STOP) && sentences(text).isEmpty()
                ? found(text.substring(0, text.length() - 1)).map(said -> said + STOP) : Optional.empty();
    }

    /** A paragraph of which every sentence is known is said so: a phrasing that joins two words would also match across sentences. */
    private Optional<String> eachSentence(String text) {
        List<String> parts = sentences(text);
        return parts.stream().allMatch(this::isKnown) ? said(parts) : Optional.empty();
    }

    /** A paragraph is said sentence by sentence; one of which no sentence is known is not. */
    private Optional<String> anySentence(String text) {
        List<String> parts = sentences(text);
        return parts.stream().anyMatch(this::isKnown) ? said(parts) : Optional.empty();
    }

    private boolean isKnown(String text) {
        return found(text).isPresent();
    }

    private Optional<String> said(List<String> parts) {
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.stream().map(this::say).collect(Collectors.joining(" ")));
    }

    /** The sentences of a paragraph; none of a text that is no more than one. */
    private static List<String> sentences(String text) {
        List<String> parts = List.of(BETWEEN_SENTENCES.split(text));
        return parts.size() > 1 ? parts : List.of();
    }
}
