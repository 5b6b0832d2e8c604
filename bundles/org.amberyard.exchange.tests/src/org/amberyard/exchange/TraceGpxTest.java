package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.core.trace.Track;
import org.amberyard.core.trace.TrackPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TraceGpxTest {
    private static final String OPEN = "<gpx version=\"1.1\" creator=\"logger\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n";
    private static final double NONE = Double.NaN;

    @TempDir
    Path folder;

    private Track read(String text) throws IOException, ImportException {
        return TraceGpx.read(Files.writeString(folder.resolve("log.gpx"), text));
    }

    private List<String> problems(String text) {
        return assertThrows(ImportException.class, () -> read(text)).problems().stream().map(ImportProblem::toString).toList();
    }

    private static String point(String lat, String time) {
        return "<trkpt lat=\"" + lat + "\" lon=\"-93.5\"><time>" + time + "</time></trkpt>\n";
    }

    @Test
    void segmentsOfTracksFollowEachOther() throws Exception {
        Track track = read(OPEN + """
                <metadata><time>2001-01-01T00:00:00Z</time></metadata>
                <wpt lat="1" lon="2"><time>2001-01-01T00:00:00Z</time></wpt>
                <trk><name>AM</name><trkseg>
                <trkpt lat="41.5" lon="-93.5"><ele>298.7</ele><time>2026-09-01T06:45:00-05:00</time>
                  <extensions><x:data xmlns:x="urn:x"><x:time>no time</x:time><x:ele>7</x:ele></x:data></extensions></trkpt>
                <trkpt lon="-93.4" lat="41.6"><time>2026-09-01T11:45:01.500Z</time></trkpt>
                </trkseg></trk>
                <trk><trkseg><trkpt lat="41.7" lon="-93.3"><time>2026-09-01T11:46:00Z</time></trkpt></trkseg></trk>
                </gpx>
                """);
        double start = 1_788_263_100;
        assertEquals(List.of(new TrackPoint(start, 41.5, -93.5, NONE, 298.7), new TrackPoint(start + 1.5, 41.6, -93.4, NONE, NONE),
                new TrackPoint(start + 60, 41.7, -93.3, NONE, NONE)), track.points());
    }

    @Test
    void aDocumentTypeIsRefusedUnread() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "41.5");
        List<String> problems = problems("<?xml version=\"1.0\"?>\n<!DOCTYPE gpx [<!ENTITY s SYSTEM \"" + secret.toUri()
                + "\">]>\n" + OPEN + "<trk><trkseg>" + point("41.5", "&s;") + "</trkseg></trk></gpx>");
        assertEquals(List.of("log.gpx, row 2: The file declares a document type (DOCTYPE). GPX files never need one; such a "
                + "declaration can pull in other files or fill the memory."), problems);
    }

    @Test
    void wrongPointsAreNamedByLineAndField() {
        assertEquals(List.of(
                "log.gpx, row 3, column “time”: “2026-09-01T06:45:00” must be a moment with its zone, such as "
                        + "2026-09-01T06:35:00Z.",
                "log.gpx, row 4, column “lat”: “north” must be a number, -90 to 90 degrees.",
                "log.gpx, row 5, column “lat”: “91” must be a number, -90 to 90 degrees.",
                "log.gpx, row 6, column “time”: The time of the point is missing.",
                "log.gpx, row 7, column “lat”: It is missing.",
                "log.gpx, row 8, column “ele”: “high” must be a number, -500 to 9,000 m."),
                problems(OPEN + "<trk><trkseg>\n" + point("41.5", "2026-09-01T06:45:00") + point("north", "2026-09-01T06:45:00Z")
                        + point("91", "2026-09-01T06:45:00Z") + "<trkpt lat=\"41.5\" lon=\"-93.5\"/>\n"
                        + "<trkpt lon=\"-93.5\"><time>2026-09-01T06:45:00Z</time></trkpt>\n"
                        + "<trkpt lat=\"41.5\" lon=\"-93.5\"><ele>high</ele><time>2026-09-01T06:45:00Z</time></trkpt>\n"
                        + "</trkseg></trk></gpx>"));
    }

    @Test
    void timesMustNotFall() {
        assertEquals(List.of("log.gpx, row 4, column “time”: The time is earlier than that of the point before."),
                problems(OPEN + "<trk><trkseg>\n" + point("41.5", "2026-09-01T06:45:00Z") + point("41.5", "2026-09-01T06:44:59Z")
                        + "</trkseg></trk></gpx>"));
    }

    @Test
    void whatIsNoGpxOrDamagedIsRefused() {
        assertEquals(List.of("log.gpx, row 1: The file is no GPX 1.1 but begins with “kml” of no namespace; export it as GPX 1.1."),
                problems("<kml/>"));
        assertEquals(List.of("log.gpx, row 1: The file is no GPX 1.1 but begins with “gpx” of http://www.topografix.com/GPX/1/0; "
                + "export it as GPX 1.1."), problems("<gpx xmlns=\"http://www.topografix.com/GPX/1/0\"/>"));
        assertEquals(List.of("log.gpx, row 2: The file is not XML, or it is damaged there."), problems(OPEN + "<trk></gpx>"));
        assertEquals(List.of("log.gpx: The file holds no points of a track (trk, trkseg, trkpt)."), problems(OPEN + "<trk/></gpx>"));
        assertEquals(List.of("log.gpx: A track needs at least two points but has 1."),
                problems(OPEN + "<trk><trkseg>" + point("41.5", "2026-09-01T06:45:00Z") + "</trkseg></trk></gpx>"));
    }

    @Test
    void tooManyPointsAreRefused() throws Exception {
        int most = 1500;
        String points = point("41.5", "2026-09-01T06:45:00Z").repeat(most);
        Path full = Files.writeString(folder.resolve("full.gpx"), OPEN + "<trk><trkseg>" + points + "</trkseg></trk></gpx>");
        assertEquals(most, TraceGpx.read(full, most).points().size());
        Path over = Files.writeString(folder.resolve("over.gpx"), OPEN + "<trk><trkseg>" + points
                + point("41.5", "2026-09-01T06:45:00Z") + "</trkseg></trk></gpx>");
        String message = assertThrows(ImportException.class, () -> TraceGpx.read(over, most)).getMessage();
        assertTrue(message.contains("The file has more than 1,500 points; cut it into single drives."), message);
        assertEquals(1_000_000, TraceGpx.MOST_POINTS);
    }
}
