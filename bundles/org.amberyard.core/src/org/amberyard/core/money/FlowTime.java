package org.amberyard.core.money;

/** When in its year a cost falls. */
public enum FlowTime {
    /** At the start of the year: purchases, sales, grants. */
    START,
    /** Over the year: at its end, or in its middle when the study says so. */
    RUNNING,
    /** At the end of the last year of the study: what is left then. */
    END;

    /** Time of the flow after the base date, years. */
    public double years(int year, boolean midYear) {
        return switch (this) {
            case START -> year;
            case RUNNING -> year + (midYear ? 0.5 : 1.0);
            case END -> year + 1.0;
        };
    }
}
