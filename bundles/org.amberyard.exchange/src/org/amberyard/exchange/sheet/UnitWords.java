package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/**
 * How people write the unit of a quantity, behind numbers and in headers.
 *
 * @param unit the quantity
 * @param currency currency of the study
 */
record UnitWords(Unit unit, String currency) {
    private static final Map<String, List<String>> ALSO = Map.ofEntries(
            Map.entry("mi", List.of("mile", "miles")),
            Map.entry("km", List.of("kms", "kilometer", "kilometers", "kilometre", "kilometres")),
            Map.entry("gal", List.of("gals", "gallon", "gallons")),
            Map.entry("l", List.of("ltr", "liter", "liters", "litre", "litres")),
            Map.entry("ft", List.of("foot", "feet")),
            Map.entry("m", List.of("meter", "meters", "metre", "metres")),
            Map.entry("lb", List.of("lbs", "pound", "pounds")),
            Map.entry("kg", List.of("kgs", "kilogram", "kilograms")),
            Map.entry("h", List.of("hr", "hrs", "hour", "hours")),
            Map.entry("min", List.of("mins", "minute", "minutes")),
            Map.entry("s", List.of("sec", "secs", "second", "seconds")),
            Map.entry("%", List.of("percent", "pct")),
            Map.entry("°f", List.of("f", "degf", "fahrenheit")),
            Map.entry("°c", List.of("c", "degc", "celsius")),
            Map.entry("usd", List.of("$", "dollar", "dollars")),
            Map.entry("gal/h", List.of("gph")),
            Map.entry("yr", List.of("year", "years")));

    /** The systems in which a word names the unit; both where it is the same in both. */
    List<UnitSystem> systems(String word) {
        String bare = bare(word);
        return Arrays.stream(UnitSystem.values()).filter(s -> words(s).contains(bare)).toList();
    }

    private List<String> words(UnitSystem system) {
        String symbol = bare(unit.symbol(system, currency));
        List<String> words = new ArrayList<>(ALSO.getOrDefault(symbol, List.of()));
        words.add(symbol);
        return words;
    }

    private static String bare(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[.\\s]", "");
    }

    /** The system that a header names for the unit, where it names one and not both. */
    Optional<UnitSystem> named(String header) {
        List<UnitSystem> named = HeaderWords.of(header).words().stream().map(this::systems).filter(s -> s.size() == 1)
                .map(s -> s.get(0)).distinct().toList();
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }

    /** Words that name the unit in either system. */
    List<String> all() {
        return Arrays.stream(UnitSystem.values()).flatMap(s -> words(s).stream()).filter(w -> !w.isEmpty()).distinct().toList();
    }
}
