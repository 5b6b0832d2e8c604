package org.amberyard.exchange;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;

/**
 * The local clock of a meter: LocalTimeParameters of the Energy Services Provider Interface.
 *
 * @param offsetS standard time ahead of UTC, seconds
 * @param savingS daylight saving time ahead of standard time, seconds
 * @param begins when daylight saving begins; empty when there is none
 * @param ends when it ends; empty when there is none
 */
record EspiClock(long offsetS, long savingS, Optional<DstRule> begins, Optional<DstRule> ends) {
    private static final int MOST_OFFSET_S = 15 * 3600;

    static EspiClock of(Map<String, String> leaves, int line, ProblemList problems) {
        EspiNumbers numbers = new EspiNumbers(leaves, line, problems);
        return new EspiClock(numbers.whole("tzOffset", -MOST_OFFSET_S, MOST_OFFSET_S),
                numbers.whole("dstOffset", -7200, 7200, 0), rule(leaves, "dstStartRule", line, problems),
                rule(leaves, "dstEndRule", line, problems));
    }

    /** Zeros, or ones, stand for no daylight saving. */
    private static Optional<DstRule> rule(Map<String, String> leaves, String name, int line, ProblemList problems) {
        String text = leaves.getOrDefault(name, "");
        if (text.isEmpty() || text.matches("0+|[Ff]+")) {
            return Optional.empty();
        }
        Optional<DstRule> rule = DstRule.of(text);
        if (rule.isEmpty()) {
            problems.add(line, name, "“" + (text.length() > 20 ? text.substring(0, 20) + "…" : text)
                    + "” must be a rule of daylight saving in 8 hexadecimal digits, such as 360E2000.");
        }
        return rule;
    }

    /** What the clock shows at a moment. */
    LocalDateTime local(long epochS) {
        LocalDateTime standard = LocalDateTime.ofEpochSecond(epochS + offsetS, 0, ZoneOffset.UTC);
        return isSaving(standard) ? standard.plusSeconds(savingS) : standard;
    }

    /** The end is told on the clock that is ahead. South of the equator the year begins with daylight saving. */
    private boolean isSaving(LocalDateTime standard) {
        if (savingS == 0 || begins.isEmpty() || ends.isEmpty()) {
            return false;
        }
        LocalDateTime from = begins.get().moment(standard.getYear());
        LocalDateTime to = ends.get().moment(standard.getYear()).minusSeconds(savingS);
        return from.isBefore(to) ? !standard.isBefore(from) && standard.isBefore(to)
                : !standard.isBefore(from) || standard.isBefore(to);
    }
}
