package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.amberyard.model.routes.Route;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weather, schedules and meter data by published formats, from the command line into the example. */
class PublishedFormatsTest {
    @TempDir
    Path folder;
    private ExampleConsole console;

    @BeforeEach
    void copyExample() throws IOException {
        console = new ExampleConsole(folder);
    }

    @Test
    void weatherIsTakenFromAnEpwFile() throws Exception {
        StringBuilder epw = new StringBuilder("LOCATION,Vale,OS,XXX,Invented,1,41.5,-93.5,-6,300\nDATA PERIODS,1,1,Data,Wednesday,1/1,1/31\n");
        for (int hour = 0; hour < 31 * 24; hour++) {
            int of = hour % 24 + 1;
            epw.append("2025,1,").append(hour / 24 + 1).append(',').append(of).append(",60,x,").append(of == 6 ? -21 : of == 15 ? -3 : -10)
                    .append(",0,0,0,0,0,0,9999\n");
        }
        Files.writeString(folder.resolve("vale.epw"), epw);
        assertEquals(0, console.run("import-weather", ExampleConsole.STUDY, "vale.epw"), console.err());
        assertTrue(console.out().startsWith("31 days of hourly weather at Vale, OS (1), at latitude 41.50° and 300 m above sea level."), console.out());
        assertTrue(console.out().contains("  month climate January, mean daily low: 4 °F → −5.8 °F"), console.out());
        assertEquals(-21, console.study().getSite().getClimate().get(0).getMeanLowC());
        assertEquals(0, console.run("import-weather", ExampleConsole.STUDY, "vale.epw"), console.err());
        assertTrue(console.out().endsWith(String.format("Nothing changed.%n")), console.out());
    }

    @Test
    void aStationOfNormalsIsNamed() throws Exception {
        Files.writeString(folder.resolve("normals.csv"), "station,month,low_F,high_F\nNorth,1,-4,14\nSouth,1,32,50\n");
        assertEquals(2, console.run("import-weather", ExampleConsole.STUDY, "normals.csv"));
        assertTrue(console.err().contains("The file has 2 stations; choose one with --station: North; South."), console.err());
        assertEquals(2, console.run("import-weather", ExampleConsole.STUDY, "normals.csv", "--station", "West"));
        assertTrue(console.err().contains("--station is “West”; it must be one of the file: North; South."), console.err());
        assertEquals(0, console.run("import-weather", ExampleConsole.STUDY, "normals.csv", "--station", "North"), console.err());
        assertEquals(-20, console.study().getSite().getClimate().get(0).getMeanLowC(), 1e-9);
        Files.writeString(folder.resolve("normals.csv"), "month,low_F\n1,cold\n");
        assertEquals(2, console.run("import-weather", ExampleConsole.STUDY, "normals.csv"));
        assertTrue(console.err().contains("No climate was imported from ") && console.err().contains("normals.csv, row 2, column “low_F”: “cold” must be"),
                console.err());
    }

    private void writeSchedule() throws IOException {
        Path schedule = Files.createDirectory(folder.resolve("vale"));
        Files.writeString(schedule.resolve("agency.txt"), "agency_name\nVale Transit\n");
        Files.writeString(schedule.resolve("routes.txt"), "route_id,route_short_name,route_type\n1,12,3\n2,14,3\n");
        Files.writeString(schedule.resolve("calendar_dates.txt"), "service_id,date,exception_type\nW,20260901,1\nW,20260902,1\nS,20260905,1\n");
        Files.writeString(schedule.resolve("stops.txt"), "stop_id,stop_lat,stop_lon\na,41,-93\nb,41.1,-93\n");
        Files.writeString(schedule.resolve("trips.txt"), "route_id,service_id,trip_id,block_id\n1,W,t1,B1\n2,W,t2,B2\n1,S,t3,B1\n");
        Files.writeString(schedule.resolve("stop_times.txt"), "trip_id,arrival_time,departure_time,stop_id,stop_sequence\n"
                + "t1,6:30:00,6:30:00,a,1\nt1,7:00:00,7:00:00,b,2\nt2,6:30:00,6:30:00,b,1\nt2,7:00:00,7:00:00,a,2\n"
                + "t3,9:30:00,9:30:00,a,1\nt3,10:00:00,10:00:00,b,2\n");
    }

    @Test
    void blocksOfAScheduleBecomeRoutes() throws Exception {
        writeSchedule();
        int before = console.study().getRoutes().size();
        assertEquals(0, console.run("import-gtfs", ExampleConsole.STUDY, "vale", "--list"), console.err());
        assertTrue(console.out().contains("Tue+Wed, 2 days from 1 Sep 2026 to 2 Sep 2026") && console.out().contains("  B2: route 14, 1 trip"), console.out());
        assertEquals(before, console.study().getRoutes().size());
        assertEquals(0, console.run("import-gtfs", ExampleConsole.STUDY, "vale", "--routes", "14"), console.err());
        assertTrue(console.out().contains("  route B2 is added, with 1 run"), console.out());
        Route added = console.study().getRoutes().get(before);
        assertEquals(before + 1, console.study().getRoutes().size());
        assertEquals(11.12, added.getRuns().get(0).getDistanceKm(), 0.01);
        assertEquals("GTFS Tue+Wed", added.getRuns().get(0).getCalendar().getName());
        assertEquals(0, console.run("import-gtfs", ExampleConsole.STUDY, "vale", "--days", "Sat", "--blocks", "B1"), console.err());
        assertEquals("09:30 12", console.study().getRoutes().get(before + 1).getRuns().get(0).getName());
    }

    @Test
    void whatAScheduleDoesNotHaveIsNamed() throws Exception {
        writeSchedule();
        assertEquals(2, console.run("import-gtfs", ExampleConsole.STUDY, "vale", "--days", "Sun"));
        assertTrue(console.err().contains("--days is “Sun”; it must be one of Tue+Wed, Sat."), console.err());
        assertEquals(2, console.run("import-gtfs", ExampleConsole.STUDY, "vale", "--routes", "15"));
        assertTrue(console.err().contains("--routes has “15”, which no block of these days serves; --list lists them."), console.err());
        assertEquals(2, console.run("import-gtfs", ExampleConsole.STUDY, "vale", "--blocks", "B7"));
        assertTrue(console.err().contains("--blocks has “B7”, which is no block of these days; --list lists them."), console.err());
        assertEquals(2, console.run("import-gtfs", ExampleConsole.STUDY, "nowhere"));
        assertTrue(console.err().contains("where there is nothing; give a zip file or a folder."), console.err());
        Files.delete(folder.resolve("vale/stops.txt"));
        assertEquals(2, console.run("import-gtfs", ExampleConsole.STUDY, "vale"));
        assertTrue(console.err().contains("No routes were imported from ") && console.err().contains("stops.txt: The file is missing"), console.err());
    }

    @Test
    void aMeterOfAGreenButtonFileIsChosen() throws Exception {
        String meter = "<entry><link rel='self' href='/MeterReading/%1$s'/><link rel='related' href='/MeterReading/%1$s/IntervalBlock'/>"
                + "<title>Meter %1$s</title><content><MeterReading xmlns='http://naesb.org/espi'/></content></entry><entry>"
                + "<link rel='up' href='/MeterReading/%1$s/IntervalBlock'/><content><IntervalBlock xmlns='http://naesb.org/espi'>%2$s"
                + "</IntervalBlock></content></entry>";
        StringBuilder july = new StringBuilder();
        for (int hour = 0; hour < 31 * 24; hour++) {
            july.append("<IntervalReading><timePeriod><duration>3600</duration><start>").append(1_751_346_000 + 3600 * hour)
                    .append("</start></timePeriod><value>29743</value></IntervalReading>");
        }
        Files.writeString(folder.resolve("meter.xml"), "<feed xmlns='http://www.w3.org/2005/Atom'><entry><content><ReadingType "
                + "xmlns='http://naesb.org/espi'><uom>72</uom></ReadingType></content></entry>" + String.format(meter, "1", july)
                + String.format(meter, "2", july) + "</feed>");
        assertEquals(2, console.run("import-meter", ExampleConsole.STUDY, "meter.xml"));
        assertTrue(console.err().contains("The file has 2 meters; choose one with --meter: 1 Meter 1 (kWh, delivered, 744 readings); 2 Meter 2"),
                console.err());
        assertEquals(2, console.run("import-meter", ExampleConsole.STUDY, "meter.xml", "--meter", "2"));
        assertTrue(console.err().contains("The file does not tell its local clock; give --zone, such as America/Chicago."), console.err());
        assertEquals(2, console.run("import-meter", ExampleConsole.STUDY, "meter.xml", "--meter", "2", "--zone", "Mars"));
        assertTrue(console.err().contains("--zone is Mars; it must be a time zone such as America/Chicago or UTC-6."), console.err());
        assertEquals(0, console.run("import-meter", ExampleConsole.STUDY, "meter.xml", "--meter", "2", "--zone", "America/Chicago"), console.err());
        assertTrue(console.out().startsWith("744 readings every 60 min in kWh, from 1 Jul 2025 to 31 Jul 2025"), console.out());
    }
}
