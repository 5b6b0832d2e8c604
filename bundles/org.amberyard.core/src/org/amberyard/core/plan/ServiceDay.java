package org.amberyard.core.plan;

/** What the routes do on a day. */
public enum ServiceDay {
    /** School is on: routes are driven. */
    SCHOOL("school day"),
    /** The extended-year programme is on: its runs are driven. */
    EXTENDED_YEAR("extended-year day"),
    /** A weekend or a day in holidays: no route is driven. */
    OTHER("day without routes");

    private final String label;

    ServiceDay(String label) {
        this.label = label;
    }

    /** Words for tables. */
    public String label() {
        return label;
    }
}
