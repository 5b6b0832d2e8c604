package org.amberyard.exchange.weather;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.amberyard.model.site.SitePackage.Literals;
import org.eclipse.emf.ecore.EAttribute;

/**
 * A column of temperatures or sun in a table of monthly normals, known by the words of its header.
 *
 * @param place place in the row, from 0
 * @param header header as it stands in the file
 * @param attribute what it tells of a month
 * @param scale unit of its numbers
 */
record NormalsColumn(int place, String header, EAttribute attribute, Scale scale) {

    /** Units of columns, with the value in the unit of the model. */
    enum Scale {
        /** Degrees Celsius. */
        CELSIUS,
        /** Degrees Fahrenheit. */
        FAHRENHEIT,
        /** Share from 0 to 1. */
        SHARE,
        /** Hundredths. */
        PERCENT;

        double stored(double number) {
            return switch (this) {
                case CELSIUS, SHARE -> number;
                case FAHRENHEIT -> Math.round((number - 32) / 1.8 * 1000) / 1000.0;
                case PERCENT -> number / 100;
            };
        }

        /** What a cell of the scale may hold, in words. */
        String allowed() {
            return switch (this) {
                case CELSIUS -> "-60 to 60 °C";
                case FAHRENHEIT -> "-76 to 140 °F";
                case SHARE -> "0 to 1";
                case PERCENT -> "0 to 100 %";
            };
        }

        boolean allows(double stored) {
            return this == SHARE || this == PERCENT ? stored >= 0 && stored <= 1 : stored >= -60 && stored <= 60;
        }
    }

    private static final List<String> LOW = List.of("low", "min", "minimum", "tmin");
    private static final List<String> HIGH = List.of("high", "max", "maximum", "tmax");

    /** What a header stands for; empty when it is no column of climate. */
    static Optional<EAttribute> attribute(String header) {
        Set<String> words = words(header);
        boolean low = LOW.stream().anyMatch(words::contains);
        boolean high = HIGH.stream().anyMatch(words::contains);
        if (words.contains("sun")) {
            return Optional.of(Literals.MONTH_CLIMATE__SUN_SHARE);
        }
        if (words.contains("hottest")) {
            return low ? Optional.empty() : Optional.of(Literals.MONTH_CLIMATE__HOTTEST_HIGH_C);
        }
        if (low == high) {
            return Optional.empty();
        }
        return Optional.of(words.contains("coldest")
                ? low ? Literals.MONTH_CLIMATE__COLDEST_LOW_C : Literals.MONTH_CLIMATE__COLDEST_HIGH_C
                : low ? Literals.MONTH_CLIMATE__MEAN_LOW_C : Literals.MONTH_CLIMATE__MEAN_HIGH_C);
    }

    /** The unit that a header says; empty when it says none. */
    static Optional<Scale> scale(String header, EAttribute attribute) {
        Set<String> words = words(header);
        if (attribute == Literals.MONTH_CLIMATE__SUN_SHARE) {
            return Optional.of(header.contains("%") || words.contains("percent") ? Scale.PERCENT : Scale.SHARE);
        }
        boolean fahrenheit = words.contains("f") || words.contains("degf") || words.contains("fahrenheit");
        boolean celsius = words.contains("c") || words.contains("degc") || words.contains("celsius");
        return fahrenheit == celsius ? Optional.empty() : Optional.of(fahrenheit ? Scale.FAHRENHEIT : Scale.CELSIUS);
    }

    static Set<String> words(String header) {
        return new HashSet<>(Arrays.asList(header.toLowerCase(Locale.ROOT).split("[^a-z]+")));
    }
}
