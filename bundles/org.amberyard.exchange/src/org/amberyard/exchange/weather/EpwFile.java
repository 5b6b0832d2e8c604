package org.amberyard.exchange.weather;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.amberyard.exchange.BoundedLines;
import org.amberyard.exchange.CsvCells;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.ReadingProgress;

/**
 * Reads an EPW file after the chapter "EnergyPlus Weather File (EPW) Data Dictionary" of the Auxiliary Programs documentation of
 * EnergyPlus: records of the head up to DATA PERIODS, then a row for each hour or part of one. Read are date, hour (1 to 24, told
 * at its end), dry bulb temperature (field N6, missing from 99.9 on) and global horizontal radiation (field N13, missing from
 * 9999 on).
 */
final class EpwFile {
    private static final int MOST_ROWS = 1_000_000;
    private static final int YEAR = 0;
    private static final int MONTH = 1;
    private static final int DAY = 2;
    private static final int HOUR = 3;
    private static final int AIR = 6;
    private static final int SUN = 13;
    private static final double AIR_MISSING = 99.9;
    private static final double SUN_MISSING = 9999;
    /** Names of places in old files are Latin-1; every byte is a character of it. */
    private static final Optional<Charset> CHARSET = Optional.of(StandardCharsets.ISO_8859_1);
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,9}\\.?\\d{0,9}|\\.\\d{1,9})([eE][+-]?\\d)?");

    private final String file;
    private final ProblemList problems;
    private final EpwHeader header;
    private final Map<LocalDate, EpwDay> days = new TreeMap<>();
    private final List<LocalDate> order = new ArrayList<>();

    private EpwFile(String file) {
        this.file = file;
        this.problems = new ProblemList(file);
        this.header = new EpwHeader(problems);
    }

    /**
     * The weather in a file.
     *
     * @throws ImportException when anything in it is not understood
     */
    static EpwYear read(Path path, ReadingProgress progress) throws ImportException {
        EpwFile reading = new EpwFile(path.getFileName().toString());
        try (BoundedLines lines = new BoundedLines(new BufferedInputStream(Files.newInputStream(path)), reading.file, CHARSET)) {
            reading.readHeader(lines);
            reading.problems.refuseIfAny();
            reading.readRows(lines, progress);
        } catch (IOException e) {
            throw ProblemList.refusal(reading.file, 0, "", "The file cannot be read: " + e.getMessage());
        }
        return reading.year();
    }

    private void readHeader(BoundedLines lines) throws IOException, ImportException {
        boolean last = false;
        while (!last && problems.isEmpty()) {
            Optional<String> line = lines.next();
            if (line.isEmpty()) {
                problems.add(0, "", "The file ends before its data: a row that begins with DATA PERIODS is missing.");
                return;
            }
            String text = decoded(line.get());
            last = header.take(lines.row(), CsvCells.of(text).orElse(List.of(text)));
        }
    }

    /** Names of places in new files are UTF-8. */
    private static String decoded(String latin) {
        String text = new String(latin.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
        return text.indexOf('\ufffd') < 0 ? text : latin;
    }

    private void readRows(BoundedLines lines, ReadingProgress progress) throws IOException, ImportException {
        for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
            if (!line.get().isBlank()) {
                row(CsvCells.of(line.get()).orElse(List.of()), lines.row());
            }
            if (lines.row() > MOST_ROWS) {
                throw ProblemList.refusal(file, lines.row(), "", "The file has more than 1,000,000 rows; give fewer years.");
            }
            if (lines.row() % 4096 == 0) {
                progress.step(file, lines.row());
            }
        }
    }

    private void row(List<String> cells, int row) {
        if (cells.size() <= SUN) {
            problems.add(row, "", "The row has " + cells.size() + " cells; a row of EPW data has 32 to 35.");
            return;
        }
        int year = whole(cells, YEAR, "year", 1800, 2200, row);
        int month = whole(cells, MONTH, "month", 1, 12, row);
        int day = whole(cells, DAY, "day", 1, YearMonth.of(year, month).lengthOfMonth(), row);
        whole(cells, HOUR, "hour", 1, 24, row);
        double air = measured(cells, AIR, "dry bulb temperature", AIR_MISSING, -70, 70, "°C", row);
        double sun = measured(cells, SUN, "global horizontal radiation", SUN_MISSING, 0, 2000, "Wh/m²", row);
        if (problems.isEmpty()) {
            LocalDate date = LocalDate.of(year, month, day);
            days.computeIfAbsent(date, d -> {
                order.add(d);
                return new EpwDay(d);
            }).add(air, sun);
        }
    }

    private int whole(List<String> cells, int column, String name, int least, int most, int row) {
        String text = cells.get(column);
        if (text.matches("\\d{1,4}")) {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        problems.add(row, name, "“" + shortened(text) + "” must be a whole number from " + least + " to " + most + ".");
        return least;
    }

    /** A measured value; not a number where the file says that it is missing. */
    private double measured(List<String> cells, int column, String name, double missing, double least, double most, String unit,
            int row) {
        String text = cells.get(column);
        if (text.isEmpty()) {
            return Double.NaN;
        }
        if (NUMBER.matcher(text).matches()) {
            double number = Double.parseDouble(text);
            if (number >= missing) {
                return Double.NaN;
            }
            if (number >= least && number <= most) {
                return number;
            }
        }
        problems.add(row, name, String.format(Locale.ENGLISH, "“%s” must be a number from %,.0f to %,.0f %s, or at least %s where it is "
                + "missing.", shortened(text), least, most, unit, missing == AIR_MISSING ? "99.9" : "9999"));
        return Double.NaN;
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    private EpwYear year() throws ImportException {
        EpwLocation location = header.location();
        int perDay = 24 * header.perHour();
        if (problems.isEmpty() && days.isEmpty()) {
            problems.add(0, "", "The file has no rows of data.");
        }
        days.values().stream().filter(d -> d.records() > perDay).forEach(d -> problems.add(0, "", d.date() + " has " + d.records()
                + " rows but a day has " + perDay + "; remove the doubled rows."));
        problems.refuseIfAny();
        return new EpwYear(file, location, perDay, header.startDay(), header.holidays(), header.otherHolidays(), order,
                List.copyOf(days.values()));
    }
}
