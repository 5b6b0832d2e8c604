package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.LoadDayKind;
import org.amberyard.model.meta.NumberSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeterImportTest {
    private static final LocalDate JULY = LocalDate.of(2025, 7, 1);

    @TempDir
    Path folder;

    private MeterImport read(List<String> lines, BuildingMonth... bills) throws IOException, ImportException {
        return MeterImport.read(Files.write(folder.resolve("meter.csv"), lines), List.of(bills));
    }

    private String refusal(List<String> lines, BuildingMonth... bills) {
        return assertThrows(ImportException.class, () -> read(lines, bills)).getMessage();
    }

    /** 10 kW at night and 30 kW from 8 to 16 h on weekdays, in kWh of intervals, one row each. */
    private static List<String> lines(LocalDate first, int days, int stepMin, String header, Function<LocalDateTime, String> stamp) {
        List<String> lines = new ArrayList<>(List.of(header));
        for (LocalDateTime t = first.atStartOfDay(); t.isBefore(first.plusDays(days).atStartOfDay()); t = t.plusMinutes(stepMin)) {
            lines.add(stamp.apply(t) + "," + kw(t) * stepMin / 60);
        }
        return lines;
    }

    private static double kw(LocalDateTime t) {
        boolean open = t.getDayOfWeek().getValue() <= 5 && t.getHour() >= 8 && t.getHour() < 16;
        return open ? 30 : 10;
    }

    private static List<String> july() {
        return lines(JULY, 31, 15, "interval_start,kwh", t -> t.toString().replace('T', ' '));
    }

    private static BuildingMonth bill(Month month, double energyKwh) {
        BuildingMonth bill = DepotFactory.eINSTANCE.createBuildingMonth();
        bill.setMonth(month);
        bill.setEnergyKwh(energyKwh);
        return bill;
    }

    private static double[] weekday() {
        double[] kw = new double[96];
        Arrays.setAll(kw, s -> s >= 32 && s < 64 ? 30 : 10);
        return kw;
    }

    private static void assertWeekday(BuildingLoadDay day) {
        assertEquals(NumberSeries.text(weekday(), 2), day.getMeanKw());
        assertEquals(day.getMeanKw(), day.getPeakDayKw());
    }

    @Test
    void weekdaysAndWeekendsOfAMonthAreToldApart() throws Exception {
        List<String> lines = july();
        String peak = "2025-07-16 12:00,";
        lines.replaceAll(l -> l.startsWith(peak) ? peak + "20" : l);
        MeterImport read = read(lines);
        assertEquals(2, read.days().size());
        BuildingLoadDay weekday = read.days().get(0);
        assertEquals(LoadDayKind.WEEKDAY, weekday.getDayKind());
        assertEquals(30 + 50.0 / 23, NumberSeries.parse(weekday.getMeanKw())[48], 0.005);
        assertEquals(80, NumberSeries.parse(weekday.getPeakDayKw())[48], 1e-9);
        assertEquals(String.join(" ", Collections.nCopies(96, "10")), read.days().get(1).getMeanKw());
        assertEquals(List.of("2,976 readings every 15 min in kWh, from 1 Jul 2025 to 31 Jul 2025, stamped with the start of each "
                + "interval.", "The highest load is 80.0 kW, on 16 Jul 2025.",
                "There are no readings of January, February, March, April, May, June, August, September, October, November, December; "
                        + "import them too, or enter the bills of these months."),
                read.sentences());
        assertEquals("meter.csv", weekday.getSources().get(0).getCitation());
    }

    @Test
    void endStampsAreKnownByTheirHeaderOrTheFirstOfThem() throws Exception {
        Function<LocalDateTime, String> end = t -> t.plusMinutes(15).toString().replace('T', ' ');
        assertWeekday(read(lines(JULY, 31, 15, "interval_end,kWh", end)).days().get(0));
        assertWeekday(read(lines(JULY, 31, 15, "Timestamp,usage (kWh)", end)).days().get(0));
    }

    @Test
    void americanDatesWithATimeBesideThemAreRead() throws Exception {
        Function<LocalDateTime, String> stamp = t -> t.getMonthValue() + "/" + t.getDayOfMonth() + "/" + t.getYear() + ","
                + (t.getHour() % 12 == 0 ? 12 : t.getHour() % 12) + String.format(":%02d ", t.getMinute())
                + (t.getHour() < 12 ? "AM" : "PM");
        assertWeekday(read(lines(JULY, 31, 15, "Date,Start Time,kWh", stamp)).days().get(0));
    }

    @Test
    void halfHoursInKilowattsWithSemicolonsAreRead() throws Exception {
        List<String> lines = new ArrayList<>(List.of("Datum date;load_kw;quality"));
        lines(JULY, 31, 30, "", t -> String.format("%02d.%02d.%d %02d:%02d", t.getDayOfMonth(), t.getMonthValue(), t.getYear(),
                t.getHour(), t.getMinute())).stream().skip(1).map(l -> l.split(","))
                .forEach(c -> lines.add(c[0] + ";" + Double.parseDouble(c[1]) * 2 + ";measured"));
        double[] mean = NumberSeries.parse(read(lines).days().get(0).getMeanKw());
        assertEquals(48, mean.length);
        assertEquals(30, mean[16], 1e-9);
        assertEquals(10, mean[15], 1e-9);
    }

    @Test
    void daysAsRowsAreRead() throws Exception {
        List<String> lines = new ArrayList<>(List.of("date_kwh," + IntStream.rangeClosed(1, 96)
                .mapToObj(s -> s / 4 + ":" + String.format("%02d", s % 4 * 15)).collect(Collectors.joining(","))));
        for (LocalDate day = JULY; day.getMonthValue() == 7; day = day.plusDays(1)) {
            LocalDateTime start = day.atStartOfDay();
            lines.add(day + "," + IntStream.range(0, 96).mapToObj(s -> String.valueOf(kw(start.plusMinutes(15L * s)) / 4))
                    .collect(Collectors.joining(",")));
        }
        MeterImport read = read(lines);
        assertWeekday(read.days().get(0));
        assertTrue(read.sentences().get(0).endsWith("stamped with the end of each interval."), read.sentences().get(0));
    }

    /** The hour from 1 to 2 h comes twice on 2 November, and that from 2 to 3 h is left out on 8 March. */
    @Test
    void theLocalClockIsKnownByItsChanges() throws Exception {
        List<String> lines = lines(LocalDate.of(2025, 11, 1), 30, 15, "start,kwh", t -> t.toString());
        List<String> hour = lines.stream().filter(l -> l.startsWith("2025-11-02T01")).toList();
        lines.addAll(lines.indexOf(hour.get(3)) + 1, hour.stream().map(l -> l.replace("2.5", "7.5")).toList());
        lines.addAll(lines(LocalDate.of(2026, 3, 1), 31, 15, "", t -> t.toString()).stream().skip(1)
                .filter(l -> !l.startsWith("2026-03-08T02")).toList());
        MeterImport read = read(lines);
        assertTrue(read.sentences().contains("2 Nov 2025 has 100 readings and 8 Mar 2026 has 92 readings: times are those of the "
                + "local clock. The hour that came twice counts by its mean, and the hour that was left out is left out of the means."),
                read.sentences().toString());
        double[] novemberWeekend = NumberSeries.parse(read.days().get(3).getMeanKw());
        assertEquals(10 + 10.0 / 10, novemberWeekend[4], 1e-9);
    }

    @Test
    void doubledRowsAreRefused() {
        List<String> lines = july();
        lines.add(100, lines.get(99));
        assertEquals("meter.csv: 2025-07-02 has more than one reading of the same time; remove the doubled rows.", refusal(lines));
    }

    @Test
    void gapsAreFilledAndTold() throws Exception {
        List<String> lines = july();
        lines.removeIf(l -> l.startsWith("2025-07-10 1") || l.startsWith("2025-07-20"));
        MeterImport read = read(lines);
        assertWeekday(read.days().get(0));
        assertTrue(read.sentences().contains("40 readings are missing, on 10 Jul 2025, and 1 whole day is missing; the means of the "
                + "other days of their month stand in, so the load is partly estimated."), read.sentences().toString());
    }

    @Test
    void anImportOfTheSameMonthSaysWhatChanges() throws Exception {
        Depot depot = DepotFactory.eINSTANCE.createDepot();
        MeterImport first = read(july());
        assertEquals(List.of("building load, July weekday is added: mean 16.67 kW, peak 30.00 kW",
                "building load, July weekend is added: mean 10.00 kW, peak 10.00 kW",
                "days of the meter, by which bills are checked: 31 added or changed, 2025-07-01 to 2025-07-31"), first.changes(depot));
        depot.getBuildingLoadDays().addAll(first.days());
        depot.getMeterDays().addAll(first.dated());
        assertEquals(List.of(), read(july()).changes(depot));
        List<String> lower = july();
        lower.replaceAll(l -> l.replace(",7.5", ",5.0"));
        assertEquals(List.of("building load, July weekday: mean 16.67 kW, peak 30.00 kW → mean 13.33 kW, peak 20.00 kW",
                "days of the meter, by which bills are checked: 23 added or changed, 2025-07-01 to 2025-07-31"), read(lower).changes(depot));
        assertEquals(31, read(lower).replacedDates(depot).size());
    }

    /** A day of which a reading is missing cannot be billed again; the others are kept as they were read. */
    @Test
    void daysThatWereReadWholeAreKeptByDate() throws Exception {
        List<String> gap = july();
        gap.remove(gap.size() - 5);
        MeterImport read = read(gap);
        assertEquals(30, read.dated().size());
        assertEquals("2025-07-01", read.dated().get(0).getDate());
        assertEquals(july().size() - 1, 31 * NumberSeries.parse(read.dated().get(0).getLoadKw()).length);
        assertEquals(400, Arrays.stream(NumberSeries.parse(read.dated().get(0).getLoadKw())).sum() * 24
                / NumberSeries.parse(read.dated().get(0).getLoadKw()).length, 1e-9);
    }

    /** 31 days of 240 kWh and 160 kWh more on each of 23 weekdays are 11,120 kWh. */
    @Test
    void billsTellKilowattsFromKilowattHours() throws Exception {
        assertEquals(3, read(july(), bill(Month.JULY, 11_120)).sentences().size());
        assertEquals("meter.csv, row 1: July sums to 11,120 kWh but 2,780 kWh were billed, a ratio of 4.00: the header says kWh but "
                + "the numbers look like kW. Let the header end in _kw if so, or correct the bills.",
                refusal(july(), bill(Month.JULY, 2780)));
        List<String> wrongHeader = july();
        wrongHeader.set(0, "interval_start,kW");
        assertTrue(refusal(wrongHeader, bill(Month.JULY, 11_120)).contains("a ratio of 0.25: the header says kW but the numbers look "
                + "like kWh."));
        assertTrue(read(july(), bill(Month.JULY, 9000)).sentences().contains("July sums to 11,120 kWh but 9,000 kWh were billed, a "
                + "ratio of 1.24; check that both are of the same meter and year."));
    }

    @Test
    void whatIsNotUnderstoodIsNamed() {
        assertEquals("meter.csv, row 1: No column says that it holds kW or kWh; name that of the loads load_kw or load_kwh, whichever "
                + "it is.", refusal(List.of("start,load", "2025-07-01 00:00,3")));
        assertEquals("meter.csv, row 1: There are 2 columns of kW or kWh; remove those that are not the building's load.",
                refusal(List.of("start,kW,kWh", "2025-07-01 00:00,3,1")));
        assertEquals("meter.csv, row 1: A column of dates and times is missing, such as interval_start.",
                refusal(List.of("when,kWh", "2025-07-01 00:00,3")));
        assertEquals("meter.csv, row 1, column “date”: The file does not say whether its loads are kW or kWh; name the column of dates "
                + "date_kw or date_kwh, whichever they are.", refusal(List.of("date,0:00,0:15", "2025-07-01,3,3")));
        assertEquals("meter.csv, row 2, column “start”: “2025-13-01 00:00” must be a local date and time such as 2025-07-01 00:15 or "
                + "7/1/2025 12:15 AM.\nmeter.csv, row 3, column “kWh”: “-1” must be a number of at least 0, with a point for decimals.",
                refusal(List.of("start,kWh", "2025-13-01 00:00,3", "2025-07-01 00:15,-1")));
        assertEquals("meter.csv: The readings are mostly 7 min apart. Intervals of 15, 30 or 60 min are understood, and finer ones that make these up, such as "
                + "5 min.",
                refusal(List.of("start,kWh", "2025-07-01 00:00,3", "2025-07-01 00:07,3", "2025-07-01 00:14,3")));
        assertEquals("meter.csv: The file holds no readings.", refusal(List.of("start,kWh")));
    }
}
