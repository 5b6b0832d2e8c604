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
    /** The schedule of the lowest bill that has every bus ready. */
    LEAST_COST("least cost"),
    /** Least cost for a controller that knows one day at a time; shows what foresight is worth. */
    DAY_BY_DAY("least cost day by day");

    private final String label;

    ChargePolicy(String label) {
        this.label = label;
    }

    /** Policies that a yard is planned with; day by day is only set beside them. */
    public static List<ChargePolicy> ofYards() {
        return Stream.of(values()).filter(p -> p != DAY_BY_DAY).toList();
    }

    /** True when prices decide the schedule. */
    public boolean priced() {
        return this == LEAST_COST || this == DAY_BY_DAY;
    }

    /** Policies in whose way buses may be plugged in where its own leaves one short, the first to be tried first. */
    public List<ChargePolicy> otherWays() {
        return switch (this) {
            case AT_ONCE, SET_TIME -> List.of();
            case SPREAD -> List.of(AT_ONCE);
            case LEAST_COST, DAY_BY_DAY -> List.of(AT_ONCE, SPREAD, SET_TIME);
        };
    }

    /** Words for tables and charts. */
    public String label() {
        return label;
    }
}
