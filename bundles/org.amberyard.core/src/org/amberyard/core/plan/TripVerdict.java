package org.amberyard.core.plan;

/** Whether the bus in a place can cover a trip, and if not, the first thing that keeps it from it. */
public enum TripVerdict {
    /** It can. */
    CAN("can"),
    /** No bus stands in the place that year. */
    NO_BUS("no bus"),
    /** The bus has another body type than the riders need. */
    BODY("body type does not fit"),
    /** The trip departs while the bus drives a run of its own. */
    ON_OWN_RUN("on its own run at that time"),
    /** The trip ends after the next departure of the bus on a run of its own, the same day or the next morning. */
    BACK_TOO_LATE("does not get back before its own next run"),
    /** The pack falls below the reserve on the trip or on a run of the bus's own that day. */
    CHARGE("not enough charge"),
    /** The night leaves the pack with too little for the bus's own runs of the next day. */
    NOT_READY("not ready next morning");

    private final String label;

    TripVerdict(String label) {
        this.label = label;
    }

    /** Words for tables. */
    public String label() {
        return label;
    }
}
