package org.amberyard.batch;

import java.util.List;
import java.util.function.Supplier;

/** Looks for texts that were given out with other figures. A table that cannot be made for that must not keep results back. */
final class StaleTexts {
    private StaleTexts() {
    }

    /** What looking finds; where it cannot be looked, says so and finds nothing. */
    static <T> List<T> found(Supplier<List<T>> looking, Console console) {
        try {
            return looking.get();
        } catch (RuntimeException e) {
            console.err().println("Whether texts that were given out have other figures now cannot be told: " + e.getMessage());
            return List.of();
        }
    }
}
