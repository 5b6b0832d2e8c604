package org.amberyard.workbench.language;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures that the layers below have written with a point and commas, as a locale writes them. */
final class LocalFigures {
    /** A figure alone, with a currency before it or a unit behind it; not a name that holds digits. */
    private static final Pattern FIGURE = Pattern.compile(
            "([+−–-]?(?:[A-Z]{3} |\\$)?[+−–-]?)(\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d+\\.\\d+)( ?[%\\p{L}°$€·/²³0-9 ]{0,24})");

    /** A figure in a sentence, outside the quotation marks of names. */
    private static final Pattern IN_SENTENCE = Pattern.compile(
            "“[^”]*”|(?<![\\p{L}\\d.,:/-])(\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d+\\.\\d+)(?![\\d\\p{L}:/-]|[.,]\\d)");

    /** A minus before a figure, as it is typed; not a dash within a name, a date or a span. */
    private static final Pattern TYPED_MINUS = Pattern.compile("“[^”]*”|(?<![\\p{L}\\d.,:/)-])-(?=\\d)");

    private final char group;
    private final char decimal;

    LocalFigures(Locale locale) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
        group = symbols.getGroupingSeparator();
        decimal = symbols.getDecimalSeparator();
    }

    /** The text as the locale writes it where it is a figure, else the text itself. */
    String of(String figureOrText) {
        String text = withMinus(figureOrText);
        if (group == ',' && decimal == '.') {
            return text;
        }
        Matcher figure = FIGURE.matcher(text);
        return figure.matches() ? figure.group(1) + swapped(figure.group(2)) + figure.group(3) : text;
    }

    /** A sentence with its figures as the locale writes them; names in quotation marks stay. */
    String inSentence(String sentence) {
        String text = withMinus(sentence);
        if (group == ',' && decimal == '.') {
            return text;
        }
        return IN_SENTENCE.matcher(text).replaceAll(m -> Matcher.quoteReplacement(m.group(1) == null ? m.group() : swapped(m.group(1))));
    }

    private static String withMinus(String text) {
        return text.indexOf('-') < 0 ? text : TYPED_MINUS.matcher(text).replaceAll(m -> Matcher.quoteReplacement(m.group().equals("-") ? "−"
                : m.group()));
    }

    private String swapped(String digits) {
        StringBuilder swapped = new StringBuilder();
        digits.chars().forEach(c -> swapped.append(c == ',' ? group : c == '.' ? decimal : (char) c));
        return swapped.toString();
    }
}
