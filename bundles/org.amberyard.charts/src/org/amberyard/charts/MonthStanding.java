package org.amberyard.charts;

import java.util.List;

/** Whether a bus gets through the worst day of a month; the worst comes last. */
enum MonthStanding {
    /** The route does not run in the month. */
    NOT_DRIVEN("not driven"),
    /** No electric bus can be judged on the route. */
    NOT_JUDGED("not judged"),
    /** Passes to the end of the pack's service. */
    FOR_LIFE("passes for life"),
    /** Passes with a new pack, fails with an aged one. */
    NEW_ONLY("fails when aged"),
    /** Fails with a new pack. */
    FAILS("fails");

    private final String label;

    MonthStanding(String label) {
        this.label = label;
    }

    /** Words for tables. */
    String label() {
        return label;
    }

    /** True when there is a margin to tell. */
    boolean judged() {
        return this != NOT_DRIVEN && this != NOT_JUDGED;
    }

    /** The words of a cell, line by line. */
    List<String> lines(String margin) {
        return switch (this) {
            case FOR_LIFE -> List.of(margin);
            case NEW_ONLY -> List.of(margin, "aged");
            case FAILS -> List.of(margin, "fails");
            case NOT_DRIVEN -> List.of("not", "driven");
            case NOT_JUDGED -> List.of("not", "judged");
        };
    }

    /** What a margin of a size means, as the end of a sentence. */
    String sentence(String size) {
        return switch (this) {
            case FOR_LIFE -> size + " left with an aged pack";
            case NEW_ONLY -> size + " short with an aged pack";
            case FAILS -> size + " short with a new pack";
            case NOT_DRIVEN, NOT_JUDGED -> label;
        };
    }
}
