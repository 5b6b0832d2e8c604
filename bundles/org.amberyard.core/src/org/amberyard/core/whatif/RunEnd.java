package org.amberyard.core.whatif;

/**
 * How a run ended.
 *
 * @param draws draws whose results were handed on, from draw 0 on without a gap, those of earlier runs included
 * @param reason why it ended
 */
public record RunEnd(int draws, Reason reason) {

    /** Why a run ended. */
    public enum Reason {
        /** All draws are done. */
        COMPLETE,
        /** The draws so far are enough. */
        ENOUGH,
        /** Nobody wants more of it. */
        CANCELLED
    }
}
