package org.amberyard.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Which columns of a meter's file hold what. Long files have a row for each interval, with its moment in one column or in two,
 * date and time, and a column of kW or kWh. Wide files have a row for each day, with its date and a column for each clock time;
 * there the header of the date says the unit. Columns of anything else are passed over.
 *
 * @param date column of the date, or of date and time together
 * @param time column of a time apart from the date, or -1
 * @param values columns of loads from left to right
 * @param valueMinutes clock times of the columns of loads; empty in long files
 * @param unit unit of the loads
 * @param ends true when a header says that times are those of the interval's end, false when it says start, empty when none does
 */
record MeterColumns(int date, int time, List<Integer> values, List<Integer> valueMinutes, MeterUnit unit, Optional<Boolean> ends) {
    private static final List<String> MOMENT_WORDS = List.of("date", "datetime", "timestamp", "interval", "start", "end", "time");

    /** @throws ImportException when the headers do not say enough */
    static MeterColumns of(CsvTable sheet) throws ImportException {
        ProblemList problems = new ProblemList(sheet.file());
        List<List<String>> words = sheet.header().stream().map(MeterColumns::words).toList();
        OptionalInt moment = first(words, w -> MOMENT_WORDS.stream().anyMatch(w::contains) && !w.equals(List.of("time")));
        if (moment.isEmpty()) {
            problems.add(1, "", "A column of dates and times is missing, such as interval_start.");
            problems.refuseIfAny();
        }
        int date = moment.getAsInt();
        List<Integer> clocks = IntStream.range(0, words.size()).filter(i -> MeterClock.minutes(sheet.header().get(i)).isPresent())
                .boxed().toList();
        if (!clocks.isEmpty()) {
            MeterUnit unit = unit(words.get(date), sheet.header().get(date), problems);
            return new MeterColumns(date, -1, clocks, clocks.stream()
                    .map(i -> MeterClock.minutes(sheet.header().get(i)).orElseThrow()).toList(), unit, ends(words.get(date)));
        }
        int value = value(words, problems);
        int time = isBareDate(sheet, date) ? first(words, w -> w.contains("time") && !w.contains("date")).orElse(-1) : -1;
        return new MeterColumns(date, time, List.of(value), List.of(),
                unit(words.get(value), sheet.header().get(value), problems), ends(words.get(time < 0 ? date : time)));
    }

    /** True when the dates need a column of times beside them. */
    private static boolean isBareDate(CsvTable sheet, int date) {
        List<String> cells = sheet.rows().stream().map(r -> r.get(date)).filter(c -> !c.isEmpty()).limit(1).toList();
        return cells.stream().anyMatch(c -> MeterClock.of(cells).date(c).isPresent());
    }

    private static Optional<Boolean> ends(List<String> words) {
        return words.contains("end") || words.contains("ending") ? Optional.of(true)
                : words.contains("start") || words.contains("begin") || words.contains("beginning") ? Optional.of(false)
                : Optional.empty();
    }

    private static int value(List<List<String>> words, ProblemList problems) throws ImportException {
        List<Integer> loads = IntStream.range(0, words.size())
                .filter(i -> words.get(i).contains("kw") || words.get(i).contains("kwh")).boxed().toList();
        if (loads.size() != 1) {
            problems.add(1, "", loads.isEmpty()
                    ? "No column says that it holds kW or kWh; name that of the loads load_kw or load_kwh, whichever it is."
                    : "There are " + loads.size() + " columns of kW or kWh; remove those that are not the building's load.");
            problems.refuseIfAny();
        }
        return loads.get(0);
    }

    private static MeterUnit unit(List<String> words, String header, ProblemList problems) throws ImportException {
        if (!words.contains("kw") && !words.contains("kwh")) {
            problems.add(1, header, "The file does not say whether its loads are kW or kWh; name the column of dates date_kw or "
                    + "date_kwh, whichever they are.");
            problems.refuseIfAny();
        }
        return words.contains("kwh") ? MeterUnit.KWH : MeterUnit.KW;
    }

    private static OptionalInt first(List<List<String>> words, Predicate<List<String>> wanted) {
        return IntStream.range(0, words.size()).filter(i -> wanted.test(words.get(i))).findFirst();
    }

    private static List<String> words(String header) {
        return Arrays.stream(header.toLowerCase(Locale.ROOT).split("[^a-z]+")).filter(w -> !w.isEmpty()).toList();
    }

    boolean isWide() {
        return !valueMinutes.isEmpty();
    }
}
