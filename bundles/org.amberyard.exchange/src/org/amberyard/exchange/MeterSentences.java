package org.amberyard.exchange;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.common.Month;

/** What was read from a meter's file, and what had to be assumed, in sentences. */
final class MeterSentences {
    private static final int MOST_LISTED = 4;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private MeterSentences() {
    }

    static List<String> of(MeterFile file, MeterYear year) {
        List<String> sentences = new ArrayList<>();
        sentences.add(String.format(Locale.ROOT, "%,d readings every %d min in %s, from %s to %s, stamped with the %s of each interval.",
                file.readings().size(), file.stepMin(), file.unit().label(), day(year.days().iterator().next()),
                day(last(year)), file.ends() ? "end" : "start"));
        if (file.ownMin() != file.stepMin()) {
            sentences.add("They are those of every " + file.ownMin() + " min, " + (file.unit() == MeterUnit.KW ? "averaged" : "summed")
                    + "; where a part is missing, the whole interval is.");
        }
        MeterDay peak = year.days().stream().max(Comparator.comparingDouble(MeterDay::peakKw)).orElseThrow();
        sentences.add(String.format(Locale.ROOT, "The highest load is %.1f kW, on %s.", peak.peakKw(), day(peak)));
        clock(year).ifPresent(sentences::add);
        gaps(year).ifPresent(sentences::add);
        months(year).ifPresent(sentences::add);
        return sentences;
    }

    private static MeterDay last(MeterYear year) {
        return year.days().stream().reduce((a, b) -> b).orElseThrow();
    }

    private static String day(MeterDay day) {
        return DAY.format(day.date());
    }

    private static Optional<String> clock(MeterYear year) {
        List<MeterDay> back = year.days().stream().filter(MeterDay::isClockPutBack).toList();
        List<MeterDay> forward = year.days().stream().filter(MeterDay::isClockPutForward).toList();
        if (back.isEmpty() && forward.isEmpty()) {
            return Optional.empty();
        }
        String days = Stream.concat(back.stream(), forward.stream()).map(d -> day(d) + " has " + d.readings() + " readings")
                .collect(Collectors.joining(" and "));
        return Optional.of(days + ": times are those of the local clock. The hour that came twice counts by its mean, and "
                + "the hour that was left out is left out of the means.");
    }

    private static Optional<String> gaps(MeterYear year) {
        List<MeterDay> holed = year.days().stream().filter(d -> d.missing() > 0 && !d.isClockPutForward()).toList();
        int missing = holed.stream().mapToInt(MeterDay::missing).sum();
        long absent = absentDays(year);
        if (missing == 0 && absent == 0) {
            return Optional.empty();
        }
        String where = holed.stream().limit(MOST_LISTED).map(MeterSentences::day).collect(Collectors.joining(", "));
        return Optional.of((missing > 0 ? missing + " readings are missing, on " + where
                + (holed.size() > MOST_LISTED ? " and " + (holed.size() - MOST_LISTED) + " more days" : "") : "")
                + (missing > 0 && absent > 0 ? ", and " : "") + (absent > 0 ? absent + (absent == 1 ? " whole day is missing" : " whole days are missing") : "")
                + "; the means of the other days of their month stand in, so the load is partly estimated.");
    }

    /** Days without reading between the first and the last, in months that have readings. */
    private static long absentDays(MeterYear year) {
        Set<LocalDate> read = year.days().stream().map(MeterDay::date).collect(Collectors.toSet());
        Set<YearMonth> months = read.stream().map(YearMonth::from).collect(Collectors.toSet());
        return year.days().iterator().next().date().datesUntil(last(year).date())
                .filter(d -> months.contains(YearMonth.from(d)) && !read.contains(d)).count();
    }

    private static Optional<String> months(MeterYear year) {
        String missing = Month.VALUES.stream().filter(m -> year.days(m).isEmpty()).map(Month::getLiteral)
                .collect(Collectors.joining(", "));
        return missing.isEmpty() ? Optional.empty() : Optional.of("There are no readings of " + missing
                + "; import them too, or enter the bills of these months.");
    }
}
