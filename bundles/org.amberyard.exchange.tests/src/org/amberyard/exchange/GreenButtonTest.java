package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.io.Reader;
import java.io.PrintStream;
import java.io.ByteArrayOutputStream;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.concurrent.CancellationException;
import org.amberyard.model.common.Month;
import org.amberyard.model.common.Quality;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.LoadDayKind;
import org.amberyard.model.meta.NumberSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GreenButtonTest {
    private static final ZonedDateTime JULY = ZonedDateTime.of(2025, 7, 1, 0, 0, 0, 0, GreenButtonFile.CHICAGO);
    private static final ZonedDateTime AUGUST = JULY.plusMonths(1);

    @TempDir
    Path folder;

    private MeterSource read(String... parts) throws IOException, ImportException {
        return read(ReadingProgress.NONE, parts);
    }

    private MeterSource read(ReadingProgress progress, String... parts) throws IOException, ImportException {
        String text = GreenButtonFile.OPEN + String.join("", parts) + GreenButtonFile.CLOSE;
        return MeterSource.read(Files.writeString(folder.resolve("meter.xml"), text), progress);
    }

    private List<String> problems(String... parts) {
        return assertThrows(ImportException.class, () -> read(parts).load(0, ZoneOffset.UTC, List.of())).problems().stream()
                .map(ImportProblem::toString).toList();
    }

    private static MeterImport load(MeterSource source) throws ImportException {
        return source.load(0, ZoneOffset.UTC, List.of());
    }

    /** 10 kW, and 30 kW from 8 to 16 h of the local clock on weekdays. */
    private static double kw(ZonedDateTime t) {
        return t.getDayOfWeek().getValue() <= 5 && t.getHour() >= 8 && t.getHour() < 16 ? 30 : 10;
    }

    private static String wattHours(int meter, ZonedDateTime from, ZonedDateTime to) {
        return GreenButtonFile.block(meter, GreenButtonFile.readings(from, to, 900, t -> kw(t) * 250));
    }

    private static final String DELIVERED = GreenButtonFile.type(1, 72, 0, 1, 4, 900);
    private static final String METER = GreenButtonFile.meter(1, "Interval data");

    private static void assertJuly(MeterImport read) {
        double[] weekday = NumberSeries.parse(read.days().get(0).getMeanKw());
        assertEquals(96, weekday.length);
        assertEquals(10, weekday[31], 1e-9);
        assertEquals(30, weekday[32], 1e-9);
        assertEquals(30, weekday[63], 1e-9);
        assertEquals(10, weekday[64], 1e-9);
        assertEquals(String.join(" ", Collections.nCopies(96, "10")), read.days().get(1).getMeanKw());
    }

    @Test
    void wattHoursBecomeTheLoadOnTheLocalClock() throws Exception {
        MeterSource source = read(GreenButtonFile.CLOCK, GreenButtonFile.POINT, METER, wattHours(1, JULY, AUGUST), DELIVERED);
        assertEquals(List.of("Bus garage, Interval data (kWh, delivered, 2,976 readings)"), source.meters());
        assertFalse(source.needsClock(0));
        MeterImport read = load(source);
        assertJuly(read);
        BuildingLoadDay day = read.days().get(0);
        assertEquals(Quality.MEASURED, day.getSources().get(0).getQuality());
        assertEquals("meter.xml", day.getSources().get(0).getCitation());
        assertEquals("2025-07-31", day.getSources().get(0).getDate());
        assertEquals("2,976 readings every 15 min in kWh, from 1 Jul 2025 to 31 Jul 2025, stamped with the start of each interval.",
                read.sentences().get(0));
    }

    /** Three readings make one: energies are summed, powers averaged, and one that lacks a part is a gap. */
    @Test
    void fiveMinutesAreSummedToFifteen() throws Exception {
        String energy = GreenButtonFile.block(1, GreenButtonFile.readings(JULY, AUGUST, 300, t -> kw(t) * 1000 / 12));
        String fine = DELIVERED.replace(">900<", ">300<");
        MeterImport read = load(read(GreenButtonFile.CLOCK, fine, METER, energy.replace(".0<", "<")));
        assertEquals(10, NumberSeries.parse(read.days().get(0).getMeanKw())[0], 0.01);
        assertEquals(30, NumberSeries.parse(read.days().get(0).getMeanKw())[32], 0.01);
        assertTrue(read.sentences().containsAll(List.of("2,976 readings every 15 min in kWh, from 1 Jul 2025 to 31 Jul 2025, stamped with the start of each "
                + "interval.", "They are those of every 5 min, summed; where a part is missing, the whole interval is.")), read.sentences().toString());
        String power = GreenButtonFile.block(1, GreenButtonFile.readings(JULY, AUGUST, 300, t -> kw(t) * 1000).replaceFirst("(?s)<espi:IntervalReading>.*?"
                + "</espi:IntervalReading>\n", ""));
        MeterImport holed = load(read(GreenButtonFile.CLOCK, GreenButtonFile.type(1, 38, 0, 1, 12, 300), METER, power));
        assertJuly(holed);
        assertTrue(holed.sentences().get(0).startsWith("2,975 readings every 15 min in kW"), holed.sentences().toString());
        assertTrue(holed.sentences().contains("They are those of every 5 min, averaged; where a part is missing, the whole interval is."));
    }

    /** The hour that comes twice in November makes eight intervals of fifteen minutes. */
    @Test
    void fineReadingsOfTheHourThatComesTwiceStayApart() {
        LocalDateTime one = LocalDateTime.of(2025, 11, 2, 1, 0);
        List<MeterReading> twice = IntStream.range(0, 24).mapToObj(i -> new MeterReading(one.plusMinutes(5L * (i % 12)), i, i + 1)).toList();
        List<MeterReading> together = MeterGrid.together(twice, 5, 15, MeterUnit.KWH);
        assertEquals(8, together.size());
        assertEquals(List.of(3.0, 12.0, 21.0, 30.0, 39.0, 48.0, 57.0, 66.0), together.stream().map(MeterReading::number).toList());
        assertEquals(one, together.get(4).start());
        assertEquals(7, MeterGrid.together(twice.subList(1, 24), 5, 15, MeterUnit.KWH).size(), "the first lacks a part");
    }

    @Test
    void wattsAndPowersOfTenAreUnderstood() throws Exception {
        String hectowatts = GreenButtonFile.block(1, GreenButtonFile.readings(JULY, AUGUST, 900, t -> kw(t) * 10));
        assertJuly(load(read(GreenButtonFile.CLOCK, GreenButtonFile.type(1, 38, 2, 1, 12, 900), METER, hectowatts)));
        String milliwattHours = GreenButtonFile.block(1, GreenButtonFile.readings(JULY, AUGUST, 900, t -> kw(t) * 250_000));
        assertJuly(load(read(GreenButtonFile.CLOCK, GreenButtonFile.type(1, 72, -3, 1, 4, 900), METER, milliwattHours)));
    }

    /** The hour from 1 to 2 h comes twice on 2 November, and that from 2 to 3 h is left out on 8 March. */
    @Test
    void daylightSavingFollowsTheRulesOfTheFile() throws Exception {
        ZonedDateTime november = ZonedDateTime.of(2025, 11, 1, 0, 0, 0, 0, GreenButtonFile.CHICAGO);
        ZonedDateTime march = ZonedDateTime.of(2026, 3, 1, 0, 0, 0, 0, GreenButtonFile.CHICAGO);
        MeterImport read = load(read(GreenButtonFile.CLOCK, DELIVERED, METER, wattHours(1, march, march.plusMonths(1)),
                wattHours(1, november, november.plusMonths(1))));
        assertTrue(read.sentences().stream().anyMatch(s -> s.startsWith("2 Nov 2025 has 100 readings and 8 Mar 2026 has 92 readings")),
                read.sentences().toString());
        for (BuildingLoadDay day : read.days()) {
            double[] mean = NumberSeries.parse(day.getMeanKw());
            assertEquals(day.getDayKind() == LoadDayKind.WEEKDAY ? 30 : 10, mean[32], 1e-9,
                    day.getMonth().getLiteral());
            assertEquals(10, mean[31], 1e-9);
        }
    }

    @Test
    void aFileWithoutAClockAsksForIt() throws Exception {
        MeterSource source = read(DELIVERED, METER, wattHours(1, JULY, AUGUST));
        assertTrue(source.needsClock(0));
        MeterImport read = source.load(0, GreenButtonFile.CHICAGO, List.of());
        assertJuly(read);
        assertTrue(read.sentences().contains("The file does not tell its local clock; it is taken as that of America/Chicago."), read.sentences().toString());
    }

    @Test
    void reversedFlowIsPassedOverAndOneOfSeveralMetersIsChosen() throws Exception {
        MeterSource source = read(GreenButtonFile.CLOCK, GreenButtonFile.POINT, GreenButtonFile.meter(1, "Shop"),
                GreenButtonFile.meter(2, "Solar"), GreenButtonFile.meter(3, "Office"), DELIVERED,
                GreenButtonFile.type(2, 72, 0, 19, 4, 900), GreenButtonFile.type(3, 72, 0, 1, 4, 900), wattHours(1, JULY, AUGUST),
                wattHours(2, JULY, AUGUST), GreenButtonFile.block(3, GreenButtonFile.readings(JULY, AUGUST, 900, t -> 500)));
        assertEquals(List.of("Bus garage, Shop (kWh, delivered, 2,976 readings)", "Bus garage, Office (kWh, delivered, 2,976 readings)"),
                source.meters());
        MeterImport office = source.load(1, ZoneOffset.UTC, List.of());
        assertEquals(String.join(" ", Collections.nCopies(96, "2")), office.days().get(0).getMeanKw());
        assertTrue(office.sentences().contains("Passed over “Bus garage, Solar”: it counts reversed flow (flowDirection 19), power that "
                + "the site feeds into the grid."), office.sentences().toString());
        assertTrue(office.sentences().contains("Meter: Bus garage, Office (kWh, delivered, 2,976 readings)."));
    }

    @Test
    void whatCannotBeALoadIsRefusedWithItsReason() {
        String some = wattHours(1, JULY, JULY.plusDays(1));
        assertEquals(List.of("meter.xml: No meter of the file can be the building's load. Passed over “Interval data”: its unit (uom "
                + "169) is neither Wh (72) nor W (38)."), problems(GreenButtonFile.CLOCK, GreenButtonFile.type(1, 169, 0, 1, 4, 900),
                        METER, some));
        assertTrue(problems(GreenButtonFile.CLOCK, GreenButtonFile.type(1, 72, 0, 1, 1, 900), METER, some).get(0)
                .contains("it holds running totals (accumulationBehaviour 1) and not what passed in each interval (4)."));
        assertTrue(problems(GreenButtonFile.CLOCK, GreenButtonFile.type(1, 72, 0, 1, 4, 86_400), METER, some).get(0)
                .contains("its readings are 1 day long. What is drawn when, which decides demand and bills, cannot be told from readings every 1 day; ask the "
                        + "utility for intervals of 15 min, or enter energy and peak of each month as bills. Intervals of 15, 30 or 60 min are "
                        + "understood, and finer ones that make these up, such as 5 min."));
        assertTrue(problems(GreenButtonFile.CLOCK, DELIVERED, METER).get(0).contains("it has no readings"));
        assertTrue(problems(GreenButtonFile.CLOCK, DELIVERED).get(0).contains("has no meter (MeterReading)"));
        assertEquals(List.of("meter.xml, row 5, column “MeterReading”: No link leads to its ReadingType, which tells the unit of its "
                + "readings."), problems(GreenButtonFile.CLOCK, METER, some));
    }

    @Test
    void wrongReadingsAreNamedByLineAndElement() {
        long start = JULY.toEpochSecond();
        assertEquals(List.of("meter.xml, row 8, column “value”: “12x” must be a number of up to 15 digits.",
                "meter.xml, row 9, column “start”: “-1” must be a whole number from 0 to 4,102,444,799.",
                "meter.xml, row 10, column “value”: It is missing; it must be a number of up to 15 digits."),
                problems(GreenButtonFile.CLOCK, DELIVERED, METER, GreenButtonFile.block(1, GreenButtonFile.reading(start, 900, "12x")
                        + GreenButtonFile.reading(-1, 900, "1") + GreenButtonFile.reading(start + 900, 900, ""))));
        assertEquals(List.of("meter.xml, row 9, column “value”: “2.0” contradicts “1.0” on line 8, of the same meter and interval.",
                "meter.xml, row 10, column “value”: “-3.0” must be at least 0: below it power is fed back. Choose the meter of what is "
                        + "delivered.",
                "meter.xml, row 11, column “duration”: The reading is 300 s long but those of its meter are 900 s."),
                problems(GreenButtonFile.CLOCK, DELIVERED, METER, GreenButtonFile.block(1, GreenButtonFile.reading(start, 900, "1")
                        + GreenButtonFile.reading(start, 900, "2") + GreenButtonFile.reading(start + 900, 900, "-3")
                        + GreenButtonFile.reading(start + 1800, 300, "4"))));
        assertEquals(List.of("meter.xml, row 4, column “dstEndRule”: “B40E2” must be a rule of daylight saving in 8 hexadecimal digits, "
                + "such as 360E2000."), problems(GreenButtonFile.CLOCK.replace("B40E2000", "B40E2"), DELIVERED, METER,
                        wattHours(1, JULY, JULY.plusDays(1))));
    }

    /** India is five and a half hours ahead of UTC; hourly readings start at the half hours of UTC. */
    @Test
    void hoursAreThoseOfTheLocalClock() throws Exception {
        ZonedDateTime july = JULY.withZoneSameLocal(ZoneId.of("Asia/Kolkata"));
        String hours = GreenButtonFile.block(1, GreenButtonFile.readings(july, july.plusMonths(1), 3600, t -> kw(t) * 1000));
        MeterImport read = read(METER, GreenButtonFile.type(1, 72, 0, 1, 4, 3600), hours).load(0, july.getZone(), List.of());
        assertEquals(30, NumberSeries.parse(read.days().get(0).getMeanKw())[8], 1e-9);
    }

    @Test
    void lengthsThatNobodyTellsAreThoseBetweenReadings() throws Exception {
        String bare = wattHours(1, JULY, AUGUST).replace("<espi:duration>900</espi:duration>", "");
        MeterImport read = load(read(GreenButtonFile.CLOCK, METER, bare, DELIVERED.replace("<espi:intervalLength>900</espi:intervalLength>",
                "")));
        assertJuly(read);
        assertTrue(read.sentences().contains("The file marks 2,976 readings as estimated, questionable or projected; they count as they "
                + "are."), read.sentences().toString());
    }

    @Test
    void overlappingBlocksCountOnce() throws Exception {
        assertJuly(load(read(GreenButtonFile.CLOCK, DELIVERED, METER, wattHours(1, JULY, AUGUST.minusDays(9)),
                wattHours(1, JULY.plusDays(9), AUGUST))));
    }

    @Test
    void billsTellAWrongReadingType() throws Exception {
        BuildingMonth bill = DepotFactory.eINSTANCE.createBuildingMonth();
        bill.setMonth(Month.JULY);
        bill.setEnergyKwh(2780);
        MeterSource source = read(GreenButtonFile.CLOCK, DELIVERED, METER, wattHours(1, JULY, AUGUST));
        String message = assertThrows(ImportException.class, () -> source.load(0, ZoneOffset.UTC, List.of(bill))).getMessage();
        assertTrue(message.endsWith("a ratio of 4.00: the reading type says kWh but the numbers look like kW. Correct its uom or "
                + "powerOfTenMultiplier if so (Wh are 72, W are 38), or correct the bills."), message);
    }

    @Test
    void hostileFilesAreRefused() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "1");
        Path file = Files.writeString(folder.resolve("evil.xml"), "<?xml version=\"1.0\"?>\n<!DOCTYPE feed [<!ENTITY s SYSTEM \""
                + secret.toUri() + "\">]>\n<feed xmlns=\"http://www.w3.org/2005/Atom\"><entry><title>&s;</title></entry></feed>");
        assertTrue(refusal(file).startsWith("evil.xml, row 2: The file declares a document type (DOCTYPE). Green Button files never"));
        Path deep = Files.writeString(folder.resolve("deep.xml"), GreenButtonFile.OPEN + "<entry>" + "<a>".repeat(100_000));
        assertTrue(refusal(deep).endsWith("The file is not XML, or it is damaged there."));
        Path longText = Files.writeString(folder.resolve("long.xml"), GreenButtonFile.OPEN + "<entry><title>" + "x".repeat(100_000)
                + "</title></entry></feed>");
        assertTrue(refusal(longText).endsWith("The file is not XML, or it is damaged there."));
        Path gpx = Files.writeString(folder.resolve("other.xml"), "<gpx xmlns=\"http://www.topografix.com/GPX/1/1\"/>");
        assertTrue(refusal(gpx).contains("The file is no Green Button file but begins with “gpx”"));
        Path latin = Files.write(folder.resolve("latin.xml"), (GreenButtonFile.OPEN + "<entry><title>G\u00e4rten</title></entry></feed>")
                .getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(refusal(latin).contains("latin.xml"));
    }

    /** The parser of the JDK prints such damage to the console where it is given the bytes. */
    @Test
    void damageIsToldAndNothingIsPrinted() throws Exception {
        PrintStream console = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            Path bytes = Files.write(folder.resolve("bytes.xml"), new byte[] {'<', 'f', (byte) 0xff, (byte) 0xfe, '>'});
            assertTrue(refusal(bytes).endsWith("Bytes of the file stand for no character of its encoding; save it anew as UTF-8."), refusal(bytes));
            Path open = Files.writeString(folder.resolve("open.xml"), GreenButtonFile.OPEN + "<entry><title>x</feed>");
            assertTrue(refusal(open).endsWith("The file is not XML, or it is damaged there."));
            Path unknown = Files.writeString(folder.resolve("unknown.xml"), "<?xml version=\"1.0\" encoding=\"KOI-99\"?><feed/>");
            assertTrue(refusal(unknown).endsWith("its encoding “KOI-99” is not known; save it as UTF-8."), refusal(unknown));
        } finally {
            System.setErr(console);
        }
        assertEquals("", printed.toString(StandardCharsets.UTF_8));
    }

    /** Text in UTF-16 with a mark, and in the encoding that a declaration names. */
    @Test
    void encodingsAreToldByBytesAndDeclaration() throws Exception {
        String text = "<a>G\u00e4rten</a>";
        byte[] marked = ("\ufeff" + text).getBytes(StandardCharsets.UTF_16LE);
        byte[] declared = ("<?xml version=\"1.0\" encoding='ISO-8859-1'?>" + text).getBytes(StandardCharsets.ISO_8859_1);
        for (byte[] bytes : List.of(marked, declared, text.getBytes(StandardCharsets.UTF_16BE), text.getBytes(StandardCharsets.UTF_8))) {
            try (Reader reader = XmlText.of(new ByteArrayInputStream(bytes))) {
                StringWriter read = new StringWriter();
                reader.transferTo(read);
                assertTrue(read.toString().endsWith(text), read.toString());
            }
        }
    }

    private static String refusal(Path file) {
        return assertThrows(ImportException.class, () -> MeterSource.read(file, ReadingProgress.NONE)).getMessage();
    }

    @Test
    void readingsAreBoundedAndCanBeStopped() throws Exception {
        String day = wattHours(1, JULY, AUGUST.plusMonths(1));
        List<String> told = new ArrayList<>();
        Path file = folder.resolve("meter.xml");
        read(progress(told, false), GreenButtonFile.CLOCK, DELIVERED, METER, day);
        assertEquals(List.of("meter.xml 4096"), told);
        String message = assertThrows(ImportException.class, () -> EspiFeed.read(file, 1000, ReadingProgress.NONE)).getMessage();
        assertTrue(message.contains("The file has more than 1,000 readings; ask for fewer years or meters at a time."), message);
        assertThrows(CancellationException.class, () -> MeterSource.read(file, progress(told, true)));
    }

    private static ReadingProgress progress(List<String> told, boolean stopped) {
        return new ReadingProgress() {
            @Override
            public void reached(String file, long rows) {
                told.add(file + " " + rows);
            }

            @Override
            public boolean isStopped() {
                return stopped;
            }
        };
    }
}
