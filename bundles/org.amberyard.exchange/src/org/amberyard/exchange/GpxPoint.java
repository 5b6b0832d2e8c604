package org.amberyard.exchange;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.amberyard.core.trace.TrackPoint;

/** Reads one {@code trkpt}: its attributes {@code lat} and {@code lon} and its children {@code time} and {@code ele}. */
final class GpxPoint {
    private static final double NANOS = 1e9;

    private final XMLStreamReader xml;
    private final ProblemList problems;
    private final int line;
    private double timeS = Double.NaN;
    private double elevationM = Double.NaN;
    private boolean sound = true;

    /** @param xml a reader that stands at the start of the point */
    GpxPoint(XMLStreamReader xml, ProblemList problems) {
        this.xml = xml;
        this.problems = problems;
        this.line = xml.getLocation().getLineNumber();
    }

    /** A point and the line that it begins on. */
    record Placed(TrackPoint point, int line) {
    }

    /** The point; empty when something about it is wrong, which is then among the problems. */
    Optional<Placed> read() throws XMLStreamException {
        double latitudeDeg = number("lat", xml.getAttributeValue(null, "lat"), -90, 90, "-90 to 90 degrees");
        double longitudeDeg = number("lon", xml.getAttributeValue(null, "lon"), -180, 180, "-180 to 180 degrees");
        readChildren();
        if (Double.isNaN(timeS) && sound) {
            refuse("time", "The time of the point is missing.");
        }
        return sound ? Optional.of(new Placed(new TrackPoint(timeS, latitudeDeg, longitudeDeg, Double.NaN, elevationM), line))
                : Optional.empty();
    }

    /** Children of children belong to extensions. */
    private void readChildren() throws XMLStreamException {
        int depth = 1;
        while (depth > 0) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamConstants.START_ELEMENT && depth == 1 && isRead(xml.getLocalName())) {
                readChild(xml.getLocalName());
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
            }
        }
    }

    private static boolean isRead(String name) {
        return name.equals("time") || name.equals("ele");
    }

    private void readChild(String name) throws XMLStreamException {
        String text = xml.getElementText().strip();
        if (name.equals("ele")) {
            elevationM = number(name, text, -500, 9000, "-500 to 9,000 m");
            return;
        }
        try {
            OffsetDateTime moment = OffsetDateTime.parse(text);
            timeS = moment.toEpochSecond() + moment.getNano() / NANOS;
        } catch (DateTimeParseException e) {
            refuse(name, "“" + text + "” must be a moment with its zone, such as 2026-09-01T06:35:00Z.");
        }
    }

    private double number(String name, String text, double min, double max, String allowed) {
        try {
            double value = text == null ? Double.NaN : Double.parseDouble(text);
            if (value >= min && value <= max) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        refuse(name, text == null ? "It is missing." : "“" + text + "” must be a number, " + allowed + ".");
        return Double.NaN;
    }

    private void refuse(String name, String message) {
        sound = false;
        problems.add(line, name, message);
    }
}
