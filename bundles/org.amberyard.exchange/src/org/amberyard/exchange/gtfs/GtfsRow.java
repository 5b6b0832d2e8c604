package org.amberyard.exchange.gtfs;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.exchange.ProblemList;

/** A row of a table of a schedule; what is wrong in its cells is told with file, row and column. */
final class GtfsRow {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d{1,12}\\.?\\d{0,18}|\\.\\d{1,18})([eE][+-]?\\d{1,2})?");
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2}):(\\d{2})");
    private static final Pattern DATE = Pattern.compile("(\\d{4})(\\d{2})(\\d{2})");
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2099;
    /** Three days after the service day begins. */
    private static final int MOST_HOURS = 72;
    private static final int MOST_SHOWN = 40;

    private final String file;
    private final int row;
    private final Map<String, Integer> columns;
    private final List<String> cells;
    private final ProblemList problems;

    GtfsRow(String file, int row, Map<String, Integer> columns, List<String> cells, ProblemList problems) {
        this.file = file;
        this.row = row;
        this.columns = columns;
        this.cells = cells;
        this.problems = problems;
    }

    int row() {
        return row;
    }

    /** Text of a cell; blank where the cell or its column is missing. */
    String text(String column) {
        int place = columns.getOrDefault(column, Integer.MAX_VALUE);
        return place < cells.size() ? cells.get(place) : "";
    }

    /** Text of a cell that must not be blank. */
    String needed(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            refuse(column, "The cell is empty; it must not be.");
        }
        return text;
    }

    /** A whole number that is needed. */
    int whole(String column, int least, int most) {
        String text = text(column);
        if (text.matches("\\d{1,9}")) {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        refuse(column, String.format(Locale.ENGLISH, "%s must be a whole number from %,d to %,d.", shown(text), least, most));
        return least;
    }

    /** A number that is needed. */
    double decimal(String column, double least, double most) {
        String text = text(column);
        if (DECIMAL.matcher(text).matches()) {
            double number = Double.parseDouble(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        refuse(column, String.format(Locale.ENGLISH, "%s must be a number from %,.0f to %,.0f.", shown(text), least, most));
        return least;
    }

    /** A number from 0 on that may be left out: not a number then. */
    double decimalOrNone(String column) {
        return text(column).isEmpty() ? Double.NaN : decimal(column, 0, 1e9);
    }

    /** Seconds after the service day began; empty where the cell is. Hours go on after 24. */
    OptionalInt timeS(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        Matcher time = TIME.matcher(text);
        if (time.matches()) {
            int hours = Integer.parseInt(time.group(1));
            int minutes = Integer.parseInt(time.group(2));
            int seconds = Integer.parseInt(time.group(3));
            if (hours < MOST_HOURS && minutes < 60 && seconds < 60) {
                return OptionalInt.of(hours * 3600 + minutes * 60 + seconds);
            }
        }
        refuse(column, shown(text) + " must be a time such as 6:35:00, or 25:10:00 for 1:10 of the next day, below 72 h.");
        return OptionalInt.empty();
    }

    /** A date that is needed; empty when it is wrong. */
    Optional<LocalDate> date(String column) {
        Matcher date = DATE.matcher(text(column));
        if (date.matches()) {
            int year = Integer.parseInt(date.group(1));
            try {
                if (year >= FIRST_YEAR && year <= LAST_YEAR) {
                    return Optional.of(LocalDate.of(year, Integer.parseInt(date.group(2)), Integer.parseInt(date.group(3))));
                }
            } catch (DateTimeException e) {
                // Told below, as any text that is no date.
            }
        }
        refuse(column, shown(text(column)) + " must be a date of the years 2000 to 2099 such as 20260901.");
        return Optional.empty();
    }

    private static String shown(String text) {
        return "“" + (text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + "…" : text) + "”";
    }

    /** Tells that a cell is wrong. */
    void refuse(String column, String message) {
        problems.add(file, row, column, message);
    }
}
