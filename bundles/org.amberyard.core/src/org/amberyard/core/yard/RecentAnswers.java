package org.amberyard.core.yard;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;

/**
 * Answers to questions that come again: the newest ones, as many as weigh between once and twice what is allowed. Safe for use
 * from several threads; what it gives depends on the question alone.
 *
 * @param <Q> questions, compared by value
 * @param <A> answers
 */
final class RecentAnswers<Q, A> {
    private final long mostWeight;
    private final ToLongFunction<A> weight;
    private final AtomicReference<Kept<Q, A>> kept = new AtomicReference<>(new Kept<>(Map.of()));

    /** Answers since some moment, and those of the time before it. */
    private static final class Kept<Q, A> {
        private final Map<Q, WorkedOnce<A>> before;
        private final Map<Q, WorkedOnce<A>> now = new ConcurrentHashMap<>();
        private final AtomicLong weight = new AtomicLong();

        Kept(Map<Q, WorkedOnce<A>> before) {
            this.before = before;
        }

        Optional<A> fromBefore(Q question) {
            return Optional.ofNullable(before.get(question)).flatMap(WorkedOnce::known);
        }
    }

    /**
     * @param mostWeight weight of answers above which older ones are forgotten
     * @param weight what an answer weighs
     */
    RecentAnswers(long mostWeight, ToLongFunction<A> weight) {
        this.mostWeight = mostWeight;
        this.weight = weight;
    }

    /** The answer to a question, worked out where it is not kept. */
    A to(Q question, Supplier<A> work) {
        Kept<Q, A> current = kept.get();
        A answer = current.now.computeIfAbsent(question, q -> new WorkedOnce<>()).of(() -> {
            A found = current.fromBefore(question).orElseGet(work);
            current.weight.addAndGet(weight.applyAsLong(found));
            return found;
        });
        if (current.weight.get() > mostWeight) {
            kept.compareAndSet(current, new Kept<>(current.now));
        }
        return answer;
    }
}
