package org.amberyard.core.yard;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * An answer that is worked out once. Others who ask meanwhile wait for it, but nobody who asks something else: a map that works
 * answers out itself would hold up whoever asks for another in the same place. Safe for use from several threads.
 *
 * @param <A> the answer
 */
final class WorkedOnce<A> {
    private volatile A answer;

    /** The answer, worked out where it is not known. */
    A of(Supplier<A> work) {
        if (answer == null) {
            synchronized (this) {
                if (answer == null) {
                    answer = work.get();
                }
            }
        }
        return answer;
    }

    /** The answer, if it is known. */
    Optional<A> known() {
        return Optional.ofNullable(answer);
    }
}
