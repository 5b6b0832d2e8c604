package org.amberyard.exchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** An entry of an Atom feed (RFC 4287): its links, its title, and the resource that it holds. */
final class EspiEntry {
    static final String ESPI = "http://naesb.org/espi";
    private static final int MOST_LINKS = 1000;
    /** Qualities of readings by a reference day, by interpolation, questionable and projected; from memory. */
    private static final Set<String> DOUBTFUL = Set.of("8", "9", "10", "12");

    private final EspiReadingLimit limit;
    private final ProblemList problems;
    private final int line;
    private final Set<String> related = new HashSet<>();
    private String self = "";
    private String up = "";
    private String title = "";
    private String kind = "";
    private Map<String, String> leaves = new HashMap<>();
    private final EspiReadings readings = new EspiReadings();

    private EspiEntry(int line, EspiReadingLimit limit, ProblemList problems) {
        this.line = line;
        this.limit = limit;
        this.problems = problems;
    }

    /** Reads the entry on whose start a reader stands. */
    static EspiEntry read(XMLStreamReader xml, EspiReadingLimit limit, ProblemList problems) throws XMLStreamException {
        EspiEntry entry = new EspiEntry(SafeXml.line(xml), limit, problems);
        while (xml.next() != XMLStreamConstants.END_ELEMENT) {
            if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
                entry.child(xml);
            }
        }
        return entry;
    }

    private void child(XMLStreamReader xml) throws XMLStreamException {
        switch (xml.getLocalName()) {
            case "link" -> link(xml);
            case "title" -> title = SafeXml.text(xml);
            case "content" -> content(xml);
            default -> SafeXml.skip(xml);
        }
    }

    private void link(XMLStreamReader xml) throws XMLStreamException {
        String href = bare(xml.getAttributeValue(null, "href"));
        String rel = String.valueOf(xml.getAttributeValue(null, "rel"));
        SafeXml.skip(xml);
        switch (rel) {
            case "self" -> self = href;
            case "up" -> up = href;
            default -> {
                if (rel.equals("related") && !href.isEmpty() && related.size() < MOST_LINKS) {
                    related.add(href);
                }
            }
        }
    }

    private static String bare(String href) {
        String text = href == null ? "" : href.strip();
        return text.endsWith("/") ? text.substring(0, text.length() - 1) : text;
    }

    private void content(XMLStreamReader xml) throws XMLStreamException {
        while (xml.next() != XMLStreamConstants.END_ELEMENT) {
            if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
                resource(xml);
            }
        }
    }

    private void resource(XMLStreamReader xml) throws XMLStreamException {
        if (!ESPI.equals(xml.getNamespaceURI())) {
            SafeXml.skip(xml);
            return;
        }
        kind = xml.getLocalName();
        if (kind.equals("IntervalBlock")) {
            block(xml);
        } else if (List.of("UsagePoint", "ReadingType", "LocalTimeParameters").contains(kind)) {
            leaves = SafeXml.leaves(xml);
        } else {
            SafeXml.skip(xml);
        }
    }

    private void block(XMLStreamReader xml) throws XMLStreamException {
        while (xml.next() != XMLStreamConstants.END_ELEMENT) {
            if (xml.getEventType() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("IntervalReading")) {
                reading(xml);
            } else if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
                SafeXml.skip(xml);
            }
        }
    }

    private void reading(XMLStreamReader xml) throws XMLStreamException {
        int at = SafeXml.line(xml);
        Map<String, String> texts = SafeXml.leaves(xml);
        EspiNumbers numbers = new EspiNumbers(texts, at, problems);
        // From 1970 to 2099: a moment beyond is told in milliseconds, or damaged.
        long start = numbers.whole("start", 0, 4_102_444_799L);
        long length = numbers.whole("duration", 0, 10_000_000, 0);
        double value = numbers.decimal("value");
        if (limit.takes(at)) {
            readings.add(start, length, value, at);
            if (DOUBTFUL.contains(texts.getOrDefault("quality", ""))) {
                readings.countDoubtful();
            }
        }
    }

    /** Name of the resource: UsagePoint, MeterReading, ReadingType, IntervalBlock, LocalTimeParameters or another. */
    boolean is(String resource) {
        return kind.equals(resource);
    }

    /** True when a link of the entry leads to another entry, or to the collection that the other is in. */
    boolean leadsTo(EspiEntry other) {
        return related.contains(other.self) || related.contains(other.up);
    }

    /** True when the address of the entry is below that of another, as those of its parts are. */
    boolean isBelow(EspiEntry other) {
        return !other.self.isEmpty() && (self.startsWith(other.self + "/") || up.startsWith(other.self + "/"));
    }

    int line() {
        return line;
    }

    String title() {
        return title;
    }

    Map<String, String> leaves() {
        return leaves;
    }

    EspiReadings readings() {
        return readings;
    }
}
