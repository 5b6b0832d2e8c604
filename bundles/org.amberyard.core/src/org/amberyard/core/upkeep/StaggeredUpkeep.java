package org.amberyard.core.upkeep;

/**
 * When in the year the yearly work on a bus falls due. A shop staggers it over the year, so places in the fleet take turns by a
 * stride that reaches every month before one comes again, neighbours months apart. Common practice, no source; the dates of a
 * real shop would replace it.
 */
public final class StaggeredUpkeep {
    /** Has no divisor in common with 12. */
    private static final int STRIDE = 7;

    private StaggeredUpkeep() {
    }

    /**
     * Months by which the clocks of a bus's tasks are ahead of January in the year that it takes a place in the fleet; a yearly
     * task falls due in the month that then remains. The first interval of a task is shorter by this, as when a shop brings a
     * new bus into its turn; nothing is due more often afterwards.
     *
     * @param place place in the fleet, from 0
     */
    public static double headStartMonths(int place) {
        return STRIDE * place % WearYear.MONTHS;
    }
}
