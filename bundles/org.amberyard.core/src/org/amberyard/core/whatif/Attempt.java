package org.amberyard.core.whatif;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletionException;

/** What work on another thread came to: its result, or what it threw, as it was thrown. */
record Attempt<T>(T result, Throwable failure) {

    static <T> Attempt<T> of(Callable<T> work) {
        try {
            return new Attempt<>(work.call(), null);
        } catch (Exception | Error e) {
            return new Attempt<>(null, e);
        }
    }

    /** The result; throws what the work threw. */
    T get() {
        if (failure instanceof Error error) {
            throw error;
        }
        if (failure instanceof RuntimeException exception) {
            throw exception;
        }
        if (failure != null) {
            throw new CompletionException(failure);
        }
        return result;
    }
}
