package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.finance.Borrowing;
import org.amberyard.core.math.Checks;

/**
 * How a part of a plan's purchases is paid for over time: each year's purchases by a debt of their own, drawn at the start of
 * the year, on their cost less the funding of the year.
 *
 * @param name name
 * @param covers purchases that it covers
 * @param share share of them that is financed
 * @param firstYear first year of purchases that it covers
 * @param lastYear last year of purchases that it covers
 * @param terms terms
 * @param drawn the sum that was drawn before the base year; empty for what is borrowed for purchases of the plan
 */
public record Financing(String name, Covers covers, double share, int firstYear, int lastYear, Borrowing terms,
        Optional<Drawn> drawn) {

    /**
     * A debt of the years before the base year.
     *
     * @param year year at whose start it was drawn; negative
     * @param sum sum drawn, money of that time
     */
    public record Drawn(int year, double sum) {
    }

    /** What is borrowed for purchases of the plan. */
    public Financing(String name, Covers covers, double share, int firstYear, int lastYear, Borrowing terms) {
        this(name, covers, share, firstYear, lastYear, terms, Optional.empty());
    }

    /** Kinds of purchases that can be financed. */
    public enum Covers {
        /** Buses; packs that are replaced are paid in cash. */
        BUSES,
        /** Ports and site works, and their renewal. */
        PORTS_AND_WORKS,
        /** Both. */
        ALL;

        /** True when buses are covered. */
        public boolean buses() {
            return this != PORTS_AND_WORKS;
        }

        /** True when ports and site works are covered. */
        public boolean infrastructure() {
            return this != BUSES;
        }
    }

    public Financing {
        Checks.positive("Share financed", share);
        Checks.notNegative("Share paid in cash", 1 - share);
    }

    /** True when it covers purchases of a year. */
    public boolean paysIn(int year) {
        return drawn.isEmpty() && year >= firstYear && year <= lastYear;
    }
}
