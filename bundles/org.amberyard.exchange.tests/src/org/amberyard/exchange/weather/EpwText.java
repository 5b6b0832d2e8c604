package org.amberyard.exchange.weather;

import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;

/** Makes EPW files for tests, of invented weather at an invented place. */
final class EpwText {
    private LocalDate first = LocalDate.of(2025, 1, 1);
    private LocalDate last = LocalDate.of(2025, 12, 31);
    private String startDay = "Wednesday";
    private String holidays = "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,1,New year, 1/ 1";
    private Function<LocalDate, LocalDate> dated = Function.identity();
    private ToDoubleBiFunction<LocalDate, Integer> air = EpwText::air;
    private ToDoubleBiFunction<LocalDate, Integer> sun = (d, h) -> h > 6 && h <= 18 ? 300 : 0;

    /** Lowest at 6 h and highest at 15 h, 10 degrees apart; the lows rise by a degree a month from -5. */
    static double air(LocalDate day, int hour) {
        double low = day.getMonthValue() - 6;
        return hour == 6 ? low : hour == 15 ? low + 10 : low + 5;
    }

    EpwText from(LocalDate day) {
        first = day;
        return this;
    }

    EpwText to(LocalDate day) {
        last = day;
        return this;
    }

    EpwText startDay(String word) {
        startDay = word;
        return this;
    }

    EpwText holidays(String record) {
        holidays = record;
        return this;
    }

    EpwText dated(Function<LocalDate, LocalDate> change) {
        dated = change;
        return this;
    }

    EpwText air(ToDoubleBiFunction<LocalDate, Integer> celsius) {
        air = celsius;
        return this;
    }

    EpwText sun(ToDoubleBiFunction<LocalDate, Integer> whPerM2) {
        sun = whPerM2;
        return this;
    }

    String text() {
        StringBuilder text = new StringBuilder("LOCATION,Ostrick Vale,OS,XXX,Invented,999999,41.50,-93.50,-6.0,290.0\n"
                + "DESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\n" + holidays
                + "\nCOMMENTS 1,Made for a test\nCOMMENTS 2,\nDATA PERIODS,1,1,Data," + startDay + ", 1/ 1,12/31\n");
        first.datesUntil(last.plusDays(1)).forEach(day -> {
            LocalDate date = dated.apply(day);
            for (int hour = 1; hour <= 24; hour++) {
                text.append(String.format(Locale.ROOT, "%d,%d,%d,%d,60,?9?9?9,%.1f,0.0,50,99000,0,0,9999,%.0f,0,0,999999,999999,999999,9999,"
                        + "180,3.0,5,5,9999,99999,9,999999999,999,.999,999,99,999,999,99%n", date.getYear(), date.getMonthValue(),
                        date.getDayOfMonth(), hour, air.applyAsDouble(day, hour), sun.applyAsDouble(day, hour)));
            }
        });
        return text.toString();
    }
}
