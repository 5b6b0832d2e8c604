package org.amberyard.study;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Dates as people type them: 2026-09-04, 9/4/26, 9/4/2026, 04.09.2026; the locale says whether days or months come first. */
public final class DateText {
    private static final Pattern DATE = Pattern.compile("(?:(\\d{4})-(\\d{1,2})-(\\d{1,2})|(\\d{1,2})[/.-](\\d{1,2})[/.-](\\d{4}|\\d{2}))");
    private static final int CENTURY = 2000;
    private static final int TWO_DIGITS = 100;
    private static final int MOST_MONTHS = 12;

    private DateText() {
    }

    /** True for fields that hold a date; the model keeps them as ISO 8601 texts and names them so. */
    public static boolean isDate(EStructuralFeature feature) {
        String name = feature.getName();
        return feature.getEType().getInstanceClass() == String.class && (name.equals("date") || name.endsWith("Date"));
    }

    /** The date in a text; empty when it is none. A number above 12 is a day wherever it stands. */
    public static Optional<LocalDate> date(String typed, Locale locale) {
        Matcher date = DATE.matcher(typed.strip());
        if (!date.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(date.group(1) != null ? LocalDate.of(number(date, 1), number(date, 2), number(date, 3))
                    : ordered(date, locale));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static LocalDate ordered(Matcher date, Locale locale) {
        int first = number(date, 4);
        int second = number(date, 5);
        boolean dayFirst = first > MOST_MONTHS || second <= MOST_MONTHS && isDayFirst(locale);
        int year = number(date, 6) < TWO_DIGITS ? CENTURY + number(date, 6) : number(date, 6);
        return LocalDate.of(year, dayFirst ? second : first, dayFirst ? first : second);
    }

    private static boolean isDayFirst(Locale locale) {
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
        return pattern.indexOf('d') < pattern.indexOf('M');
    }

    private static int number(Matcher date, int group) {
        return Integer.parseInt(date.group(group));
    }
}
