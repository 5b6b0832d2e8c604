package org.amberyard.study;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.meta.SourceNotes;

/**
 * Which logs of a type take part in a fit.
 *
 * @param from first day; a log without a day takes no part where a day is asked for
 * @param until last day, likewise
 * @param source where the logs are from, as their note says it; empty for all
 * @param bus the bus that was driven; empty for all, also those of which nobody knows
 */
public record LogChoice(Optional<LocalDate> from, Optional<LocalDate> until, Optional<String> source, Optional<Bus> bus) {
    /** Every log. */
    public static final LogChoice ALL = new LogChoice(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Where a log is from, in the words of its note; empty where nobody has said. */
    public static String source(ConsumptionLog log) {
        return SourceNotes.find(log, SourceNotes.EVERY_FIELD).map(n -> n.getCitation()).filter(Objects::nonNull).orElse("");
    }

    boolean takes(ConsumptionLog log) {
        return takesDay(IsoDay.of(log.getDate())) && source.map(s -> s.equals(source(log))).orElse(true)
                && bus.map(b -> b == log.getBus()).orElse(true);
    }

    private boolean takesDay(Optional<LocalDate> day) {
        return from.map(f -> day.isPresent() && !day.get().isBefore(f)).orElse(true)
                && until.map(u -> day.isPresent() && !day.get().isAfter(u)).orElse(true);
    }
}
