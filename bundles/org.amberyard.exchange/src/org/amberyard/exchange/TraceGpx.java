package org.amberyard.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.amberyard.core.trace.Track;
import org.amberyard.core.trace.TrackPoint;

/**
 * Reads a logged drive from a GPX 1.1 file (topografix.com/GPX/1/1): position, time and elevation of the points of its
 * tracks, segment after segment. Waypoints and routes have no drive in them, and extensions differ from device to device;
 * both are passed over. Document types and entities are refused.
 */
public final class TraceGpx {
    static final int MOST_POINTS = 1_000_000;
    private static final long MOST_BYTES = 512L * 1024 * 1024;
    private static final String NAMESPACE = "http://www.topografix.com/GPX/1/1";

    private final String file;
    private final int mostPoints;
    private final ProblemList problems;
    private final List<TrackPoint> points = new ArrayList<>();

    private TraceGpx(String file, int mostPoints) {
        this.file = file;
        this.mostPoints = mostPoints;
        this.problems = new ProblemList(file);
    }

    /**
     * The track in a file.
     *
     * @throws ImportException when anything in the file is not understood
     */
    public static Track read(Path path) throws ImportException {
        return read(path, MOST_POINTS);
    }

    static Track read(Path path, int mostPoints) throws ImportException {
        TraceGpx gpx = new TraceGpx(path.getFileName().toString(), mostPoints);
        SafeXml.read(path, MOST_BYTES, "The file is larger than 512 MiB; cut it into single drives.", gpx.problems, gpx::readXml);
        if (gpx.problems.isEmpty() && gpx.points.isEmpty()) {
            gpx.problems.add(0, "", "The file holds no points of a track (trk, trkseg, trkpt).");
        }
        gpx.problems.refuseIfAny();
        return Tracks.of(gpx.points, gpx.file);
    }

    private void readXml(XMLStreamReader xml) throws XMLStreamException {
        if (toRoot(xml)) {
            while (xml.hasNext() && points.size() <= mostPoints) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("trkpt")) {
                    new GpxPoint(xml, problems).read().ifPresent(this::add);
                }
            }
        }
        if (points.size() > mostPoints) {
            problems.add(0, "", String.format(Locale.ENGLISH, "The file has more than %,d points; cut it into single drives.",
                    mostPoints));
        }
    }

    private boolean toRoot(XMLStreamReader xml) throws XMLStreamException {
        if (!SafeXml.toRoot(xml, "GPX", problems)) {
            return false;
        }
        boolean gpx = xml.getLocalName().equals("gpx") && NAMESPACE.equals(xml.getNamespaceURI());
        if (!gpx) {
            problems.add(xml.getLocation().getLineNumber(), "", "The file is no GPX 1.1 but begins with “"
                    + xml.getLocalName() + "” of " + (xml.getNamespaceURI() == null ? "no namespace" : xml.getNamespaceURI())
                    + "; export it as GPX 1.1.");
        }
        return gpx;
    }

    private void add(GpxPoint.Placed placed) {
        if (!points.isEmpty() && placed.point().timeS() < points.get(points.size() - 1).timeS()) {
            problems.add(placed.line(), "time", "The time is earlier than that of the point before.");
        }
        points.add(placed.point());
    }
}
