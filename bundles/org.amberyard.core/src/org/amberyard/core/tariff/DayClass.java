package org.amberyard.core.tariff;

/** Kinds of days that tariffs tell apart. */
public enum DayClass {
    /** Monday to Friday, no holiday of the tariff. */
    WEEKDAY("weekday"),
    /** Saturday, no holiday of the tariff. */
    SATURDAY("Saturday"),
    /** Sunday, no holiday of the tariff. */
    SUNDAY("Sunday"),
    /** A holiday of the tariff, on whatever day of the week. */
    HOLIDAY("holiday");

    private final String label;

    DayClass(String label) {
        this.label = label;
    }

    /** Words for tables and charts. */
    public String label() {
        return label;
    }
}
