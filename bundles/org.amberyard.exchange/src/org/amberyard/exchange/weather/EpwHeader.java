package org.amberyard.exchange.weather;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.exchange.ProblemList;

/** The records at the head of an EPW file, of which place, holidays and the period of the data are read. */
final class EpwHeader {
    private static final String LOCATION = "LOCATION";
    private static final String HOLIDAYS = "HOLIDAYS/DAYLIGHT SAVING";
    private static final String PERIODS = "DATA PERIODS";
    private static final int MOST_RECORDS = 50;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,6}\\.?\\d{0,9}|\\.\\d{1,9})");
    private static final Pattern MONTH_DAY = Pattern.compile("\\s*(\\d{1,2})\\s*/\\s*(\\d{1,2})\\s*");

    private final ProblemList problems;
    private final Map<String, List<String>> records = new HashMap<>();
    private final Map<String, Integer> rows = new HashMap<>();

    EpwHeader(ProblemList problems) {
        this.problems = problems;
    }

    /** Takes a record of the head; true when it was the last. */
    boolean take(int row, List<String> cells) {
        String name = cells.get(0).toUpperCase(Locale.ROOT);
        String key = name.startsWith(HOLIDAYS) ? HOLIDAYS : name;
        records.putIfAbsent(key, cells);
        rows.putIfAbsent(key, row);
        if (row == 1 && !key.equals(LOCATION)) {
            problems.add(1, "", "The file is no EPW: its first row must begin with LOCATION but begins with “" + shortened(cells.get(0))
                    + "”.");
        }
        if (row > MOST_RECORDS) {
            problems.add(row, "", "The head of the file has no row that begins with DATA PERIODS.");
        }
        return key.equals(PERIODS);
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    /** The place; problems are told where it is not understood. */
    EpwLocation location() {
        List<String> cells = records.getOrDefault(LOCATION, List.of());
        if (cells.size() < 10) {
            problems.add(1, LOCATION, "The row must have 10 cells: LOCATION, city, region, country, source, station, latitude, longitude, "
                    + "time zone and elevation; it has " + cells.size() + ".");
            return new EpwLocation("", "", "", 0, 0);
        }
        return new EpwLocation(cells.get(1), cells.get(2), cells.get(5), number(cells.get(6), "latitude", -66, 66, "degrees"),
                number(cells.get(9), "elevation", -430, 4500, "m"));
    }

    private double number(String text, String column, double least, double most, String unit) {
        if (NUMBER.matcher(text).matches() && Double.parseDouble(text) >= least && Double.parseDouble(text) <= most) {
            return Double.parseDouble(text);
        }
        problems.add(1, column, String.format(Locale.ENGLISH, "“%s” must be a number from %,.0f to %,.0f %s.", shortened(text), least,
                most, unit));
        return 0;
    }

    /** Records in an hour. */
    int perHour() {
        List<String> cells = records.getOrDefault(PERIODS, List.of());
        String text = cells.size() > 2 ? cells.get(2) : "";
        if (text.matches("\\d{1,2}") && Integer.parseInt(text) >= 1 && 60 % Integer.parseInt(text) == 0) {
            return Integer.parseInt(text);
        }
        problems.add(rows.getOrDefault(PERIODS, 0), PERIODS, "“" + shortened(text) + "” must be the number of records in an hour, "
                + "1 to 60.");
        return 1;
    }

    /** Day of the week on which the data start; empty where it is not told. */
    Optional<DayOfWeek> startDay() {
        List<String> cells = records.getOrDefault(PERIODS, List.of());
        String text = cells.size() > 4 ? cells.get(4) : "";
        return Arrays.stream(DayOfWeek.values()).filter(d -> d.name().equalsIgnoreCase(text)).findFirst();
    }

    /** Holidays told as month and day. */
    Set<MonthDay> holidays() {
        Set<MonthDay> days = new HashSet<>();
        holidayTexts().forEach(t -> monthDay(t).ifPresent(days::add));
        return days;
    }

    /** Holidays told in other ways, which are not understood. */
    List<String> otherHolidays() {
        return holidayTexts().stream().filter(t -> monthDay(t).isEmpty()).toList();
    }

    /** Behind the names of the holidays. */
    private List<String> holidayTexts() {
        List<String> cells = records.getOrDefault(HOLIDAYS, List.of());
        List<String> texts = new ArrayList<>();
        for (int i = 6; i < cells.size(); i += 2) {
            if (!cells.get(i).isBlank()) {
                texts.add(cells.get(i));
            }
        }
        return texts;
    }

    private static Optional<MonthDay> monthDay(String text) {
        Matcher found = MONTH_DAY.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        int month = Integer.parseInt(found.group(1));
        int day = Integer.parseInt(found.group(2));
        return month >= 1 && month <= 12 && day >= 1 && day <= Month.of(month).maxLength()
                ? Optional.of(MonthDay.of(month, day)) : Optional.empty();
    }
}
