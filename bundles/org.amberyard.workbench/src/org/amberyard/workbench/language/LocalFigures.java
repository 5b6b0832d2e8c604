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

    private final char group;
    private final char decimal;

    LocalFigures(Locale locale) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
        group = symbols.getGroupingSeparator();
        decimal = symbols.getDecimalSeparator();
    }

    /** The text as the locale writes it where it is a figure, else the text itself. */
    String of(String text) {
        if (group == ',' && decimal == '.') {
            return text;
        }
        Matcher figure = FIGURE.matcher(text);
        return figure.matches() ? figure.group(1) + swapped(figure.group(2)) + figure.group(3) : text;
    }

    private String swapped(String digits) {
        StringBuilder swapped = new StringBuilder();
        digits.chars().forEach(c -> swapped.append(c == ',' ? group : c == '.' ? decimal : (char) c));
        return swapped.toString();
    }
}
