package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.model.study.Study;

/**
 * Readings of one bus's odometer in the order of their dates.
 *
 * @param readings those entries of a log that have one
 */
record OdometerReadings(List<Reading> readings) {
    static final String ODOMETER = "odometer";
    private static final double DAYS_PER_YEAR = 365.25;
    /** More than a school bus can drive, km a day; a digit is wrong. */
    private static final double MOST_KM_PER_DAY = 1200;
    private static final int SHORTEST_DAYS = 180;

    /**
     * A reading.
     *
     * @param row number of its row in the file
     */
    record Reading(int row, LocalDate date, double km) {
    }

    /** The readings of a bus, of which none may go back or leap. */
    static OdometerReadings of(List<BusLog.Entry> entries, SheetOutcome outcome) {
        List<Reading> readings = new ArrayList<>();
        for (BusLog.Entry entry : entries) {
            outcome.attempt(entry.row(), () -> {
                OptionalDouble km = entry.row().number(ODOMETER);
                if (km.isPresent()) {
                    Reading reading = new Reading(entry.row().number(), entry.date(), km.getAsDouble());
                    hold(entry.row(), readings, reading, outcome.study());
                    readings.add(reading);
                }
            });
        }
        return new OdometerReadings(readings);
    }

    private static void hold(MappedRow row, List<Reading> before, Reading reading, Study study) throws CellFault {
        if (reading.km() < 0) {
            throw row.fault(ODOMETER, "a reading of at least 0");
        }
        if (before.isEmpty()) {
            return;
        }
        Reading last = before.get(before.size() - 1);
        String since = WholeFigures.distance(last.km(), study) + " on " + last.date();
        if (reading.km() < last.km()) {
            throw row.wrong(ODOMETER, "The reading of " + WholeFigures.distance(reading.km(), study) + " is below that of " + since
                    + " in row " + last.row() + ": digits swapped, or a new odometer? Mend it, or leave readings of before the change out.");
        }
        long days = Math.max(1, ChronoUnit.DAYS.between(last.date(), reading.date()));
        if (reading.km() - last.km() > MOST_KM_PER_DAY * days) {
            throw row.wrong(ODOMETER,
                    "The reading of " + WholeFigures.distance(reading.km(), study) + " is " + WholeFigures.distance(reading.km() - last.km(), study)
                            + " above that of "
                            + since + " in row " + last.row() + ", more than a bus drives in " + days + (days == 1 ? " day" : " days") + "; is a digit wrong?");
        }
    }

    /** Says so where a reading is below the one that the study has of the bus. */
    static void tellBelow(int row, double km, String bus, double knownKm, SheetOutcome outcome) {
        if (km < knownKm) {
            outcome.remark("Row " + row + ": the reading of " + WholeFigures.distance(km, outcome.study()) + " of " + bus + " is below the "
                    + WholeFigures.distance(knownKm, outcome.study()) + " that the study has; is it an earlier one, or from a new odometer?");
        }
    }

    /** Distance from the first reading to the last, km. */
    double km() {
        return readings.isEmpty() ? 0 : readings.get(readings.size() - 1).km() - readings.get(0).km();
    }

    /** Distance of a year at the pace of the readings, km; empty where they span less than half a year. */
    OptionalDouble kmPerYear() {
        if (readings.isEmpty()) {
            return OptionalDouble.empty();
        }
        long days = ChronoUnit.DAYS.between(readings.get(0).date(), readings.get(readings.size() - 1).date());
        return days < SHORTEST_DAYS ? OptionalDouble.empty() : OptionalDouble.of(km() * DAYS_PER_YEAR / days);
    }
}
