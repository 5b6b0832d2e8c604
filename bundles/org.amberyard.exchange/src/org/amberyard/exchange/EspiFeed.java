package org.amberyard.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the meters in a Green Button file: an Atom feed (RFC 4287) of resources of the Energy Services Provider Interface
 * (NAESB REQ.21, from memory). Links tell which reading type and which interval blocks belong to which meter reading, which
 * meter reading to which usage point, and that to which local clock. Where a file has only one of a kind, links are not needed.
 */
final class EspiFeed {
    static final int MOST_READINGS = 1_000_000;
    private static final int MOST_ENTRIES = 100_000;
    private static final int MOST_METERS = 200;
    private static final long MOST_BYTES = 256L * 1024 * 1024;
    private static final String ATOM = "http://www.w3.org/2005/Atom";

    private final String file;
    private final ProblemList problems;
    private final EspiReadingLimit limit;
    private final List<EspiEntry> entries = new ArrayList<>();

    private EspiFeed(String file, int mostReadings, ReadingProgress progress) {
        this.file = file;
        this.problems = new ProblemList(file);
        this.limit = new EspiReadingLimit(file, mostReadings, problems, progress);
    }

    /** @throws ImportException when anything in the file is not understood */
    static List<EspiMeter> read(Path path, ReadingProgress progress) throws ImportException {
        return read(path, MOST_READINGS, progress);
    }

    static List<EspiMeter> read(Path path, int mostReadings, ReadingProgress progress) throws ImportException {
        EspiFeed feed = new EspiFeed(path.getFileName().toString(), mostReadings, progress);
        SafeXml.read(path, MOST_BYTES, "The file is larger than 256 MiB; ask for fewer years or meters at a time.", feed.problems, feed::readXml);
        feed.problems.refuseIfAny();
        List<EspiMeter> meters = feed.meters();
        feed.problems.refuseIfAny();
        return meters;
    }

    private void readXml(XMLStreamReader xml) throws XMLStreamException {
        if (!SafeXml.toRoot(xml, "Green Button", problems)) {
            return;
        }
        if (!xml.getLocalName().equals("feed") || !ATOM.equals(xml.getNamespaceURI())) {
            problems.add(SafeXml.line(xml), "", "The file is no Green Button file but begins with “" + xml.getLocalName() + "” of "
                    + (xml.getNamespaceURI() == null ? "no namespace" : xml.getNamespaceURI()) + "; give the XML file that the "
                    + "utility offers for download, a feed of " + ATOM + ".");
            return;
        }
        while (xml.next() != XMLStreamConstants.END_ELEMENT && !limit.isReached()) {
            if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
                child(xml);
            }
        }
    }

    private void child(XMLStreamReader xml) throws XMLStreamException {
        if (!xml.getLocalName().equals("entry")) {
            SafeXml.skip(xml);
        } else if (entries.size() == MOST_ENTRIES) {
            problems.add(SafeXml.line(xml), "entry", "The file has more than 100,000 entries; ask for fewer years or meters at a time.");
        } else {
            entries.add(EspiEntry.read(xml, limit, problems));
        }
    }

    private List<EspiEntry> all(String kind) {
        return entries.stream().filter(e -> e.is(kind)).toList();
    }

    private List<EspiMeter> meters() {
        List<EspiEntry> meters = all("MeterReading");
        if (meters.isEmpty()) {
            problems.add(0, "", "The file has no meter (MeterReading); ask the utility for a file with interval data.");
        }
        if (meters.size() > MOST_METERS) {
            problems.add(0, "", "The file has " + meters.size() + " meters; ask for at most " + MOST_METERS + " at a time.");
            return List.of();
        }
        List<EspiMeter> read = new ArrayList<>();
        for (EspiEntry meter : meters) {
            type(meter).ifPresent(t -> read.add(new EspiMeter(file, title(meter), t, clock(meter), readings(meter, meters))));
        }
        return read;
    }

    private Optional<EspiReadingType> type(EspiEntry meter) {
        Optional<EspiEntry> type = linked(meter, "ReadingType");
        if (type.isEmpty()) {
            problems.add(meter.line(), "MeterReading", "No link leads to its ReadingType, which tells the unit of its readings.");
        }
        return type.map(t -> EspiReadingType.of(t.leaves(), t.line(), problems));
    }

    /** The entry of a kind that another leads to; the only one of its kind where no link does. */
    private Optional<EspiEntry> linked(EspiEntry from, String kind) {
        List<EspiEntry> some = all(kind);
        Optional<EspiEntry> found = some.stream().filter(from::leadsTo).findFirst();
        return found.isPresent() || some.size() != 1 ? found : Optional.of(some.get(0));
    }

    /** The usage point leads to the clock; where it does not, all clocks of the file must be alike. */
    private Optional<EspiClock> clock(EspiEntry meter) {
        Optional<EspiEntry> own = usagePoint(meter).flatMap(p -> linked(p, "LocalTimeParameters"));
        if (own.isPresent()) {
            return Optional.of(EspiClock.of(own.get().leaves(), own.get().line(), problems));
        }
        List<EspiClock> clocks = all("LocalTimeParameters").stream()
                .map(e -> EspiClock.of(e.leaves(), e.line(), problems)).distinct().toList();
        if (clocks.size() > 1) {
            problems.add(meter.line(), "MeterReading", "The file has several local clocks (LocalTimeParameters), and no link leads "
                    + "to that of this meter.");
        }
        return clocks.stream().findFirst();
    }

    private Optional<EspiEntry> usagePoint(EspiEntry meter) {
        List<EspiEntry> points = all("UsagePoint");
        Optional<EspiEntry> found = points.stream().filter(p -> p.leadsTo(meter) || meter.isBelow(p)).findFirst();
        return found.isPresent() || points.size() != 1 ? found : Optional.of(points.get(0));
    }

    private String title(EspiEntry meter) {
        String point = usagePoint(meter).map(EspiEntry::title).orElse("");
        return point.isEmpty() || point.equals(meter.title()) ? meter.title()
                : meter.title().isEmpty() ? point : point + ", " + meter.title();
    }

    private EspiReadings readings(EspiEntry meter, List<EspiEntry> meters) {
        EspiReadings readings = new EspiReadings();
        for (EspiEntry block : all("IntervalBlock")) {
            if (meters.size() == 1 || meter.leadsTo(block) || block.isBelow(meter)) {
                readings.addAll(block.readings());
            }
        }
        return readings;
    }
}
