package org.amberyard.core.charging;

import java.util.List;
import java.util.stream.Stream;

/** How the yard charges. */
public enum ChargePolicy {
    /** Each bus charges at full power as soon as it is plugged in. */
    AT_ONCE("at once"),
    /** Each bus charges at full power from a set time of the night; between runs at once. */
    SET_TIME("at a set time"),
    /** Each bus charges evenly until it leaves. */
    SPREAD("spread to departure"),
    /** All charging together keeps below a cap; those that leave first are charged first. */
    CAPPED("capped"),
    /** The schedule of the lowest bill that has every bus ready. */
    LEAST_COST("least cost"),
    /** Least cost for a controller that knows one day at a time; shows what foresight is worth. */
    DAY_BY_DAY("least cost day by day");

    private final String label;

    ChargePolicy(String label) {
        this.label = label;
    }

    /** Policies that any yard may be planned with; day by day is only set beside them, and a cap must have been given. */
    public static List<ChargePolicy> ofYards() {
        return Stream.of(values()).filter(p -> p != DAY_BY_DAY && p != CAPPED).toList();
    }

    /** Policies for which neither prices nor a cap decide, so that every yard can be charged by them. */
    public static List<ChargePolicy> plain() {
        return List.of(AT_ONCE, SET_TIME, SPREAD);
    }

    /** True when prices decide the schedule. */
    public boolean priced() {
        return this == LEAST_COST || this == DAY_BY_DAY;
    }

    /** Policies in whose way buses may be plugged in where its own leaves one short, the first to be tried first. */
    public List<ChargePolicy> otherWays() {
        return switch (this) {
            case AT_ONCE, SET_TIME, CAPPED -> List.of();
            case SPREAD -> List.of(AT_ONCE);
            case LEAST_COST, DAY_BY_DAY -> List.of(AT_ONCE, SPREAD, SET_TIME);
        };
    }

    /** Words for tables and charts. */
    public String label() {
        return label;
    }
}
