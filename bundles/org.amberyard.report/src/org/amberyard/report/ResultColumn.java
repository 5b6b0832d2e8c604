package org.amberyard.report;

/**
 * A column of a result table.
 *
 * @param name name for programs; does not change with units or wording
 * @param label name for people
 * @param unit symbol of the unit in which its figures stand; empty for text
 * @param type kind of its cells
 * @param meaning what it holds, in a sentence
 */
public record ResultColumn(String name, String label, String unit, Type type, String meaning) {

    /** Kinds of cells. */
    public enum Type {
        /** Words. */
        TEXT,
        /** Figures of which each has a unit of its own, with it. */
        FIGURE,
        /** Whole numbers. */
        INTEGER,
        /** Numbers. */
        NUMBER,
        /** Amounts of money. */
        MONEY
    }

    /** The label with the unit, for example {@code Distance (mi)}; years and counts say enough by their label. */
    public String header() {
        return unit.isEmpty() || type == Type.INTEGER ? label : label + " (" + unit + ")";
    }
}
