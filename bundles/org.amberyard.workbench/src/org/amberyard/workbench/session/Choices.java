package org.amberyard.workbench.session;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the user looks at in a study: all views of it follow the same plan, route, bus and day. A choice outlasts results; it is
 * no part of the study and is forgotten when the study is closed.
 */
public final class Choices {

    /** Kinds of choice; which others are on offer may depend on earlier kinds. */
    public enum Kind {
        /** A plan. */
        PLAN,
        /** The plan that it is compared with. */
        COMPARED,
        /** A route. */
        ROUTE,
        /** An electric type on the route. */
        TYPE,
        /** A place in the fleet. */
        BUS,
        /** A year. */
        YEAR,
        /** A month. */
        MONTH,
        /** A day of a bus in the month. */
        DAY,
        /** A stretch of days of the yard in the month. */
        STRETCH,
        /** A charging policy. */
        POLICY,
        /** A tariff of the study. */
        TARIFF,
        /** A pollutant. */
        POLLUTANT
    }

    /**
     * What was chosen.
     *
     * @param name its name, by which it is found again when places change
     * @param place its place, by which it is found again when its name changes
     * @param meanwhile name of what is shown as long as results do not know it yet
     */
    public record Chosen(String name, int place, String meanwhile) {

        /** Something that results know. */
        public Chosen(String name, int place) {
            this(name, place, name);
        }
    }

    private final Map<Kind, Chosen> chosen = new EnumMap<>(Kind.class);
    private final Runnable whenChanged;

    Choices(Runnable whenChanged) {
        this.whenChanged = whenChanged;
    }

    /** Chooses, and tells all views of the study. */
    public void choose(Kind kind, Chosen what) {
        if (!what.equals(chosen.put(kind, what))) {
            whenChanged.run();
        }
    }

    /** What was chosen of a kind; empty as long as the user has left it to the program. */
    public Optional<Chosen> of(Kind kind) {
        return Optional.ofNullable(chosen.get(kind));
    }

    /** All that was chosen, as it is now. */
    public Map<Kind, Chosen> all() {
        return Map.copyOf(chosen);
    }
}
