package org.amberyard.exchange;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The readings of a meter's file, in the order of the file.
 *
 * @param file name of the file
 * @param form where the file says what its numbers are
 * @param unit unit of the readings
 * @param stepMin length of the intervals, minutes
 * @param ownMin length of the intervals of the file, of which several may make one, minutes
 * @param ends true when the file stamps intervals with their ends
 * @param readings readings
 */
record MeterFile(String file, MeterForm form, MeterUnit unit, int stepMin, int ownMin, boolean ends, List<MeterReading> readings) {
    private static final Pattern NUMBER = Pattern.compile("\\d+\\.?\\d*|\\.\\d+");
    private static final int DAY_MIN = 1440;

    /** @throws ImportException when anything in the file is not understood */
    static MeterFile read(Path path) throws ImportException {
        CsvTable sheet = CsvTable.read(path);
        MeterColumns columns = MeterColumns.of(sheet);
        ProblemList problems = new ProblemList(sheet.file());
        List<MeterReading> stamped = readings(sheet, columns, problems);
        if (problems.isEmpty() && stamped.isEmpty()) {
            problems.add(0, "", "The file holds no readings.");
        }
        problems.refuseIfAny();
        int stepMin = stepMin(stamped, sheet.file());
        boolean ends = columns.ends().orElseGet(() -> minute(stamped.get(0)) == stepMin);
        List<MeterReading> readings = ends ? stamped.stream()
                .map(r -> new MeterReading(r.start().minusMinutes(stepMin), r.number(), r.row())).toList() : stamped;
        return of(sheet.file(), MeterForm.CSV, columns.unit(), stepMin, ends, readings);
    }

    /**
     * The readings in intervals in which loads are kept; see {@link MeterGrid}.
     *
     * @throws ImportException when none of these intervals is whole
     */
    static MeterFile of(String file, MeterForm form, MeterUnit unit, int ownMin, boolean ends, List<MeterReading> readings) throws ImportException {
        int stepMin = MeterGrid.stepMin(ownMin).orElseThrow(() -> new IllegalArgumentException("no interval for " + ownMin + " min"));
        List<MeterReading> kept = stepMin == ownMin ? readings : MeterGrid.together(readings, ownMin, stepMin, unit);
        if (kept.isEmpty()) {
            throw new ImportException(List.of(new ImportProblem(file, 0, "", "Readings every " + ownMin + " min are put together to intervals of "
                    + stepMin + " min, but a part of each is missing; ask the utility for the whole series.")));
        }
        return new MeterFile(file, form, unit, stepMin, ownMin, ends, kept);
    }

    private static int minute(MeterReading reading) {
        return reading.start().getHour() * 60 + reading.start().getMinute();
    }

    private static List<MeterReading> readings(CsvTable sheet, MeterColumns columns, ProblemList problems) {
        MeterClock clock = MeterClock.of(sheet.rows().stream().map(r -> r.get(columns.date())).toList());
        List<MeterReading> readings = new ArrayList<>();
        for (int i = 0; i < sheet.rows().size(); i++) {
            List<String> cells = sheet.rows().get(i);
            if (cells.stream().allMatch(String::isEmpty)) {
                continue;
            }
            for (int c = 0; c < columns.values().size(); c++) {
                int column = columns.values().get(c);
                Optional<LocalDateTime> moment = moment(cells, columns, c, clock);
                if (moment.isEmpty()) {
                    String text = cells.get(columns.date());
                    problems.add(i + 2, sheet.header().get(columns.date()),
                            "“" + text + "” must be a local date and time such as " + MeterClock.EXAMPLES + ".");
                    break;
                }
                add(readings, moment.get(), cells.get(column), i + 2, sheet.header().get(column), problems);
            }
        }
        return readings;
    }

    private static Optional<LocalDateTime> moment(List<String> cells, MeterColumns columns, int value, MeterClock clock) {
        String date = cells.get(columns.date());
        if (columns.isWide()) {
            Optional<LocalDate> day = clock.date(date);
            return day.map(d -> d.atStartOfDay().plusMinutes(columns.valueMinutes().get(value)));
        }
        return clock.moment(columns.time() < 0 ? date : date + " " + cells.get(columns.time()));
    }

    /** A blank cell is a gap. */
    private static void add(List<MeterReading> readings, LocalDateTime moment, String text, int row, String header,
            ProblemList problems) {
        if (NUMBER.matcher(text).matches()) {
            readings.add(new MeterReading(moment, Double.parseDouble(text), row));
        } else if (!text.isEmpty()) {
            problems.add(row, header, "“" + text + "” must be a number of at least 0, with a point for decimals.");
        }
    }

    private static int stepMin(List<MeterReading> readings, String file) throws ImportException {
        Map<Long, Integer> counts = new HashMap<>();
        for (int i = 1; i < readings.size(); i++) {
            counts.merge(Duration.between(readings.get(i - 1).start(), readings.get(i).start()).toMinutes(), 1,
                    Integer::sum);
        }
        long step = counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey).orElse(0L);
        if (MeterGrid.stepMin(step).isEmpty()) {
            throw new ImportException(List.of(new ImportProblem(file, 0, "", "The readings are mostly " + step
                    + " min apart. " + MeterGrid.objection(step) + ".")));
        }
        return (int) step;
    }

    /** Intervals of a day. */
    int stepsPerDay() {
        return DAY_MIN / stepMin;
    }
}
