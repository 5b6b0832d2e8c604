package org.amberyard.core.funding;

/** What kept an award at what it is. The order is that in which limits are named where several are equally low. */
public enum Limit {
    /** Nothing: what was asked is paid. */
    NONE("paid in full"),
    /** The programme has no award for what is bought. */
    NO_AWARD("no award"),
    /** The plan counts on certain awards only. */
    UNCERTAIN("not counted on"),
    /** The purchase falls outside the years in which it pays. */
    WINDOW("window"),
    /** It may not be combined with a programme that pays already. */
    EXCLUSION("exclusion"),
    /** The purchase fails a condition. */
    CONDITION("condition"),
    /** Most per bus, port, work or training. */
    CAP("cap"),
    /** Programmes together pay no more than the cost. */
    COST("eligible cost"),
    /** What a programme wants from elsewhere. */
    MATCH("match"),
    /** Most buses. */
    BUS_COUNT("bus count"),
    /** Most money for a year. */
    YEAR_BUDGET("budget of the year"),
    /** Most money in all. */
    BUDGET("budget"),
    /** Tax of the operator that a credit can be set against. */
    TAX("tax of the operator");

    private final String label;

    Limit(String label) {
        this.label = label;
    }

    /** Name for tables. */
    public String label() {
        return label;
    }

    /** True when the programme does not take part in the line at all. */
    public boolean refuses() {
        return this == NO_AWARD || this == UNCERTAIN || this == WINDOW || this == EXCLUSION || this == CONDITION;
    }
}
