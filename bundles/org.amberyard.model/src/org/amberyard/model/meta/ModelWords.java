package org.amberyard.model.meta;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Labels, meanings and choices of the model in a language. The model itself is English, and so is all that leaves the program;
 * another language stands in a file {@code labels_LANGUAGE.properties} beside this class, with the keys {@code Kind},
 * {@code Kind.field}, {@code Choices.CHOICE}, and {@code .doc} and {@code .source} behind them for what is meant and where a default
 * comes from.
 */
public final class ModelWords {
    /** The words of the model itself. */
    public static final ModelWords ENGLISH = new ModelWords(new Properties());

    private static final String MEANING = ".doc";
    private static final String SOURCE = ".source";

    private final Properties words;

    private ModelWords(Properties words) {
        this.words = words;
    }

    /** The words of a language; English where there is no file of it. */
    public static ModelWords of(Locale language) {
        try (InputStream file = ModelWords.class.getResourceAsStream("labels_" + language.getLanguage() + ".properties")) {
            if (file == null) {
                return ENGLISH;
            }
            Properties words = new Properties();
            words.load(new InputStreamReader(file, StandardCharsets.UTF_8));
            return new ModelWords(words);
        } catch (IOException e) {
            throw new UncheckedIOException("The labels of the language " + language + " cannot be read", e);
        }
    }

    /** What the model says of a field. */
    public FieldInfo field(EStructuralFeature feature) {
        FieldInfo english = FieldInfo.of(feature);
        return new FieldInfo(said(key(feature), english.label()), english.unitToken(), english.min(), english.max(), english.above(),
                meaning(feature), said(key(feature) + SOURCE, english.defaultSource()));
    }

    /** Name of a kind of element. */
    public String kind(EClass type) {
        return said(key(type), FieldInfo.classLabel(type));
    }

    /** What a kind, field or choice means; empty when the model does not say. */
    public String meaning(EModelElement element) {
        String english = FieldInfo.documentation(element);
        return english.isEmpty() ? english : said(key(element) + MEANING, english);
    }

    /** One of the choices of a field. */
    public String choice(EEnumLiteral literal) {
        return said(key(literal), literal.getLiteral());
    }

    /** The choice that a field holds. */
    public String choice(EEnum choices, Enumerator value) {
        return choice(choices.getEEnumLiteral(value.getName()));
    }

    /** Yes or no. */
    public String flag(boolean value) {
        return value ? said("word.yes", "yes") : said("word.no", "no");
    }

    /** What stands for a figure that nobody has told or measured. */
    public String notTold() {
        return said("word.notTold", "not told");
    }

    /** That a year is left to be the base year of the study. */
    public String asBaseYear() {
        return said("word.asBaseYear", "as the base year");
    }

    /** That a source note is of all fields of its element. */
    String allFields() {
        return said("word.allFields", "all fields");
    }

    /** Kind and name of an element, and its owner. */
    String ofOwner(String named, String owner) {
        return named + " " + said("word.of", "of") + " " + owner;
    }

    private String said(String key, String english) {
        return words.getProperty(key, english);
    }

    private static String key(EModelElement element) {
        if (element instanceof EStructuralFeature feature) {
            return feature.getEContainingClass().getName() + "." + feature.getName();
        }
        if (element instanceof EEnumLiteral literal) {
            return literal.getEEnum().getName() + "." + literal.getName();
        }
        return ((ENamedElement) element).getName();
    }

    /** All texts of the model in English by their keys, whether or not the language has them. */
    public static Map<String, String> english() {
        Map<String, String> texts = new HashMap<>();
        for (EPackage subject : ModelPackages.all()) {
            put(texts, subject, Optional.empty());
            for (EClassifier classifier : subject.getEClassifiers()) {
                if (classifier instanceof EClass type) {
                    put(texts, type, Optional.of(FieldInfo.classLabel(type)));
                    type.getEStructuralFeatures().forEach(f -> {
                        put(texts, f, Optional.of(FieldInfo.of(f).label()));
                        add(texts, key(f) + SOURCE, FieldInfo.of(f).defaultSource());
                    });
                } else if (classifier instanceof EEnum choices) {
                    put(texts, choices, Optional.empty());
                    choices.getELiterals().forEach(l -> put(texts, l, Optional.of(l.getLiteral())));
                }
            }
        }
        return texts;
    }

    private static void put(Map<String, String> texts, EModelElement element, Optional<String> label) {
        label.ifPresent(l -> add(texts, key(element), l));
        add(texts, key(element) + MEANING, FieldInfo.documentation(element));
    }

    private static void add(Map<String, String> texts, String key, String text) {
        if (!text.isEmpty()) {
            texts.put(key, text);
        }
    }

    /** Text of a key; empty where the language has none. */
    public Optional<String> text(String key) {
        return Optional.ofNullable(words.getProperty(key));
    }

    /** Keys that the language has. */
    public Iterable<String> keys() {
        return words.stringPropertyNames();
    }
}
