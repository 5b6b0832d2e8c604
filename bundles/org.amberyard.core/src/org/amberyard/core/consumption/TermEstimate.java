package org.amberyard.core.consumption;

import java.util.Optional;

/**
 * What the logs say about one part of the curve.
 *
 * @param term the part
 * @param value its value, in the unit of the part
 * @param standing where the value comes from
 * @param interval95 where the true value lies with 95 % confidence; only for a value within its bounds
 */
public record TermEstimate(CurveTerm term, double value, Standing standing, Optional<Interval> interval95) {

    /** Where a value comes from. */
    public enum Standing {
        /** Fitted to the logs. */
        FITTED,
        /** Zero, because any value above zero fits the logs worse. */
        AT_ZERO,
        /** Given beforehand, not fitted. */
        GIVEN,
        /** Zero, because no log reaches the temperatures where it shows. */
        NOT_SEEN
    }
}
