package org.amberyard.core.yard;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Years of yards that are known from this evaluation or the one before, so that an edit that leaves a yard as it is does not
 * charge its buses again. Safe for use from several threads; what it gives depends on the question alone.
 */
public final class YardMemory {
    private final Map<YardInput, YardYear> before;
    private final Map<YardInput, YardYear> now = new ConcurrentHashMap<>();

    /** Nothing is known. */
    public YardMemory() {
        this(Map.of());
    }

    private YardMemory(Map<YardInput, YardYear> before) {
        this.before = before;
    }

    /** Memory for the next evaluation: it knows what was asked in this one. */
    public YardMemory next() {
        return new YardMemory(Map.copyOf(now));
    }

    /** A year of a yard. */
    public YardYear year(YardInput input) {
        return now.computeIfAbsent(input, i -> before.containsKey(i) ? before.get(i) : YardYear.of(i));
    }
}
