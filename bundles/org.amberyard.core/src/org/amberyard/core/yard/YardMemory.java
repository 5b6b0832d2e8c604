package org.amberyard.core.yard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.amberyard.core.progress.Progress;

/**
 * Years of yards, and the ports that plans need, as far as they are known from this evaluation or the one before, so that an edit
 * that leaves a yard as it is does not charge its buses again; what ports cost makes no difference to a yard. Safe for use from several threads; what it gives depends on the
 * question alone.
 */
public final class YardMemory {
    private final Map<YardInput, YardYear> yearsBefore;
    /** Years under policies that go by prices; they ask for those without. */
    private final Map<YardInput, WorkedOnce<YardYear>> priced = new ConcurrentHashMap<>();
    private final Map<YardInput, WorkedOnce<YardYear>> unpriced = new ConcurrentHashMap<>();
    private final Map<PortQuestion, List<PortCurve>> portsBefore;
    private final Map<PortQuestion, List<PortCurve>> ports = new ConcurrentHashMap<>();
    private final LoadMemory loads;

    /** Nothing is known. */
    public YardMemory() {
        this(Map.of(), Map.of(), new LoadMemory());
    }

    private YardMemory(Map<YardInput, YardYear> yearsBefore, Map<PortQuestion, List<PortCurve>> portsBefore, LoadMemory loads) {
        this.yearsBefore = yearsBefore;
        this.portsBefore = portsBefore;
        this.loads = loads;
    }

    /** The years of a yard that are known are these. */
    public static YardMemory knowing(List<YardYear> years) {
        Map<YardInput, YardYear> known = new HashMap<>();
        years.forEach(year -> known.put(year.input().unpriced(), year));
        return new YardMemory(known, Map.of(), new LoadMemory());
    }

    /** Memory that knows what this one knew at first, and nothing that it was asked since. */
    public YardMemory anew() {
        return new YardMemory(yearsBefore, portsBefore, loads);
    }

    /** Number of years that were asked for. */
    public int size() {
        return priced.size() + unpriced.size();
    }

    /** Memory for the next evaluation: it knows what was asked in this one. */
    public YardMemory next() {
        Map<YardInput, YardYear> years = new HashMap<>();
        for (Map<YardInput, WorkedOnce<YardYear>> asked : List.of(priced, unpriced)) {
            asked.forEach((input, year) -> year.known().ifPresent(y -> years.put(input, y)));
        }
        return new YardMemory(years, Map.copyOf(ports), loads);
    }

    /** A year of a yard. */
    public YardYear year(YardInput input) {
        YardInput key = input.unpriced();
        return (input.rule().policy().priced() ? priced : unpriced).computeIfAbsent(key, k -> new WorkedOnce<>())
                .of(() -> fromBefore(key, input)).ofYard(input);
    }

    private YardYear fromBefore(YardInput key, YardInput asked) {
        YardYear before = yearsBefore.get(key);
        return before == null ? worked(asked) : before;
    }

    private YardYear worked(YardInput asked) {
        return asked.rule().policy().priced() ? YardYear.of(asked, new YardPlanner(asked, this).year())
                : YardYear.billed(asked, loads.months(asked));
    }

    /** Loads before prices schedule anything. */
    LoadMemory loads() {
        return loads;
    }

    /** The ports that a plan needs; whoever asks the same meanwhile waits for the answer. */
    List<PortCurve> ports(PortQuestion question, Progress progress) {
        return ports.computeIfAbsent(question, q -> portsBefore.containsKey(q) ? portsBefore.get(q) : q.answer(progress));
    }
}
