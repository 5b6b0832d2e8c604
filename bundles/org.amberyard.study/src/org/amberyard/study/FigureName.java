package org.amberyard.study;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Figures of the results that a narrative may name in braces. Names are plain English words, as documents are in English; they
 * stand in study files, so a name that was once given out stays.
 */
public enum FigureName {
    /** Need. */
    FLEET_BUSES("buses in the fleet"), PAST_AGE("buses past retirement age"), MEAN_AGE("mean age of the fleet"),
    OLDEST_BUS("age of the oldest bus"), FLEET_DISTANCE("distance of the fleet a year"), FLEET_FUEL("fuel of the fleet a year"),
    REPAIR_COST("repair cost by distance"),
    /** What is replaced and bought. */
    BUSES_REPLACED("buses replaced"), OLD_DISTANCE("distance of the old buses a year"), OLD_FUEL("fuel of the old buses a year"),
    OLD_IDLING("yard idling of the old buses a year"), ELECTRIC_BUSES("electric buses bought"),
    FUEL_SAVED("fuel not burnt over the study"), ELECTRICITY("electricity at the meter over the study"),
    /** Money. */
    PROJECT_COST("total project cost"), BUS_COST("cost of new buses"), PORT_COST("cost of charging ports"),
    WORKS_COST("cost of site works"), TRAINING_COST("cost of training and tools"), REQUESTED("grant requested"),
    REQUESTED_SHARE("grant share of the cost"), ALL_PROGRAMMES("paid by all programmes"), OWN_MONEY("own money"),
    OWN_SHARE("own share of the cost"), MATCH_BASE("cost that the match is a share of"), MATCH_REQUIRED("match required"),
    MATCH_REQUIRED_SHARE("match required, share"), MATCH("match provided"), MATCH_SHARE("match provided, share"),
    /** Air, a year. */
    NOX_YEAR("NOx reduced a year"), PM25_YEAR("PM2.5 reduced a year"), HC_YEAR("HC reduced a year"), CO_YEAR("CO reduced a year"),
    CO2_YEAR("CO2 reduced a year"), CO2E_YEAR("CO2e reduced a year"),
    /** Air, over the remaining lives of the old buses. */
    NOX_LIFE("NOx reduced in remaining life"), PM25_LIFE("PM2.5 reduced in remaining life"), HC_LIFE("HC reduced in remaining life"),
    CO_LIFE("CO reduced in remaining life"), CO2_LIFE("CO2 reduced in remaining life"), CO2E_LIFE("CO2e reduced in remaining life"),
    /** What a ton costs. */
    NOX_TON("project cost of a ton of NOx"), PM25_TON("project cost of a ton of PM2.5"), CO2_TON("project cost of a ton of CO2"),
    NOX_GRANT_TON("grant for a ton of NOx"), PM25_GRANT_TON("grant for a ton of PM2.5"), CO2_GRANT_TON("grant for a ton of CO2"),
    /** Routes and the yard. */
    ROUTES("routes"), ELECTRIC_ROUTES("electric routes"), COLDEST_DAY("temperature of the coldest day"),
    LEAST_LEFT("least distance left on the worst day"), PORTS("charging ports"), CONNECTED("connected power"),
    MANAGED_DEMAND("managed demand of charging"), TRANSFORMER("transformer"), ELECTRIC_BILL("electric bill of the last year"),
    HIGH_VOLTAGE_PEOPLE("people trained for high voltage"),
    /** Dates. */
    AWARD_DATE("date of the award"), COMPLETION("date of completion");

    private static final int MOST_NEAR = 3;
    private static final int LEAST_WORD = 3;

    private final String words;

    FigureName(String words) {
        this.words = words;
    }

    /** The name as it stands in braces. */
    public String words() {
        return words;
    }

    /** The figure of a name, capitals or not. */
    public static Optional<FigureName> of(String name) {
        return Arrays.stream(values()).filter(f -> f.words.equalsIgnoreCase(name)).findFirst();
    }

    /** Names that an unknown one may have meant, the nearest first: those with slips of letters, then those that share words. */
    static List<String> near(String unknown) {
        Set<String> typed = words(unknown);
        List<String> all = Arrays.stream(values()).map(FigureName::words).toList();
        Optional<String> slipped = NearWords.nearest(unknown, all);
        return slipped.map(List::of).orElseGet(() -> all.stream().filter(n -> shared(n, typed) > 0)
                .sorted(Comparator.comparingLong((String n) -> -shared(n, typed)).thenComparingInt(n -> NearWords.apart(n, unknown)))
                .limit(MOST_NEAR).toList());
    }

    private static long shared(String name, Set<String> typed) {
        return words(name).stream().filter(typed::contains).count();
    }

    /** Words that say something: longer than “of” and “a”, without their plural. */
    private static Set<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z0-9.]+")).filter(w -> w.length() >= LEAST_WORD)
                .filter(w -> !w.equals("the")).map(w -> w.replaceAll("(?<=[^s])(es|s)$", "")).collect(Collectors.toSet());
    }
}
